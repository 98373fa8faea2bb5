import { useRouter } from 'next/navigation';
import { useState, useTransition } from 'react';
import { useTranslations } from 'use-intl';
import type { Recipe } from '@/lib/domain/art/mend/recipe';
import { Button } from '../ui/button';
import styles from './keep-panel.module.css';

/** A print that carries the picture, or another one made from the same upload. */
export type CarryingPrint = {
  readonly printId: string;
  /** `Full front on Crew tee` */
  readonly words: string;
  /** Whether it carries the picture this page is of. */
  readonly carriesThis: boolean;
};

/** What came of keeping: where the new picture is found, or a code for why it was not kept. */
export type Kept = { readonly ok: true; readonly href: string } | { readonly ok: false; readonly reason: string };
/** Keeps a mend, and lays it on the prints where that is wanted. */
export type KeepMend = (recipe: Recipe, useOnPrints: boolean) => Promise<Kept>;
/** Lays the picture of this page on the prints that carry a sister of it. */
export type UseOnPrints = () => Promise<{ reason: string } | null>;

type KeepPanelProps = {
  /** What there is to keep; null where nothing was changed since it was kept. */
  recipe: Recipe | null;
  /** Why it cannot be kept just now, in words; null where it can. */
  waiting: string | null;
  prints: readonly CarryingPrint[];
  /** Whether what is seen is what this page keeps: only that can be laid on prints. */
  canUse: boolean;
  keep: KeepMend;
  use: UseOnPrints;
  refusalWords: (reason: string) => string;
};

/** Keeping what was made as a picture of its own, and using it on the prints. */
export function KeepPanel({ recipe, waiting, prints, canUse, keep, use, refusalWords }: KeepPanelProps) {
  const t = useTranslations('art-page.keep');
  const router = useRouter();
  const [refusal, setRefusal] = useState<string | null>(null);
  const [isBusy, start] = useTransition();
  const others = prints.filter(({ carriesThis }) => !carriesThis);

  async function keepAndGo(recipe: Recipe, useOnPrints: boolean): Promise<{ reason: string } | null> {
    const kept = await keep(recipe, useOnPrints);
    if (!kept.ok) return kept;
    router.push(kept.href);
    return null;
  }

  function run(work: () => Promise<{ reason: string } | null>): void {
    if (isBusy || waiting) return;
    setRefusal(null);
    start(async () => {
      const refused = await work().catch(() => ({ reason: 'notReached' }));
      if (refused) start(() => setRefusal(refused.reason));
    });
  }

  return (
    <section aria-labelledby="keep-title" className={styles.keep}>
      <h2 id="keep-title" className={styles.title}>
        {t('title')}
      </h2>
      {recipe ? (
        <div className={styles.acts}>
          {prints.length > 0 ? (
            <>
              <Button
                kind="primary"
                aria-disabled={isBusy || waiting !== null}
                onClick={() => run(() => keepAndGo(recipe, true))}
              >
                {t('keepAndUse', { count: prints.length })}
              </Button>
              <Button aria-disabled={isBusy || waiting !== null} onClick={() => run(() => keepAndGo(recipe, false))}>
                {t('keep')}
              </Button>
            </>
          ) : (
            <Button
              kind="primary"
              aria-disabled={isBusy || waiting !== null}
              onClick={() => run(() => keepAndGo(recipe, false))}
            >
              {t('keep')}
            </Button>
          )}
        </div>
      ) : canUse && others.length > 0 ? (
        <div className={styles.acts}>
          <Button kind="primary" aria-disabled={isBusy} onClick={() => run(use)}>
            {t('use', { count: others.length })}
          </Button>
        </div>
      ) : null}
      {isBusy ? <p role="status">{t('working')}</p> : null}
      {waiting && !isBusy && recipe ? <p className={styles.soft}>{waiting}</p> : null}
      {refusal ? (
        <p role="alert" className={styles.refusal}>
          {refusalWords(refusal)}
        </p>
      ) : null}
      <ul className={styles.prints}>
        {prints.map(({ printId, words, carriesThis }) => (
          <li key={printId}>
            {words}: {t(carriesThis ? 'carriesThis' : 'carriesOther')}
          </li>
        ))}
      </ul>
      {prints.length === 0 ? <p className={styles.soft}>{t('onNoPrint')}</p> : null}
    </section>
  );
}
