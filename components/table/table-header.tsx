import Link from 'next/link';
import { useRouter } from 'next/navigation';
import { type MouseEvent, memo } from 'react';
import { useFormatter, useTranslations } from 'use-intl';
import type { EditLabel } from '@/lib/editor/command';
import { afterRedo, afterUndo } from '@/lib/editor/table-editor';
import { buttonClass } from '../ui/button';
import { classNames } from '../ui/class-names';
import type { Saving } from './draft-keeper';
import styles from './table-header.module.css';
import type { Change } from './use-reading';

/** The job as the table's header names it. */
export type TableJob = {
  readonly jobId: string;
  readonly title: string;
  readonly customerName: string;
  /** What happens next with the job, in one sentence; null where it happens on the table itself. */
  readonly nextWords: string | null;
  /** The number the next revision gets. */
  readonly nextNumber: number;
};

type TableHeaderProps = {
  job: TableJob;
  saving: Saving;
  /** What undo and redo would take back and do again; null when there is nothing. */
  undo: EditLabel | null;
  redo: EditLabel | null;
  locked: boolean;
  change: Change;
  /** Lists everything that can be done. */
  onList: () => void;
  /** Saves what is not saved yet; true once all of it is. */
  flush: () => Promise<boolean>;
};

/** Whose job it is and what comes next; how it stands with saving; back, forth, and on to sending. */
export const TableHeader = memo(function TableHeader({
  job,
  saving,
  undo,
  redo,
  locked,
  change,
  onList,
  flush,
}: TableHeaderProps) {
  const t = useTranslations('table');
  const page = `/jobs/${job.jobId}`;
  return (
    <header className={styles.header}>
      <SavedLink href={page} flush={flush} className={styles.back} label={t('toJob')}>
        <svg viewBox="0 0 20 20" aria-hidden="true">
          <path d="M11 3 4 10l7 7M4 10h13" />
        </svg>
      </SavedLink>
      <div className={styles.words}>
        <h1 className={styles.title}>{job.title}</h1>
        <p className={styles.customer}>{job.customerName}</p>
        {job.nextWords === null ? null : <p className={styles.next}>{job.nextWords}</p>}
      </div>
      <div className={styles.doing}>
        {locked ? null : (
          <>
            <SavingWords saving={saving} />
            <HistoryButton what={undo} words={t('undo')} name="undoWhat" onPress={() => change(afterUndo)}>
              <path d="M7 4 3 8l4 4M3 8h9a4.5 4.5 0 0 1 0 9H8" />
            </HistoryButton>
            <HistoryButton what={redo} words={t('redo')} name="redoWhat" onPress={() => change(afterRedo)}>
              <path d="m13 4 4 4-4 4M17 8H8a4.5 4.5 0 0 0 0 9h4" />
            </HistoryButton>
            <button
              type="button"
              className={styles.square}
              aria-label={t('list.open')}
              title={t('list.open')}
              aria-keyshortcuts="?"
              onClick={onList}
            >
              <span aria-hidden="true">?</span>
            </button>
            <SavedLink href={`${page}/send`} flush={flush} className={buttonClass({ kind: 'primary' })}>
              {t('send', { number: job.nextNumber })}
            </SavedLink>
          </>
        )}
      </div>
    </header>
  );
});

/** A link away from the table that first waits until everything is saved. */
function SavedLink({
  href,
  flush,
  label,
  className,
  children,
}: {
  href: string;
  flush: () => Promise<boolean>;
  label?: string;
  className?: string;
  children: React.ReactNode;
}) {
  const router = useRouter();

  async function leave(event: MouseEvent): Promise<void> {
    if (event.metaKey || event.ctrlKey || event.shiftKey || event.button !== 0) return;
    event.preventDefault();
    if (await flush()) router.push(href);
  }

  return (
    <Link href={href} className={className} aria-label={label} title={label} onClick={(event) => void leave(event)}>
      {children}
    </Link>
  );
}

type HistoryButtonProps = {
  what: EditLabel | null;
  words: string;
  name: 'undoWhat' | 'redoWhat';
  onPress: () => void;
  children: React.ReactNode;
};

function HistoryButton({ what, words, name, onPress, children }: HistoryButtonProps) {
  const t = useTranslations('table');
  const label = what ? t(name, { what: t(`edit.${what}`) }) : words;
  return (
    <button
      type="button"
      className={styles.square}
      aria-label={label}
      title={label}
      aria-disabled={what === null || undefined}
      onClick={() => what && onPress()}
    >
      <svg viewBox="0 0 20 20" aria-hidden="true">
        {children}
      </svg>
    </button>
  );
}

function SavingWords({ saving }: { saving: Saving }) {
  const t = useTranslations('table.saving');
  const format = useFormatter();
  const isTrouble = saving.kind === 'stopped' || saving.kind === 'trying' || saving.kind === 'changedElsewhere';
  return (
    <p role={isTrouble ? 'alert' : undefined} className={classNames(styles.saving, isTrouble && styles.trouble)}>
      {words()}
    </p>
  );

  function words(): string {
    switch (saving.kind) {
      case 'saved':
        return t('saved', { time: format.dateTime(saving.at, { hour: 'numeric', minute: '2-digit' }) });
      case 'stopped':
      case 'trying':
        return t(saving.reason);
      default:
        return t(saving.kind);
    }
  }
}
