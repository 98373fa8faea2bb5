'use client';

// In the browser's bundle though little of it does anything there. The server renders it to HTML once; as its own tree it
// would be sent and taken apart a second time, which measured a quarter of this page's time.

import { AnswerForm } from './answer-form';
import { AnswerGiven } from './answer-given';
import { CountsTable } from './counts-table';
import { GarmentSection } from './garment-section';
import { OpenedNote } from './opened-note';
import styles from './proof-sheet.module.css';
import { RefusedNotice } from './refused-notice';
import { SheetFoot } from './sheet-foot';
import { SheetHead } from './sheet-head';
import type { SheetWords } from './sheet-words';

/** The customer's page for one revision: what is shown, and the answer to it. Works without scripts. */
export function ProofSheet({ words }: { words: SheetWords }) {
  const { note, garments, counts, notes, answer, opened } = words;
  return (
    <main lang={words.locale} className={styles.sheet}>
      <SheetHead words={words} />
      {note ? <Words {...note} /> : null}
      {garments.map((garment) => (
        <GarmentSection key={garment.words.garmentId} {...garment} />
      ))}
      <section className={styles.part}>
        <h2>{counts}</h2>
        {garments.map((garment) => (
          <CountsTable key={garment.words.garmentId} words={garment.words} named={garments.length > 1} />
        ))}
      </section>
      {notes ? <Words {...notes} /> : null}
      {answer ? (
        <section id="answer" className={styles.part}>
          <h2>{answer.title}</h2>
          {answer.refused ? <RefusedNotice words={answer.refused} /> : null}
          {answer.given ? <AnswerGiven words={answer.given} /> : null}
          {answer.form ? <AnswerForm {...answer.form} /> : null}
        </section>
      ) : null}
      <SheetFoot reach={words.reach} seal={words.seal} />
      {opened ? <OpenedNote {...opened} /> : null}
    </main>
  );
}

function Words({ title, text }: { title: string; text: string }) {
  return (
    <section className={styles.part}>
      <h2>{title}</h2>
      <p className={styles.words}>{text}</p>
    </section>
  );
}
