import type { AgeBand } from '@/lib/domain/garment/kinds';
import { STARTER_CHARTS } from '@/lib/domain/garment/starter-charts';
import type { Cloth, Garment } from '@/lib/domain/layout/document';
import { blankFromChart } from '@/lib/domain/layout/garment-edits';
import type { Translator } from '@/lib/messages/translator';
import { newId } from '@/lib/server/db/new-id';

type NewGarment = {
  readonly name: string;
  readonly fabric: string;
  readonly cloth: Cloth;
  readonly bands: readonly AgeBand[];
};

/** A garment over the starter charts of the bands it is offered in, smallest sizes first, with no counts yet. */
export function newGarment(t: Translator<'garments'>, { name, fabric, cloth, bands }: NewGarment): Garment {
  const kind = t('add.kinds.crewTee');
  const charts = STARTER_CHARTS.filter(({ ageBand }) => bands.includes(ageBand));
  const youngestFirst = charts.toSorted((a, b) => Number(a.ageBand === 'adult') - Number(b.ageBand === 'adult'));
  return {
    garmentId: newId(),
    name,
    cloth,
    blanks: youngestFirst.map((chart) =>
      blankFromChart(
        chart,
        newId(),
        t(chart.ageBand === 'youth' ? 'add.blankName.youth' : 'add.blankName.adult', { kind }),
        fabric,
      ),
    ),
    counts: [],
  };
}
