import { useState } from 'react';
import { useTranslations } from 'use-intl';
import type { MendStep } from '@/lib/domain/art/mend/recipe';
import type { Point } from '@/lib/domain/geometry/point';
import { Button } from '../ui/button';
import { classNames } from '../ui/class-names';
import type { WordedFinding } from './finding-list';
import { GroundChoice } from './ground-choice';
import type { MendBench } from './mend-bench';
import { MendOverlay } from './mend-overlay';
import { PictureFrame, type PressMeans } from './picture-frame';
import { PictureLayer } from './picture-layer';
import styles from './picture-surface.module.css';
import { SpotMarks } from './spot-marks';
import type { MendPictures } from './use-mend-pictures';
import { WipedPictures } from './wiped-pictures';

type PictureSurfaceProps = {
  artId: string;
  name: string;
  cloths: readonly { readonly name: string; readonly hex: string }[];
  bench: MendBench;
  pictures: MendPictures;
  findings: readonly WordedFinding[];
  chosen: number | null;
  boxInHand: number;
  refusalWords: (reason: string) => string;
  onBoxInHand: (index: number) => void;
  onStep: (step: MendStep) => void;
  onLeave: () => void;
  onPoint: (at: Point) => void;
  onDraw: (from: Point, to: Point, isDone: boolean) => void;
};

/** The picture to work on: on checks or cloth, with the places of findings, the step in hand, and before over after. */
export function PictureSurface(props: PictureSurfaceProps) {
  const { artId, name, cloths, bench, pictures, findings, chosen, boxInHand } = props;
  const { refusalWords, onBoxInHand, onStep, onLeave, onPoint, onDraw } = props;
  const t = useTranslations('art-page.surface');
  const [groundHex, setGroundHex] = useState<string | null>(null);
  const [wipePercent, setWipePercent] = useState(0);
  const { inHand } = bench;
  const { shown, compared, placeOfCompared } = pictures;
  const canCompare = placeOfCompared !== null && shown.steps.length > compared.steps.length;
  return (
    <div className={classNames(styles.surface, inHand !== null && styles.mending)}>
      <PictureFrame
        title={t('title', { name })}
        picture={shown.picture}
        groundHex={groundHex}
        press={pressOf(inHand)}
        onDraw={onDraw}
        onPoint={onPoint}
        tools={<GroundChoice cloths={cloths} hex={groundHex} onHex={setGroundHex} />}
        note={<SurfaceNote pictures={pictures} inHand={inHand} refusalWords={refusalWords} onLeave={onLeave} />}
      >
        {(unit, seen) => (
          <>
            {canCompare && placeOfCompared && wipePercent > 0 ? (
              <WipedPictures
                artId={artId}
                before={compared}
                after={shown}
                place={placeOfCompared}
                wipe={wipePercent / 100}
                unit={unit}
                seen={seen}
              />
            ) : (
              <PictureLayer artId={artId} {...shown} seen={seen} />
            )}
            {inHand && pictures.given ? (
              <MendOverlay
                step={inHand}
                picture={pictures.given}
                unit={unit}
                boxInHand={boxInHand}
                onBoxInHand={onBoxInHand}
                onStep={onStep}
              />
            ) : (
              <SpotMarks
                findings={findings.map(({ number, finding: { severity, spots } }) => ({ number, severity, spots }))}
                chosen={chosen}
                unit={unit}
              />
            )}
          </>
        )}
      </PictureFrame>
      {canCompare ? (
        <label className={styles.wipe}>
          <span>{t(inHand ? 'beforeStep' : 'before')}</span>
          <input
            type="range"
            name="wipe"
            min={0}
            max={100}
            step={1}
            value={wipePercent}
            aria-label={t('wipe')}
            aria-valuetext={t('wipeAt', { percent: wipePercent })}
            onChange={({ target }) => setWipePercent(target.valueAsNumber)}
          />
        </label>
      ) : null}
    </div>
  );
}

function pressOf(inHand: MendStep | null): PressMeans {
  if (inHand?.mend === 'crop' || inHand?.mend === 'erase') return 'box';
  return inHand?.mend === 'knockOut' ? 'point' : 'look';
}

/** Whether asking again may well help. Anything else is said where the step is set. */
function isPassing(refusal: string): boolean {
  return refusal === 'notReached' || refusal === 'tookTooLong' || refusal === 'signedOut';
}

type SurfaceNoteProps = {
  pictures: MendPictures;
  inHand: MendStep | null;
  refusalWords: (reason: string) => string;
  onLeave: () => void;
};

/** What is going on with the picture: being computed, refused, or nothing changed. */
function SurfaceNote({ pictures, inHand, refusalWords, onLeave }: SurfaceNoteProps) {
  const t = useTranslations('art-page.surface');
  const { isWorking, refusal, changesNothing } = pictures;
  const { widthPx, heightPx } = pictures.compared.picture;
  return (
    <div role="status" className={styles.status}>
      {isWorking ? (
        <p className={styles.note}>
          {t('working', { width: widthPx, height: heightPx })}
          {inHand ? (
            <Button kind="quiet" onClick={onLeave}>
              {t('stop')}
            </Button>
          ) : null}
        </p>
      ) : null}
      {refusal && !isWorking && (!inHand || isPassing(refusal)) ? (
        <p className={styles.note}>
          ✕ {refusalWords(refusal)}
          <Button kind="quiet" onClick={pictures.again}>
            {t('again')}
          </Button>
        </p>
      ) : null}
      {changesNothing && !isWorking ? <p className={styles.note}>{t('changesNothing')}</p> : null}
    </div>
  );
}
