import { FormNotice } from '@/components/ui/form-notice';
import { translatorFor } from '@/lib/messages/translator';
import { mistakenFieldId, type RefusedForm, refusalWords } from './refused-form';
import styles from './refused-notice.module.css';
import type { SheetContext } from './sheet-context';

type RefusedNoticeProps = {
  context: Pick<SheetContext, 'locale' | 'shop' | 'currentNumber'>;
  refused: RefusedForm;
  /** Whether a form below shows again what was typed; otherwise it is shown here. */
  hasForm: boolean;
};

/** Says that an answer was not taken, why, and what to do. What was typed is never lost. */
export function RefusedNotice({ context: { locale, shop, currentNumber }, refused, hasForm }: RefusedNoticeProps) {
  const t = translatorFor(locale, 'proof');
  const sentence = refusalWords(t, refused.reason, { shop: shop.name, current: String(currentNumber ?? '') });
  const fieldId = hasForm ? mistakenFieldId(refused) : null;
  return (
    <FormNotice kind="stop" title={t('refused.title')} mistakes={fieldId ? [{ fieldId, text: sentence }] : []}>
      {fieldId ? null : <p>{sentence}</p>}
      {!hasForm && refused.words ? (
        <div className={styles.typed}>
          <p>{t('refused.typed')}</p>
          <blockquote>{refused.words}</blockquote>
        </div>
      ) : null}
    </FormNotice>
  );
}
