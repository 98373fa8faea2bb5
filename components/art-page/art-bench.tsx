'use client';

import { type KeyboardEvent, useMemo, useRef, useState } from 'react';
import { useTranslations } from 'use-intl';
import type { ArtNote } from '@/lib/domain/art/art-notes';
import { artFindings } from '@/lib/domain/art/findings/art-findings';
import type { MendName, MendStep } from '@/lib/domain/art/mend/recipe';
import { inkPxPerInch } from '@/lib/domain/art/sharpness';
import type { LengthUnit, Micrometres } from '@/lib/domain/measure/length';
import { artFindingWords } from '@/lib/messages/art-finding-words';
import styles from './art-bench.module.css';
import { BeforeAfter } from './before-after';
import { boxBetween } from './box-edits';
import { FindingList } from './finding-list';
import { type CarryingPrint, type KeepMend, KeepPanel, type UseOnPrints } from './keep-panel';
import { withPoint } from './knock-out-fields';
import {
  backTo,
  type MendBench,
  recipeOf,
  redoneStep,
  startedBench,
  takenStep,
  undoneStep,
  withChange,
  withInHand,
} from './mend-bench';
import { MendList } from './mend-list';
import { PictureSurface } from './picture-surface';
import { SharpnessHeadline } from './sharpness-headline';
import { isReadOffPixels, startingStep } from './starting-step';
import { StepList } from './step-list';
import { StepPanel } from './step-panel';
import { useMendPictures } from './use-mend-pictures';
import type { PreviewedArt } from './use-previews';
import { WidthField } from './width-field';

type ArtBenchProps = {
  /** The uploaded picture, and the mend of it this page is of. */
  art: PreviewedArt & { readonly name: string; readonly notes: readonly ArtNote[] };
  cloths: readonly { readonly name: string; readonly hex: string }[];
  /** Cloths to show it on where the job has no garment yet. */
  hasGarments: boolean;
  prints: readonly (CarryingPrint & { readonly widthUm: Micrometres })[];
  /** What it is checked at to begin with. */
  widthUm: Micrometres;
  unit: LengthUnit;
  keep: KeepMend;
  use: UseOnPrints;
  /** Settings for a mend, read off all pixels of the upload, or of the mended picture this page is of. */
  suggest: (mend: MendName, ofMended: boolean) => Promise<MendStep | null>;
};

/** One picture: what will go wrong with it on cloth, the mends, and before and after. */
export function ArtBench({
  art,
  cloths,
  hasGarments,
  prints,
  widthUm: startUm,
  unit,
  keep,
  use,
  suggest,
}: ArtBenchProps) {
  const t = useTranslations('art-page');
  const findingWords = useTranslations('art-findings');
  const [bench, setBench] = useState(() => startedBench(art.opened?.steps));
  const [widthUm, setWidthUm] = useState(startUm);
  const [chosen, setChosen] = useState<number | null>(null);
  const [boxInHand, setBoxInHand] = useState(0);
  const slip = useRef<HTMLDivElement>(null);
  const pictures = useMendPictures(art, bench);
  const { facts } = pictures.shown.picture;
  const { inHand } = bench;
  const recipe = recipeOf(bench);
  const isAsOpened = JSON.stringify(bench.steps) === JSON.stringify(art.opened?.steps ?? []);
  const isAsKept = isAsOpened || bench.steps.length === 0;

  const findings = useMemo(() => {
    const at = { widthUm, cloths: hasGarments ? cloths : [] };
    const isAllInk = facts.inkPx === facts.widthPx * facts.heightPx;
    const notes = art.notes.filter((note) => note !== 'noTransparency' || isAllInk);
    return artFindings(facts, notes, at).map((finding, index) => ({
      number: index + 1,
      finding,
      words: artFindingWords(findingWords, finding, { widthUm, unit }),
    }));
  }, [facts, art.notes, widthUm, cloths, hasGarments, unit, findingWords]);

  const refusalWords = (reason: string) => {
    const key = `refused.${reason}` as 'refused.failed';
    return t.has(key) ? t(key) : t('refused.failed');
  };
  const waiting = pictures.given ? null : t('waiting');

  function begin(mend: MendName): void {
    if (!pictures.given) return;
    const start = { facts: pictures.given.facts, widthUm, cloths };
    setChosen(null);
    setBoxInHand(0);
    const first = startingStep(mend, start);
    setBench((now) => withInHand(now, first));
    if (isReadOffPixels(mend) && isAsKept) {
      // Still wanted only while nobody has changed what it began with.
      suggest(mend, bench.steps.length > 0).then(
        (better) => better && setBench((now) => withChange(now, (at) => (at === first ? better : at))),
        () => undefined,
      );
    }
    // Read out what is in hand now; on a phone it lies below the picture.
    focusSlip('#in-hand-title');
  }

  /** The panel of a step goes with it: whoever was in it must not be left nowhere. */
  function close(next: (bench: MendBench) => MendBench): void {
    setBench(next);
    focusSlip('#findings-title');
  }

  function focusSlip(title: string): void {
    requestAnimationFrame(() => slip.current?.querySelector<HTMLElement>(title)?.focus());
  }

  function step(to: MendStep | null): void {
    setBench((now) => withInHand(now, to));
  }

  function keys(event: KeyboardEvent): void {
    const isText = event.target instanceof HTMLInputElement && event.target.type === 'text';
    if (event.key === 'Escape' && inHand) close((now) => withInHand(now, null));
    if (isText || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
    event.preventDefault();
    setBench(event.shiftKey ? redoneStep : undoneStep);
  }

  return (
    <div className={styles.bench} onKeyDown={keys}>
      <div className={styles.main}>
        <PictureSurface
          artId={art.artId}
          name={art.name}
          cloths={cloths}
          bench={bench}
          pictures={pictures}
          findings={findings}
          chosen={chosen}
          boxInHand={boxInHand}
          refusalWords={refusalWords}
          onBoxInHand={setBoxInHand}
          onStep={step}
          onLeave={() => close((now) => withInHand(now, null))}
          onPoint={(at) => inHand?.mend === 'knockOut' && step(withPoint(inHand, at))}
          onDraw={(from, to, isDone) => {
            if (!pictures.given) return;
            const box = boxBetween(from, to, pictures.given);
            if (inHand?.mend === 'crop') step({ ...inHand, box });
            if (inHand?.mend === 'erase') {
              const others = pictures.drawing ? inHand.boxes.slice(0, -1) : inHand.boxes;
              step({ ...inHand, boxes: [...others, box] });
              setBoxInHand(others.length);
            }
            pictures.setDrawing(!isDone);
          }}
        />
        <div className={styles.beside}>
          <BeforeAfter
            artId={art.artId}
            cloths={cloths}
            before={{ steps: [], picture: art.original }}
            after={pictures.isWorking ? null : pictures.shown}
            place={pictures.placeOfOriginal}
          />
        </div>
      </div>
      <div ref={slip} className={styles.slip}>
        {inHand && pictures.given ? (
          <StepPanel
            step={inHand}
            picture={pictures.given}
            pxPerInch={inkPxPerInch(pictures.given.facts.inkBox.width, widthUm)}
            offered={['#FFFFFF', '#24222B', ...pictures.given.facts.colours.slice(0, 4).map(({ hex }) => hex)]}
            refusal={pictures.refusal === null ? null : refusalWords(pictures.refusal)}
            boxInHand={boxInHand}
            onBoxInHand={setBoxInHand}
            onStep={(change) => setBench((now) => withChange(now, change))}
            onTake={() => close(takenStep)}
            onLeave={() => close((now) => withInHand(now, null))}
          />
        ) : (
          <>
            <section aria-labelledby="findings-title" className={styles.findings}>
              <h2 id="findings-title" tabIndex={-1} className={styles.title}>
                {t('findings.title')}
              </h2>
              <WidthField widthUm={widthUm} unit={unit} laidOut={widthsOf(prints)} onWidth={setWidthUm} />
              <SharpnessHeadline facts={facts} widthUm={widthUm} unit={unit} />
              <FindingList
                findings={findings}
                chosen={chosen}
                waiting={waiting !== null}
                onChoose={setChosen}
                onMend={begin}
              />
            </section>
            <MendList isOneColour={facts.oneColourHex !== null} waiting={waiting} onMend={begin} />
          </>
        )}
        <StepList
          bench={bench}
          onUndo={() => setBench(undoneStep)}
          onRedo={() => setBench(redoneStep)}
          onBackTo={(count) => setBench((now) => backTo(now, count))}
        />
        <KeepPanel
          recipe={isAsOpened ? null : recipe}
          waiting={inHand ? t('keep.inHand') : waiting}
          prints={prints.map((print) => (isAsOpened ? print : { ...print, carriesThis: false }))}
          canUse={isAsOpened}
          keep={keep}
          use={use}
          refusalWords={refusalWords}
        />
      </div>
    </div>
  );
}

/** The widths the picture is laid out at, each once. */
function widthsOf(prints: ArtBenchProps['prints']): { widthUm: Micrometres; where: string }[] {
  const seen = new Map(prints.map(({ widthUm, words }) => [`${words} ${widthUm}`, { widthUm, where: words }]));
  return [...seen.values()];
}
