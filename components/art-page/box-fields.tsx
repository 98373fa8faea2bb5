import { useTranslations } from 'use-intl';
import type { Spot } from '@/lib/domain/art/art-facts';
import { PixelField } from '../ui/pixel-field';
import { boxBetween, movedBox, type PictureSize } from './box-edits';
import styles from './step-fields.module.css';

type BoxFieldsProps = { legend: string; box: Spot; picture: PictureSize; onChange: (box: Spot) => void };

/** A box as numbers: where its upper left corner is, and how large it is. */
export function BoxFields({ legend, box, picture, onChange }: BoxFieldsProps) {
  const t = useTranslations('art-page.box');
  const { x, y, width, height } = box;
  const sized = (to: { width: number; height: number }) =>
    onChange(boxBetween({ x, y }, { x: x + Math.max(1, to.width), y: y + Math.max(1, to.height) }, picture));
  return (
    <fieldset className={styles.box}>
      <legend>{legend}</legend>
      <PixelField
        name="boxLeft"
        label={t('left')}
        value={x}
        onValue={(to) => onChange(movedBox(box, { x: to - x, y: 0 }, picture))}
      />
      <PixelField
        name="boxTop"
        label={t('top')}
        value={y}
        onValue={(to) => onChange(movedBox(box, { x: 0, y: to - y }, picture))}
      />
      <PixelField name="boxWidth" label={t('width')} value={width} onValue={(to) => sized({ width: to, height })} />
      <PixelField name="boxHeight" label={t('height')} value={height} onValue={(to) => sized({ width, height: to })} />
    </fieldset>
  );
}
