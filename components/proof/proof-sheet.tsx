import type { ViewGarment } from '@/lib/domain/revision/view';
import { translatorFor } from '@/lib/messages/translator';
import { AnswerForm } from './answer-form';
import { AnswerGiven, type GivenAnswer } from './answer-given';
import { answerWords } from './answer-words';
import { CountsTable } from './counts-table';
import { GarmentSection } from './garment-section';
import { garmentWords } from './garment-words';
import { OpenedNote } from './opened-note';
import styles from './proof-sheet.module.css';
import { formContent, type RefusedForm } from './refused-form';
import { RefusedNotice } from './refused-notice';
import type { SheetContext } from './sheet-context';
import { SheetFoot } from './sheet-foot';
import { SheetHead } from './sheet-head';

type ProofSheetProps = {
  context: SheetContext;
  contactName: string | null;
  neededAt: Date;
  note: string;
  notes: string;
  statement: string;
  lettered: boolean;
  garments: readonly ViewGarment[];
  given: GivenAnswer | null;
  mayAnswer: boolean;
  signedOff: boolean;
  revisionId: string;
  /** Random, for the form. */
  formKey: string;
  /** An answer that was refused, to be shown again. */
  refused: RefusedForm | null;
};

/** The customer's page for one revision: what is shown, and the answer to it. Works without scripts. */
export function ProofSheet({ context, note, notes, garments, given, mayAnswer, ...rest }: ProofSheetProps) {
  const t = translatorFor(context.locale, 'proof');
  const { statement, lettered, revisionId, formKey, refused } = rest;
  const shown = garments.map((garment) => ({
    words: garmentWords(garment, context.locale, context.unit),
    pictures: {
      address: `${context.path}/picture/${context.number}`,
      widthPx: garment.widthPx,
      heightPx: garment.heightPx,
    },
  }));
  const isCurrent = context.state === 'current';
  return (
    <main lang={context.locale} className={styles.sheet}>
      <SheetHead
        context={context}
        contactName={rest.contactName}
        neededAt={rest.neededAt}
        given={given}
        mayAnswer={mayAnswer}
        signedOff={rest.signedOff}
      />
      {note ? (
        <section className={styles.part}>
          <h2>{t('note', { shop: context.shop.name })}</h2>
          <p className={styles.words}>{note}</p>
        </section>
      ) : null}
      {shown.map(({ words, pictures }) => (
        <GarmentSection key={words.garmentId} words={words} pictures={pictures} />
      ))}
      <section className={styles.part}>
        <h2>{t('counts')}</h2>
        {shown.map(({ words }) => (
          <CountsTable key={words.garmentId} words={words} named={shown.length > 1} />
        ))}
      </section>
      {notes ? (
        <section className={styles.part}>
          <h2>{t('notes')}</h2>
          <p className={styles.words}>{notes}</p>
        </section>
      ) : null}
      {isCurrent && (given || mayAnswer || refused) ? (
        <section id="answer" className={styles.part}>
          <h2>{t('answer.title')}</h2>
          {refused ? <RefusedNotice context={context} refused={refused} hasForm={mayAnswer} /> : null}
          {given ? (
            <AnswerGiven
              context={context}
              given={given}
              statement={statement}
              mayAnswer={mayAnswer}
              signedOff={rest.signedOff}
            />
          ) : null}
          {mayAnswer ? (
            <AnswerForm
              words={answerWords(context.locale, context.shop.name, lettered)}
              action={`${context.path}/answer`}
              revisionId={revisionId}
              formKey={formKey}
              statement={statement}
              content={formContent(t, refused, revisionId)}
              closedUnder={given?.word === 'yes' && !refused ? t('answer.again') : null}
            />
          ) : null}
        </section>
      ) : null}
      <SheetFoot context={context} />
      {isCurrent ? <OpenedNote action={`${context.path}/opened`} revisionId={revisionId} /> : null}
    </main>
  );
}
