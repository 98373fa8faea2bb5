import { useTranslations } from 'use-intl';
import type { Spot } from '@/lib/domain/art/art-facts';
import type { MendStep } from '@/lib/domain/art/mend/recipe';
import { Button } from '../ui/button';
import { middleBox, type PictureSize } from './box-edits';
import { BoxFields } from './box-fields';
import styles from './step-fields.module.css';

export type EraseStep = Extract<MendStep, { mend: 'erase' }>;

type EraseFieldsProps = {
  step: EraseStep;
  picture: PictureSize;
  /** Bars and edges the check found. */
  found: readonly Spot[];
  /** Which box is in hand. */
  inHand: number;
  onInHand: (index: number) => void;
  onStep: (step: EraseStep) => void;
};

/** The boxes that are made clear, one after another. */
export function EraseFields({ step, picture, found, inHand, onInHand, onStep }: EraseFieldsProps) {
  const t = useTranslations('art-page.erase');
  const { boxes } = step;
  const box = boxes[inHand];
  const add = (more: readonly Spot[]) => {
    onStep({ ...step, boxes: [...boxes, ...more.map((each) => ({ ...each }))] });
    onInHand(boxes.length + more.length - 1);
  };
  const isNew = ({ x, y, width, height }: Spot) =>
    !boxes.some((each) => each.x === x && each.y === y && each.width === width && each.height === height);
  const notYet = found.filter(isNew);
  return (
    <div className={styles.fields}>
      <p className={styles.hint}>{t('how')}</p>
      <div className={styles.row}>
        <Button onClick={() => add([middleBox(picture)])}>{t('add')}</Button>
        {notYet.length > 0 ? (
          <Button onClick={() => add(notYet)}>{t('addFound', { count: notYet.length })}</Button>
        ) : null}
      </div>
      {box ? (
        <>
          <BoxFields
            legend={t('box', { number: inHand + 1, count: boxes.length })}
            box={box}
            picture={picture}
            onChange={(to) => onStep({ ...step, boxes: boxes.map((each, index) => (index === inHand ? to : each)) })}
          />
          <div className={styles.row}>
            {boxes.length > 1 ? (
              <Button onClick={() => onInHand((inHand + 1) % boxes.length)}>{t('next')}</Button>
            ) : null}
            <Button kind="quiet" onClick={() => onStep(withoutBox(step, inHand))}>
              {t('remove')}
            </Button>
          </div>
        </>
      ) : null}
    </div>
  );
}

/** The step with one of its boxes taken out. */
export function withoutBox(step: EraseStep, index: number): EraseStep {
  return { ...step, boxes: step.boxes.filter((_, each) => each !== index) };
}
