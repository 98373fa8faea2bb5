import { useTranslations } from 'use-intl';
import type { Matrix } from '@/lib/domain/geometry/matrix';
import type { Point } from '@/lib/domain/geometry/point';
import type { PhotographSetting } from '@/lib/domain/layout/photograph';
import { checkedWidth, type WidthToCheck } from '@/lib/domain/layout/photograph-check';
import type { LengthUnit, Micrometres } from '@/lib/domain/measure/length';
import { Button } from '../ui/button';
import styles from './check-fields.module.css';
import { checkWords, widthWords } from './check-words';
import type { Mark } from './photograph-marks';
import { PointFields } from './point-fields';

type CheckFieldsProps = {
  width: WidthToCheck;
  /** Photograph px to mm of the flat; null while the photograph is not set to scale. */
  matrix: Matrix | null;
  check: PhotographSetting['check'];
  cutAcrossUm: Micrometres;
  unit: LengthUnit;
  onMove: (mark: Mark, to: Point) => void;
  onToggle: () => void;
};

/** A third measure, taken in the photograph and held beside the chart's. */
export function CheckFields({ width, matrix, check, cutAcrossUm, unit, onMove, onToggle }: CheckFieldsProps) {
  const t = useTranslations('photographs');
  const measure = widthWords(t, width);
  const said =
    matrix && check ? checkWords(t, width, checkedWidth(matrix, check, width, cutAcrossUm), cutAcrossUm, unit) : null;
  return (
    <fieldset className={styles.check}>
      <legend>{t('setting.checkTitle')}</legend>
      {check ? (
        <>
          <p>{t('setting.checkLead', { measure })}</p>
          <PointFields legend={t('setting.widthC')} name="c" at={check[0]} onMove={(to) => onMove('C', to)} />
          <PointFields legend={t('setting.widthD')} name="d" at={check[1]} onMove={(to) => onMove('D', to)} />
        </>
      ) : null}
      {said ? (
        <div role="status" className={styles.said}>
          <p>{said.found}</p>
          <p className={said.isBeyond ? styles.beyond : styles.within}>
            <span aria-hidden="true">{said.isBeyond ? '△ ' : '✓ '}</span>
            {said.verdict}
          </p>
        </div>
      ) : null}
      <Button disabled={matrix === null} onClick={onToggle}>
        {check ? t('setting.checkOff') : t('setting.checkOn', { measure })}
      </Button>
    </fieldset>
  );
}
