import { useTranslations } from 'use-intl';
import type { Point } from '@/lib/domain/geometry/point';
import { PixelField } from '../ui/pixel-field';
import styles from './point-fields.module.css';

type PointFieldsProps = { legend: string; name: string; at: Point; onMove: (to: Point) => void };

/** Where one mark is, as numbers. */
export function PointFields({ legend, name, at, onMove }: PointFieldsProps) {
  const t = useTranslations('photographs.setting');
  return (
    <fieldset className={styles.point}>
      <legend>{legend}</legend>
      <PixelField name={`${name}X`} label={t('across')} value={at.x} onValue={(x) => onMove({ ...at, x })} />
      <PixelField name={`${name}Y`} label={t('down')} value={at.y} onValue={(y) => onMove({ ...at, y })} />
    </fieldset>
  );
}
