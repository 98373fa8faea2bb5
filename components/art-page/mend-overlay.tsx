import { useTranslations } from 'use-intl';
import type { MendStep } from '@/lib/domain/art/mend/recipe';
import type { PictureSize } from './box-edits';
import { BoxOver } from './box-over';
import { withoutBox } from './erase-fields';
import { PointMarks } from './point-marks';

type MendOverlayProps = {
  step: MendStep;
  picture: PictureSize;
  unit: number;
  /** Which of several boxes is in hand. */
  boxInHand: number;
  onBoxInHand: (index: number) => void;
  onStep: (step: MendStep) => void;
};

/** What of the step in hand is set on the picture itself: its box, its boxes, the places pointed at. */
export function MendOverlay({ step, picture, unit, boxInHand, onBoxInHand, onStep }: MendOverlayProps) {
  const t = useTranslations('art-page');
  const edge = (name: 'left' | 'top' | 'right' | 'bottom') => t(`box.edge.${name}`);
  if (step.mend === 'crop') {
    return (
      <BoxOver
        box={step.box}
        picture={picture}
        unit={unit}
        words={{ box: t('box.toKeep'), edge }}
        look="kept"
        isInHand
        onChange={(box) => onStep({ ...step, box })}
      />
    );
  }
  if (step.mend === 'erase') {
    return step.boxes.map((box, index) => (
      <BoxOver
        // biome-ignore lint/suspicious/noArrayIndexKey: a box being dragged keeps its place
        key={index}
        box={box}
        picture={picture}
        unit={unit}
        words={{ box: t('box.toErase', { number: index + 1 }), edge }}
        look="gone"
        isInHand={index === boxInHand}
        onTake={() => onBoxInHand(index)}
        onChange={(to) => onStep({ ...step, boxes: step.boxes.map((each, place) => (place === index ? to : each)) })}
        onRemove={() => onStep(withoutBox(step, index))}
      />
    ));
  }
  if (step.mend === 'knockOut') {
    return (
      <PointMarks
        points={step.enclosed}
        unit={unit}
        label={(number) => t('knockOut.point', { number })}
        onRemove={(index) => onStep({ ...step, enclosed: step.enclosed.filter((_, place) => place !== index) })}
      />
    );
  }
  return null;
}
