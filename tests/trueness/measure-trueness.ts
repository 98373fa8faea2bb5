import { composeScene, type Scene } from '@/lib/domain/layout/scene';
import { sidePng } from '@/lib/server/draw/print-png';
import type { Place } from './expected-place';
import type { GeneratedLayout } from './generated-layout';
import { inkBoxesByChannel } from './print-file-boxes';
import type { Surfaces } from './surfaces';
import type { SurfaceFinding } from './surfaces-page';

/** How far anything was found from where the document says, at worst. */
export type Trueness = { svgMm: number; konvaMm: number; pngPx: number };

const MM_PER_PRINT_PX = 25.4 / 300;

/** The worst of two. */
export function worse(a: Trueness, b: Trueness): Trueness {
  return {
    svgMm: Math.max(a.svgMm, b.svgMm),
    konvaMm: Math.max(a.konvaMm, b.konvaMm),
    pngPx: Math.max(a.pngPx, b.pngPx),
  };
}

/** The worst of a trueness in millimetres on the garment. */
export function worstMm({ svgMm, konvaMm, pngPx }: Trueness): number {
  return Math.max(svgMm, konvaMm, pngPx * MM_PER_PRINT_PX);
}

/** Draws a layout on every surface and measures each with tools that are not ours. */
export async function measureTrueness(generated: GeneratedLayout, surfaces: Surfaces): Promise<Trueness> {
  const scene = composeScene(generated.layout, generated.key);
  const found = await surfaces.measure({
    scene,
    box: { x: scene.box.x - 10, y: scene.box.y - 10, width: scene.box.width + 20, height: scene.box.height + 20 },
    seamData: generated.seamData,
    svgWidthPx: 1100,
    pxPerMm: 0.83,
    originPx: { x: 600.5, y: 31.25 },
    prints: generated.prints.map(({ printId, art }) => ({ printId, pixels: cornersOf(art.ref) })),
  });
  return {
    svgMm: worstOnSurface(generated, found.svg),
    konvaMm: worstOnSurface(generated, found.konva),
    pngPx: await worstInPrintFile(generated, scene),
  };
}

function cornersOf({ widthPx, heightPx }: { widthPx: number; heightPx: number }): Place[] {
  return [0, widthPx].flatMap((x) => [0, heightPx].map((y) => ({ x, y })));
}

/** Distances on a surface are taken from the seam that is drawn on it, as a tape would. */
function worstOnSurface({ prints, seam }: GeneratedLayout, found: SurfaceFinding): number {
  const mm = ({ x, y }: Place): Place => ({
    x: seam.lowest.x + (x - found.seamLowest.x) / found.pxPerMm,
    y: seam.lowest.y + (y - found.seamLowest.y) / found.pxPerMm,
  });
  const shoulderError = Math.abs(mm(found.seamShoulder).y - seam.shoulderY);
  const errors = prints.flatMap(({ printId, art, expected }) => {
    const places = found.prints.find((print) => print.printId === printId)?.places;
    if (!places) throw new Error(`${printId} was not found`);
    return cornersOf(art.ref).map((corner, index) => {
      const place = places[index];
      if (!place) throw new Error(`${printId} was found without corner ${index}`);
      const [is, should] = [mm(place), expected.placeOf(corner)];
      return Math.hypot(is.x - should.x, is.y - should.y);
    });
  });
  return Math.max(shoulderError, ...errors);
}

async function worstInPrintFile({ prints }: GeneratedLayout, scene: Scene): Promise<number> {
  const file = await sidePng(
    scene,
    prints.map(({ art }) => art.ref),
  );
  if (!file) throw new Error('nothing to print');
  const boxes = await inkBoxesByChannel(file.png);
  const px = (mm: number, originUm: number) => (mm - originUm / 1_000) / MM_PER_PRINT_PX;
  const errors = prints.flatMap(({ art, expected: { box } }) => {
    const found = boxes[art.channel];
    if (!found) throw new Error(`${art.ref.artId} is not in the print file`);
    return [
      found.left - px(box.left, file.originXUm),
      found.right - px(box.right, file.originXUm),
      found.top - px(box.top, file.originYUm),
      found.bottom - px(box.bottom, file.originYUm),
    ];
  });
  return Math.max(...errors.map(Math.abs));
}
