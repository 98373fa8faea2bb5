import { ART_FACTS_FORMAT, type ArtFacts, artFactsSchema } from '@/lib/domain/art/art-facts';

/** Facts of a clean one-coloured drawing, 3000 × 2000 px, with whatever is the matter with it put in. */
export function cleanFacts(matter: Partial<ArtFacts> = {}): ArtFacts {
  return artFactsSchema.parse({
    format: ART_FACTS_FORMAT,
    widthPx: 3_000,
    heightPx: 2_000,
    inkBox: { x: 0, y: 0, width: 3_000, height: 2_000 },
    inkPx: 2_000_000,
    look: 'drawn',
    backing: null,
    junk: [],
    haze: { share: 0, reachPx: 0, spots: [] },
    detailShare: 1,
    strokes: { thinnestPx: 30, spots: [{ x: 10, y: 10, width: 30, height: 30, thicknessPx: 30 }] },
    gaps: { thinnestPx: 40, spots: [{ x: 100, y: 100, width: 40, height: 40, thicknessPx: 40 }] },
    specks: { count: 0, spots: [] },
    colours: [{ hex: '#1D3461', share: 1 }],
    oneColourHex: '#1D3461',
    ...matter,
  } satisfies ArtFacts);
}
