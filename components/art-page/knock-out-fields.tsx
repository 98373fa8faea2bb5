import { useTranslations } from 'use-intl';
import type { ArtFacts, Spot } from '@/lib/domain/art/art-facts';
import type { MendStep } from '@/lib/domain/art/mend/recipe';
import type { Point } from '@/lib/domain/geometry/point';
import { Button } from '../ui/button';
import { CheckField } from '../ui/check-field';
import { ColourField } from './colour-field';
import { RangeField } from './range-field';
import styles from './step-fields.module.css';

export type KnockOutStep = Extract<MendStep, { mend: 'knockOut' }>;

type KnockOutFieldsProps = { step: KnockOutStep; facts: ArtFacts; onStep: (step: KnockOutStep) => void };

/** Further than this, colours that nobody would call the backing go too (by eye). */
const MOST_TOLERANCE = 40;

/** The backing's colour, how near to it counts, and the areas the edges do not reach. */
export function KnockOutFields({ step, facts, onStep }: KnockOutFieldsProps) {
  const t = useTranslations('art-page.knockOut');
  const { hex, tolerance, fromEdges, enclosed } = step;
  const areas = facts.backing?.enclosed ?? [];
  const elsewhere = enclosed.filter((point) => !areas.some((area) => isIn(area, point)));
  const toggle = (area: Spot) => {
    const without = enclosed.filter((point) => !isIn(area, point));
    onStep({ ...step, enclosed: without.length < enclosed.length ? without : [...enclosed, middleOf(area)] });
  };
  return (
    <div className={styles.fields}>
      <ColourField
        name="backing"
        label={t('colour')}
        hex={hex}
        offered={offered(facts)}
        onHex={(to) => onStep({ ...step, hex: to })}
      />
      <RangeField
        name="tolerance"
        label={t('tolerance')}
        reading={String(tolerance)}
        hint={t('toleranceHint')}
        value={tolerance}
        min={0}
        max={MOST_TOLERANCE}
        onValue={(to) => onStep({ ...step, tolerance: to })}
      />
      <CheckField
        name="fromEdges"
        label={t('fromEdges')}
        checked={fromEdges}
        onChange={({ target }) => onStep({ ...step, fromEdges: target.checked })}
      />
      <fieldset>
        <legend className={styles.legend}>{t('enclosed')}</legend>
        <p className={styles.hint}>{t('enclosedHint')}</p>
        <div className={styles.areas}>
          {areas.map((area, index) => (
            <CheckField
              key={`${area.x}/${area.y}`}
              name={`area-${index + 1}`}
              label={t('area', { number: index + 1, width: area.width, height: area.height })}
              checked={enclosed.some((point) => isIn(area, point))}
              onChange={() => toggle(area)}
            />
          ))}
        </div>
        {areas.length > 1 ? (
          <Button kind="quiet" onClick={() => onStep({ ...step, enclosed: [...elsewhere, ...areas.map(middleOf)] })}>
            {t('allAreas')}
          </Button>
        ) : null}
        {elsewhere.length > 0 ? <p className={styles.hint}>{t('pointed', { count: elsewhere.length })}</p> : null}
      </fieldset>
    </div>
  );
}

/** The step with one more place pointed at. */
export function withPoint(step: KnockOutStep, { x, y }: Point): KnockOutStep {
  return { ...step, enclosed: [...step.enclosed, { x: Math.floor(x), y: Math.floor(y) }] };
}

function offered({ backing, colours }: ArtFacts): string[] {
  const all = [...(backing ? [backing.hex] : []), '#FFFFFF', ...colours.map(({ hex }) => hex)];
  return [...new Set(all.map((hex) => hex.toUpperCase()))].slice(0, 6);
}

function isIn({ x, y, width, height }: Spot, point: Point): boolean {
  return point.x >= x && point.x < x + width && point.y >= y && point.y < y + height;
}

function middleOf({ x, y, width, height }: Spot): Point {
  return { x: x + Math.floor(width / 2), y: y + Math.floor(height / 2) };
}
