import { useTranslations } from 'use-intl';
import type { MendStep } from '@/lib/domain/art/mend/recipe';
import { type Micrometres, UM_PER_INCH, UM_PER_MM } from '@/lib/domain/measure/length';
import { CheckField } from '../ui/check-field';
import { FieldGroup } from '../ui/field-group';
import { ColourField } from './colour-field';
import { RangeField } from './range-field';
import styles from './step-fields.module.css';

type AmountStep = Exclude<MendStep, { mend: 'crop' | 'erase' | 'knockOut' | 'redraw' }>;

type AmountFieldsProps = {
  step: AmountStep;
  /** Px of ink to a printed inch, to say what px come to on cloth. */
  pxPerInch: number;
  /** Colours of the ink and of the cloths, to recolour to. */
  offered: readonly string[];
  onStep: (step: MendStep) => void;
};

const MOST_SPECK_PX = 2_000;
const MOST_CLEAR = 254;
const MOST_THICKEN_PX = 40;
const QUARTERS = [1, 2, 3] as const;

/** The mends that take one amount, or none. */
export function AmountFields({ step, pxPerInch, offered, onStep }: AmountFieldsProps) {
  const t = useTranslations('art-page.amount');
  const mm = (px: number): string => mmWords((px * UM_PER_INCH) / pxPerInch);
  switch (step.mend) {
    case 'trim':
      return <p className={styles.hint}>{t('trim')}</p>;
    case 'clearSpecks':
      return (
        <RangeField
          name="smallerThan"
          label={t('smallerThan')}
          reading={t('pixels', { count: step.smallerThanPx })}
          hint={t('smallerThanHint')}
          value={step.smallerThanPx}
          min={2}
          max={Math.max(MOST_SPECK_PX, step.smallerThanPx)}
          onValue={(smallerThanPx) => onStep({ ...step, smallerThanPx })}
        />
      );
    case 'hardenEdge':
      return (
        <RangeField
          name="threshold"
          label={t('threshold')}
          reading={t('percent', { percent: Math.round((step.alpha * 100) / 255) })}
          hint={t('thresholdHint')}
          value={step.alpha}
          min={1}
          max={MOST_CLEAR}
          onValue={(alpha) => onStep({ ...step, alpha })}
        />
      );
    case 'recolour':
      return (
        <ColourField
          name="ink"
          label={t('ink')}
          hex={step.hex}
          offered={offered}
          onHex={(hex) => onStep({ ...step, hex })}
        />
      );
    case 'thicken':
      return (
        <RangeField
          name="thicken"
          label={t('thicken')}
          reading={t('thickenBy', { px: step.byPx, mm: mm(step.byPx) })}
          hint={t('thickenHint')}
          value={step.byPx}
          min={0.5}
          max={Math.max(MOST_THICKEN_PX, step.byPx)}
          step={0.5}
          onValue={(byPx) => onStep({ ...step, byPx })}
        />
      );
    case 'dots':
      return (
        <div className={styles.fields}>
          <RangeField
            name="cell"
            label={t('cell')}
            reading={t('cellIs', { px: step.cellPx, mm: mm(step.cellPx) })}
            hint={t('cellHint')}
            value={step.cellPx}
            min={2}
            max={Math.max(60, step.cellPx)}
            onValue={(cellPx) => onStep({ ...step, cellPx })}
          />
          <RangeField
            name="dotTurn"
            label={t('dotTurn')}
            reading={t('degrees', { degrees: step.turnCentideg / 100 })}
            value={step.turnCentideg}
            min={0}
            max={9_000}
            step={50}
            onValue={(turnCentideg) => onStep({ ...step, turnCentideg })}
          />
        </div>
      );
    case 'turn':
      return (
        <FieldGroup id="quarters" label={t('turn')} inline>
          {QUARTERS.map((quarters) => (
            <CheckField
              key={quarters}
              type="radio"
              name="quarters"
              value={quarters}
              label={t(`quarters.${quarters}`)}
              checked={step.quarters === quarters}
              onChange={() => onStep({ ...step, quarters })}
            />
          ))}
        </FieldGroup>
      );
  }
}

/** Millimetres to the hundredth: `0.35 mm`. */
function mmWords(um: Micrometres): string {
  return `${(um / UM_PER_MM).toFixed(2)} mm`;
}
