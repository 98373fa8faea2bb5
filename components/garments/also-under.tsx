'use client';

import { useTranslations } from 'use-intl';
import { CheckField } from '../ui/check-field';
import { FieldGroup } from '../ui/field-group';
import styles from './garment-forms.module.css';
import { alsoField, isGeneric, type OfferedStyle } from './offered-style';

type AlsoUnderProps = {
  formId: string;
  style: OfferedStyle;
  offered: readonly OfferedStyle[];
  typed: Readonly<Record<string, string>>;
};

/** More sizes to hang under the same garment: other bands and styles of its kind. Nothing where there are none. */
export function AlsoUnder({ formId, style, offered, typed }: AlsoUnderProps) {
  const t = useTranslations('garments.add');
  const ofKind = offered.filter(
    ({ kind, styleId, middle }) => kind === style.kind && styleId !== style.styleId && middle !== null,
  );
  // Another age band is more likely wanted than a second chart of the same one, and of the style's own name first.
  const rank = (other: OfferedStyle) =>
    2 * Number(other.ageBand === style.ageBand) + Number(!isNamedAlike(other.name, style.name));
  const others = ofKind.toSorted((a, b) => rank(a) - rank(b));
  if (others.length === 0) return null;
  return (
    <FieldGroup inline id={`${formId}-also`} label={t('also')} hint={t('alsoHint')}>
      <div className={styles.ticks}>
        {others.map((other) => {
          const name = alsoField(other.styleId);
          return (
            <CheckField
              key={other.styleId}
              id={`${formId}-${name}`}
              name={name}
              value="yes"
              label={isGeneric(other) ? t('alsoGeneric', { sizes: other.sizesLabel }) : other.label}
              defaultChecked={typed[name] === 'yes'}
            />
          );
        })}
      </div>
    </FieldGroup>
  );
}

/** `River tee` and `River tee, youth`. */
function isNamedAlike(one: string, other: string): boolean {
  return one.startsWith(other) || other.startsWith(one);
}
