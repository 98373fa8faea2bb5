import { useTranslations } from 'use-intl';
import type { ArtFinding } from '@/lib/domain/art/findings/art-finding';
import type { MendName } from '@/lib/domain/art/mend/recipe';
import type { FindingWords } from '@/lib/messages/art-finding-words';
import { classNames } from '../ui/class-names';
import styles from './finding-list.module.css';

/** A finding with its number on the picture and its sentence. */
export type WordedFinding = { readonly number: number; readonly finding: ArtFinding; readonly words: FindingWords };

type FindingListProps = {
  findings: readonly WordedFinding[];
  chosen: number | null;
  /** Whether no mend can be begun just now. */
  waiting: boolean;
  onChoose: (number: number | null) => void;
  onMend: (mend: MendName) => void;
};

const marks = { stops: '✕', warns: '△', notes: 'i' } as const;

/** What will go wrong on cloth, each with its place on the picture by number, and the mends that are honest. */
export function FindingList({ findings, chosen, waiting, onChoose, onMend }: FindingListProps) {
  const t = useTranslations('art-page.findings');
  const severity = useTranslations('art-findings.severity');
  const mends = useTranslations('art-findings.mend');
  if (findings.length === 0) return <p className={styles.none}>✓ {t('none')}</p>;
  return (
    <ol className={styles.list} aria-label={t('title')}>
      {findings.map(({ number, finding, words }) => (
        <li key={number} className={classNames(styles.finding, styles[finding.severity])}>
          <span className={styles.number} aria-hidden="true">
            {number}
          </span>
          <div className={styles.words}>
            <h3 className={styles.title}>
              <span className={styles.mark} aria-hidden="true">
                {marks[finding.severity]}{' '}
              </span>
              {words.title}
              <span className="visually-hidden"> ({severity(finding.severity)})</span>
            </h3>
            <p>{words.maker}</p>
            {words.number ? <p className={styles.behind}>{words.number}</p> : null}
            <div className={styles.acts}>
              {finding.mends.map((mend) => (
                <button
                  key={mend}
                  type="button"
                  className={styles.mend}
                  aria-disabled={waiting || undefined}
                  onClick={() => waiting || onMend(mend)}
                >
                  {mends(mend)}
                </button>
              ))}
              {finding.spots.length > 0 ? (
                <button
                  type="button"
                  className={styles.show}
                  aria-pressed={number === chosen}
                  onClick={() => onChoose(number === chosen ? null : number)}
                >
                  {t('show', { count: finding.spots.length })}
                </button>
              ) : null}
            </div>
          </div>
        </li>
      ))}
    </ol>
  );
}
