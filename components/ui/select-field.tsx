import type { ComponentProps } from 'react';
import { classNames } from './class-names';
import styles from './field.module.css';
import { FieldFrame, type FieldWords, fieldDescription } from './field-frame';

export type SelectOption = { value: string; label: string };
/** Options under a heading of their own. */
export type SelectGroup = { label: string; options: readonly SelectOption[] };

type SelectFieldProps = FieldWords & {
  name: string;
  options: readonly (SelectOption | SelectGroup)[];
} & Omit<ComponentProps<'select'>, 'className' | 'style' | 'name' | 'children' | 'multiple'>;

/** One choice out of several. After a refusal pass what was chosen as `defaultValue`. */
export function SelectField({ label, hint, error, name, id = name, options, ...rest }: SelectFieldProps) {
  return (
    <FieldFrame id={id} label={label} hint={hint} error={error}>
      <select
        // React resets a form after its action without reading a select's new default; a new key makes it do so.
        key={String(rest.defaultValue ?? '')}
        {...rest}
        {...fieldDescription(id, { hint, error })}
        id={id}
        name={name}
        className={classNames(styles.control, styles.select)}
      >
        {options.map((option) =>
          'options' in option ? (
            <optgroup key={option.label} label={option.label}>
              <Options options={option.options} />
            </optgroup>
          ) : (
            <Options key={option.value} options={[option]} />
          ),
        )}
      </select>
    </FieldFrame>
  );
}

function Options({ options }: { options: readonly SelectOption[] }) {
  return options.map(({ value, label }) => (
    <option key={value} value={value}>
      {label}
    </option>
  ));
}
