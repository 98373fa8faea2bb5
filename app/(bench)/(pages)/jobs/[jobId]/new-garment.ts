import type { Cloth, Garment } from '@/lib/domain/layout/document';
import { blankFromChart } from '@/lib/domain/layout/garment-edits';
import type { Translator } from '@/lib/messages/translator';
import { newId } from '@/lib/server/db/new-id';
import { OFFERED_BANDS, OFFERED_KIND, type OfferedBand, offeredChart } from './offered-charts';

type NewGarment = {
  readonly name: string;
  readonly fabric: string;
  readonly cloth: Cloth;
  readonly bands: readonly OfferedBand[];
};

/** A garment over the starter charts of the bands it is offered in, smallest sizes first, with no counts yet. */
export function newGarment(t: Translator<'garments'>, { name, fabric, cloth, bands }: NewGarment): Garment {
  const kind = t(`add.kinds.${OFFERED_KIND}`);
  return {
    garmentId: newId(),
    name,
    cloth,
    blanks: OFFERED_BANDS.filter((band) => bands.includes(band)).map((band) =>
      blankFromChart(offeredChart(band), newId(), t(`add.blankName.${band}`, { kind }), fabric),
    ),
    counts: [],
  };
}
