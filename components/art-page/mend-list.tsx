import { useTranslations } from 'use-intl';
import type { MendName } from '@/lib/domain/art/mend/recipe';
import styles from './mend-list.module.css';

/** Every mend, by what it is about. */
const GROUPS = [
  { group: 'edges', names: ['crop', 'erase', 'trim', 'turn'] },
  { group: 'clear', names: ['knockOut', 'clearSpecks', 'hardenEdge', 'dots'] },
  { group: 'ink', names: ['recolour', 'thicken', 'redraw'] },
] as const satisfies readonly { group: string; names: readonly MendName[] }[];

type MendListProps = {
  /** Whether nearly all ink has one colour: only such ink can grow without running into another colour. */
  isOneColour: boolean;
  /** Why no mend can be begun just now; null when one can. */
  waiting: string | null;
  onMend: (mend: MendName) => void;
};

/** All that can be done to a picture. */
export function MendList({ isOneColour, waiting, onMend }: MendListProps) {
  const t = useTranslations('art-page.mends');
  const mends = useTranslations('art-findings.mend');
  return (
    <section aria-labelledby="mends-title" className={styles.mends}>
      <h2 id="mends-title" className={styles.title}>
        {t('title')}
      </h2>
      {GROUPS.map(({ group, names }) => (
        <fieldset key={group} className={styles.group}>
          <legend className={styles.legend}>{t(`group.${group}`)}</legend>
          {names.map((mend) =>
            mend === 'thicken' && !isOneColour ? null : (
              <button
                key={mend}
                type="button"
                className={styles.mend}
                aria-disabled={waiting !== null || undefined}
                onClick={() => {
                  if (waiting === null) onMend(mend);
                }}
              >
                {mends(mend)}
              </button>
            ),
          )}
        </fieldset>
      ))}
      {isOneColour ? null : <p className={styles.legend}>{t('onlyOneColour')}</p>}
      {waiting ? <p className={styles.legend}>{waiting}</p> : null}
    </section>
  );
}
