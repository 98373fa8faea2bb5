import Link from 'next/link';
import { useTranslations } from 'use-intl';
import { FormNotice } from '../ui/form-notice';
import { TextArea } from '../ui/text-area';
import styles from './fit-note-fields.module.css';
import type { StopToExplain } from './stop-to-explain';

type FitNoteFieldsProps = {
  stops: readonly StopToExplain[];
  customerName: string;
  longest: number;
  typed: Readonly<Record<string, string>>;
  mistakeOf: (field: string) => string | undefined;
};

/** Each print that crosses a seam or leaves the garment: what is wrong, the way to mend it, or a word why it is meant so. */
export function FitNoteFields({ stops, customerName, longest, typed, mistakeOf }: FitNoteFieldsProps) {
  const t = useTranslations('send.fitNote');
  return stops.map(({ field, print, sentences, table, note }) => (
    <fieldset key={field} className={styles.stop}>
      <legend className="visually-hidden">{print}</legend>
      <FormNotice kind="look" title={sentences.map((sentence) => <span key={sentence}>{sentence}</span>)}>
        <p>
          {t('text')}{' '}
          <Link href={table} prefetch={false}>
            {t('mend')}
          </Link>
        </p>
      </FormNotice>
      <TextArea
        name={field}
        label={t('label')}
        hint={t('hint', { customer: customerName, print })}
        error={mistakeOf(field)}
        defaultValue={typed[field] ?? note}
        maxLength={longest}
        rows={3}
      />
    </fieldset>
  ));
}
