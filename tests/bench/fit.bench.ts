import type { ArtRef } from '@/lib/domain/art/art-ref';
import { PRESSABLE_LINES, SIDES } from '@/lib/domain/garment/flat';
import { STARTER_CHARTS, starterChart } from '@/lib/domain/garment/starter-charts';
import { boxAround } from '@/lib/domain/geometry/box';
import { convexHull } from '@/lib/domain/geometry/hull';
import { flattened } from '@/lib/domain/geometry/path';
import { pathFromData } from '@/lib/domain/geometry/path-data';
import type { Point } from '@/lib/domain/geometry/point';
import { emptyLayout, type LayoutDocument } from '@/lib/domain/layout/document';
import { addGarment, blankFromChart, startingPrint } from '@/lib/domain/layout/garment-edits';
import { printFit } from '@/lib/domain/layout/layout-fit';
import { type LocationId, locationsFitting } from '@/lib/domain/layout/locations';
import { flatOf, placedPrint } from '@/lib/domain/layout/scene';
import { keyOf, offeredSizes } from '@/lib/domain/layout/sizes';
import { chosenPrint } from '@/lib/editor/chosen-print';
import { movePrint } from '@/lib/editor/commands/place-print';
import { selectPrint } from '@/lib/editor/selection';
import { tradeSnap } from '@/lib/editor/snapping';
import { newTableEditor, shownLayout, whileDragging, withSelection } from '@/lib/editor/table-editor';
import { median, medianOfRatios, milliseconds, printResult } from './measure';

// What the fit costs, and what it says of starting values. Ten prints on twelve sizes, every finding of each; the floor
// is one pass over the vertices of the very same outlines, lines and inks, added up. A frame is what dragging a print
// works out: the command, prints that follow, and the fit of the print in hand on every size.

const SIZES = 12;
const PRINTS: readonly LocationId[] = [
  'fullFront',
  'centreChest',
  'leftChest',
  'rightChest',
  'frontNumber',
  'upperBack',
  'fullBack',
  'backNeck',
  'backNumber',
  'leftSleeve',
];
/** Times a fit and a pass are repeated in one measurement, so that the clock's own grain does not show. */
const TIMES = { fit: 20, pass: 400 };
const ROUNDS = 5;
const FRAMES = 120;

/** A picture with a round hull of this many corners, as art traced from pixels has. */
function roundArt(corners: number): ArtRef {
  const points = Array.from({ length: corners }, (_, index): Point => {
    const angle = (index / corners) * 2 * Math.PI;
    return { x: 500 + 480 * Math.cos(angle), y: 400 + 380 * Math.sin(angle) };
  });
  const hull = convexHull(points);
  return {
    artId: 'round',
    sha256: 'b'.repeat(64),
    widthPx: 1000,
    heightPx: 800,
    inkBox: boxAround(hull),
    inkHull: hull.map(({ x, y }): [number, number] => [x, y]),
  };
}

let nextId = 0;
const newId = () => {
  nextId += 1;
  return `id-${nextId}`;
};

function layoutOn(chartIds: readonly string[], locationIds: readonly LocationId[], art: ArtRef): LayoutDocument {
  const blanks = chartIds.map((id) => {
    const chart = starterChart(id);
    if (!chart) throw new Error(`no chart ${id}`);
    return blankFromChart(chart, id, id, '');
  });
  const cloth = { name: 'Navy', hex: '#20344F', heather: false };
  const layout = addGarment(emptyLayout('Placed by hand.'), {
    garmentId: 'garment',
    name: 'Garment',
    cloth,
    blanks,
    counts: blanks
      .flatMap(({ blankId, sizes }) => sizes.map(({ sizeId }) => ({ blankId, sizeId, quantity: 2 })))
      .slice(0, SIZES),
  });
  const prints = locationIds.map((locationId) => {
    const print = startingPrint(layout, art, {
      printId: locationId,
      name: locationId,
      garmentIds: ['garment'],
      locationId,
      newId,
    });
    if (!print) throw new Error(`${locationId} does not suit ${chartIds.join(' and ')}`);
    return print;
  });
  return { ...layout, prints };
}

/** Findings of every starting value on every size of every starter chart, for a wide, a square and a tall picture. */
function defaultFindings(): number {
  const arts = [1 / 4, 1, 3].map((tall): ArtRef => {
    const [widthPx, heightPx] = [1000, Math.round(1000 * tall)];
    const box = { x: 0, y: 0, width: widthPx, height: heightPx };
    const inkHull: [number, number][] = [
      [0, 0],
      [widthPx, 0],
      [widthPx, heightPx],
      [0, heightPx],
    ];
    return { ...roundArt(4), widthPx, heightPx, inkBox: box, inkHull };
  });
  return STARTER_CHARTS.reduce((sum, chart) => {
    const locations = SIDES.flatMap((side) => locationsFitting(side, [chart])).map(({ id }) => id);
    const layouts = arts.map((art) => {
      const layout = layoutOn([chart.id], locations, art);
      return { ...layout, garments: layout.garments.map((garment) => ({ ...garment, counts: [] })) };
    });
    return sum + layouts.reduce((all, layout) => all + findingsOf(layout), 0);
  }, 0);
}

function findingsOf(layout: LayoutDocument): number {
  return layout.prints.reduce(
    (sum, print) => sum + printFit(layout, print).reduce((all, { findings }) => all + findings.length, 0),
    0,
  );
}

/** Every vertex that a fit of the layout deals with: outlines, lines a press cannot cross, and the placed inks. */
function verticesOf(layout: LayoutDocument): Point[][] {
  const [garment] = layout.garments;
  if (!garment) throw new Error('no garment');
  const ordered = offeredSizes(garment).filter(({ quantity }) => quantity > 0);
  return layout.prints.flatMap((print) =>
    ordered.flatMap((offered) => {
      const flat = flatOf(offered.blank.kind, offered.size, print.side);
      const lines = flat.lines.filter(({ line }) => !PRESSABLE_LINES.has(line));
      const drawn = [flat.outline, ...lines.map(({ d }) => d)].flatMap((d) => flattened(pathFromData(d), 24));
      return [...drawn, [...placedPrint(print, keyOf(offered), flat).inkOutline]];
    }),
  );
}

let sink = 0;
function pass(polygons: readonly (readonly Point[])[]): void {
  for (const polygon of polygons) for (const { x, y } of polygon) sink += x + y;
}

const layout = layoutOn(['crew-tee-youth', 'crew-tee-adult'], PRINTS, roundArt(48));
const polygons = verticesOf(layout);
const fits = milliseconds(() => {
  for (let time = 0; time < TIMES.fit; time += 1) sink += findingsOf(layout);
});
const passes = milliseconds(() => {
  for (let time = 0; time < TIMES.pass; time += 1) pass(polygons);
});
const perFit = async () => (await fits()) / TIMES.fit;
const perPass = async () => (await passes()) / TIMES.pass;
const { ratio, subject, floor: passMs } = await medianOfRatios(perFit, perPass, { rounds: ROUNDS, warmUps: 3 });

/** One drag of the full front round the garment, over its seams and back; each frame fits it on every size. */
function drag(): void {
  const start = withSelection(newTableEditor(layout, 'in', false), (shown, selection) =>
    selectPrint(shown, selection, 'fullFront'),
  );
  let editor = start;
  for (let frame = 0; frame < FRAMES; frame += 1) {
    const angle = (frame / FRAMES) * 2 * Math.PI;
    const by = { byXMm: 160 * Math.sin(angle), byYMm: 120 * Math.sin(2 * angle) };
    editor = whileDragging(editor, movePrint, { ...by, snap: tradeSnap('in', 3) });
    const chosen = chosenPrint({ layout: shownLayout(editor), selection: editor.selection });
    if (!chosen) throw new Error('nothing in hand');
    sink += printFit(shownLayout(editor), chosen.print).length;
  }
}

const frames = milliseconds(drag);
await frames();
const drags: number[] = [];
for (let round = 0; round < ROUNDS; round += 1) drags.push((await frames()) / FRAMES);

process.stderr.write(
  `fit ${subject.toFixed(3)} ms, pass ${passMs.toFixed(4)} ms over ${polygons.flat().length} vertices (${sink > 0 ? 'done' : ''})\n`,
);
printResult('fit', { ratio, ms_per_frame: median(drags), default_findings: defaultFindings() });
