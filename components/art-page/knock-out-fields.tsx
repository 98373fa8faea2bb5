import { useTranslations } from 'use-intl';
import type { ArtFacts } from '@/lib/domain/art/art-facts';
import type { MendStep } from '@/lib/domain/art/mend/recipe';
import type { Point } from '@/lib/domain/geometry/point';
import { Button } from '../ui/button';
import { CheckField } from '../ui/check-field';
import { ColourField } from './colour-field';
import { areaAt, placeInArea } from './enclosed-areas';
import type { ShownPicture } from './fetch-preview';
import { RangeField } from './range-field';
import styles from './step-fields.module.css';

export type KnockOutStep = Extract<MendStep, { mend: 'knockOut' }>;

type KnockOutFieldsProps = {
  step: KnockOutStep;
  /** The picture the backing is knocked out of. */
  picture: ShownPicture;
  onStep: (change: (step: MendStep) => MendStep) => void;
};

/** Further than this, colours that nobody would call the backing go too (by eye). */
const MOST_TOLERANCE = 40;

/** The backing's colour, how near to it counts, and the areas the edges do not reach. */
export function KnockOutFields({ step, picture, onStep }: KnockOutFieldsProps) {
  const t = useTranslations('art-page.knockOut');
  const { facts } = picture;
  const { hex, tolerance, fromEdges, enclosed } = step;
  const areas = facts.backing?.enclosed ?? [];
  const chosen = new Set(enclosed.map((point) => areaAt(areas, point)));
  const elsewhere = enclosed.filter((point) => areaAt(areas, point) === null);
  const set = (to: Partial<KnockOutStep>) => onStep((now) => (now.mend === 'knockOut' ? { ...now, ...to } : now));

  // Where exactly an area is must be looked up in the picture, so the step may have changed by then.
  async function add(wanted: readonly number[]): Promise<void> {
    const places = await Promise.all(
      wanted.flatMap((index) => areas[index] ?? []).map((area) => placeInArea(picture, area, hex)),
    );
    onStep((now) => (now.mend === 'knockOut' ? { ...now, enclosed: [...now.enclosed, ...places] } : now));
  }

  function toggle(index: number): void {
    if (chosen.has(index)) set({ enclosed: enclosed.filter((point) => areaAt(areas, point) !== index) });
    else void add([index]);
  }

  return (
    <div className={styles.fields}>
      <ColourField
        name="backing"
        label={t('colour')}
        hex={hex}
        offered={offered(facts)}
        onHex={(to) => set({ hex: to })}
      />
      <RangeField
        name="tolerance"
        label={t('tolerance')}
        reading={String(tolerance)}
        hint={t('toleranceHint')}
        value={tolerance}
        min={0}
        max={MOST_TOLERANCE}
        onValue={(to) => set({ tolerance: to })}
      />
      <CheckField
        name="fromEdges"
        label={t('fromEdges')}
        checked={fromEdges}
        onChange={({ target }) => set({ fromEdges: target.checked })}
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
              checked={chosen.has(index)}
              onChange={() => toggle(index)}
            />
          ))}
        </div>
        {areas.length > 1 ? (
          <Button
            kind="quiet"
            onClick={() => add(areas.map((_, index) => index).filter((index) => !chosen.has(index)))}
          >
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
