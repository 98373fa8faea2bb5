import { clothColours } from '@/lib/domain/garment/cloth-colours';
import { commonBox, type Scene } from '@/lib/domain/layout/scene';
import type { LengthUnit } from '@/lib/domain/measure/length';
import { shortSeal } from '@/lib/domain/revision/canonical';
import type { ViewGarment, ViewSide } from '@/lib/domain/revision/view';
import { colourWords } from '@/lib/messages/cloth-words';
import { type ReadingsTranslator, readingLine, sizeWords } from '@/lib/messages/reading-words';
import type { Translator } from '@/lib/messages/translator';
import type { Typeface } from '../text/outline-text';
import type { SceneFrame } from './scene-layers';
import { setText, type TextStyle, textWidthPx } from './set-text';
import { readingsBySize } from './size-readings';

/** A revision as it is told in one picture. */
export type RevisionSheetInput = {
  readonly shopName: string;
  readonly jobTitle: string;
  readonly number: number;
  readonly seal: string;
  readonly unit: LengthUnit;
  readonly garments: readonly ViewGarment[];
  readonly sceneOf: (sha256: string) => Scene;
};

export type SheetWords = { readonly picture: Translator<'picture'>; readonly readings: ReadingsTranslator };
export type SheetTypefaces = { readonly regular: Typeface; readonly bold: Typeface };

/** A sheet ready to be painted: paper with its words, and the scenes that go over it. */
export type RevisionSheet = {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly svg: string;
  readonly scenes: readonly { readonly scene: Scene; readonly frame: SceneFrame }[];
};

const WIDTH_PX = 1200;
const MARGIN_PX = 56;
const GUTTER_PX = 40;
const SIDE_PX = (WIDTH_PX - 2 * MARGIN_PX - GUTTER_PX) / 2;
const INSIDE_PX = WIDTH_PX - 2 * MARGIN_PX;
/** Room round a garment in its picture, mm. */
const AROUND_MM = 8;
const PAPER = '#FCFAF5';
const CARD = '#FFFFFF';
const INK = '#24222B';
const SOFT_INK = '#625E68';

type Pen = {
  readonly styles: Record<'title' | 'heading' | 'strong' | 'body' | 'soft' | 'small', TextStyle>;
  readonly svg: string[];
  readonly scenes: { scene: Scene; frame: SceneFrame }[];
  y: number;
};

/** Lays out a revision's sheet from top to bottom. Text is set as outlines; nothing depends on the fonts of the host. */
export function revisionSheet(
  input: RevisionSheetInput,
  words: SheetWords,
  { regular, bold }: SheetTypefaces,
): RevisionSheet {
  const pen: Pen = {
    styles: {
      title: { typeface: bold, capPx: 38, hex: INK },
      heading: { typeface: bold, capPx: 27, hex: INK },
      strong: { typeface: bold, capPx: 20, hex: INK },
      body: { typeface: regular, capPx: 20, hex: INK },
      soft: { typeface: regular, capPx: 20, hex: SOFT_INK },
      small: { typeface: regular, capPx: 16, hex: SOFT_INK },
    },
    svg: [],
    scenes: [],
    y: MARGIN_PX,
  };
  drawHead(pen, input, words);
  for (const garment of input.garments) drawGarment(pen, garment, input, words);
  drawFoot(pen, input, words);
  const heightPx = Math.ceil(pen.y);
  return {
    widthPx: WIDTH_PX,
    heightPx,
    scenes: pen.scenes,
    svg: [
      `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH_PX}" height="${heightPx}">`,
      `<rect width="${WIDTH_PX}" height="${heightPx}" fill="${PAPER}"/>`,
      ...pen.svg,
      '</svg>',
    ].join(''),
  };
}

function drawHead(pen: Pen, { shopName, jobTitle, number }: RevisionSheetInput, { picture }: SheetWords): void {
  const rev = picture('rev', { number });
  const cardWidth = textWidthPx(rev, pen.styles.heading) + 48;
  const right = WIDTH_PX - MARGIN_PX;
  pen.svg.push(`<rect x="${right - cardWidth}" y="${pen.y}" width="${cardWidth}" height="75" fill="${INK}"/>`);
  const onInk = { ...pen.styles.heading, hex: PAPER };
  pen.svg.push(setText(rev, onInk, { x: right - cardWidth / 2, top: pen.y + 24, align: 'middle' }).svg);
  const maxWidthPx = INSIDE_PX - cardWidth - GUTTER_PX;
  write(pen, shopName, 'soft', { maxWidthPx });
  pen.y += 24;
  write(pen, jobTitle, 'title', { maxWidthPx });
  pen.y = Math.max(pen.y, MARGIN_PX + 75) + 34;
}

function drawGarment(pen: Pen, garment: ViewGarment, input: RevisionSheetInput, words: SheetWords): void {
  const shown = middleSize(garment);
  if (!shown) return;
  rule(pen);
  pen.y += 34;
  const swatchPx = 44;
  const name = setText(garment.name, pen.styles.heading, { x: MARGIN_PX, top: pen.y, maxWidthPx: INSIDE_PX * 0.35 });
  const clothX = MARGIN_PX + name.widthPx + GUTTER_PX;
  const { cloth, outline } = { cloth: garment.cloth.hex, outline: clothColours(garment.cloth.hex).outline };
  const colours = setText(colourWords(words.readings, garment.cloth), pen.styles.body, {
    x: clothX + swatchPx + 16,
    top: pen.y + 4,
    maxWidthPx: 230,
  });
  pen.svg.push(
    name.svg,
    `<rect x="${clothX}" y="${pen.y - 9}" width="${swatchPx}" height="${swatchPx}" fill="${cloth}" stroke="${outline}" stroke-width="2"/>`,
    colours.svg,
  );
  const shownOn = words.picture('shownOn', { size: sizeWords(words.readings, shown) });
  const right = { x: WIDTH_PX - MARGIN_PX, top: pen.y + 8, align: 'right' } as const;
  pen.svg.push(setText(shownOn, pen.styles.small, right).svg);
  pen.y += Math.max(name.heightPx, colours.heightPx, 27) + 34;
  drawSides(pen, garment, shown, input, words);
  drawCounts(pen, garment, words);
  pen.y += 40;
}

/** The size that the middle garment of the order has. */
function middleSize(garment: ViewGarment): ViewGarment['sizes'][number] | undefined {
  let left = garment.total / 2;
  for (const size of garment.sizes) {
    left -= size.quantity;
    if (left <= 0) return size;
  }
  return garment.sizes.at(-1);
}

function drawSides(
  pen: Pen,
  garment: ViewGarment,
  shown: ViewGarment['sizes'][number],
  input: RevisionSheetInput,
  words: SheetWords,
): void {
  const sides = shown.sides.map((side) => ({ side, scene: input.sceneOf(side.sceneSha256) }));
  const box = commonBox(
    sides.map(({ scene }) => scene),
    AROUND_MM,
  );
  const heightPx = Math.round((SIDE_PX * box.height) / box.width);
  for (let first = 0; first < sides.length; first += 2) {
    const top = Math.round(pen.y);
    const bottoms = sides.slice(first, first + 2).map(({ side, scene }, column) => {
      const leftPx = MARGIN_PX + column * (SIDE_PX + GUTTER_PX);
      pen.scenes.push({ scene, frame: { box, leftPx, topPx: top, widthPx: SIDE_PX, heightPx } });
      pen.y = top + heightPx + 26;
      drawCaption(pen, garment, side, leftPx, input.unit, words);
      return pen.y;
    });
    pen.y = Math.max(...bottoms) + 34;
  }
}

function drawCaption(
  pen: Pen,
  garment: ViewGarment,
  side: ViewSide,
  x: number,
  unit: LengthUnit,
  { picture, readings }: SheetWords,
): void {
  const place = { x, maxWidthPx: SIDE_PX };
  write(pen, readings(`side.${side.side}`), 'heading', place);
  const prints = readingsBySize(garment, side.side);
  if (prints.length === 0) {
    pen.y += 22;
    write(pen, picture('nothingHere'), 'soft', place);
  }
  for (const print of prints) {
    pen.y += 26;
    write(pen, print.name, 'strong', place);
    for (const { sizes, reading } of print.readings) {
      pen.y += 24;
      const line = readingLine(readings, reading, unit);
      const names = sizes.map((size) => sizeWords(readings, size)).join(', ');
      write(
        pen,
        print.readings.length > 1 ? picture('forSizes', { sizes: names, reading: line }) : line,
        'body',
        place,
      );
    }
    const note = fitNoteOf(garment, print.printId);
    if (note) {
      pen.y += 24;
      write(pen, picture('meant', { note }), 'body', place);
    }
  }
}

function fitNoteOf({ sizes }: ViewGarment, printId: string): string | undefined {
  const prints = sizes.flatMap(({ sides }) => sides.flatMap((side) => side.prints));
  return prints.find((print) => print.printId === printId && print.fitNote)?.fitNote;
}

function drawCounts(pen: Pen, garment: ViewGarment, { picture, readings }: SheetWords): void {
  const cellHeight = 92;
  const ordered = garment.sizes.filter(({ quantity }) => quantity > 0);
  let x = MARGIN_PX;
  for (const size of ordered) {
    const [label, count] = [sizeWords(readings, size), String(size.quantity)];
    const width = Math.max(96, textWidthPx(label, pen.styles.body) + 40);
    if (x + width > WIDTH_PX - MARGIN_PX) {
      x = MARGIN_PX;
      pen.y += cellHeight + 12;
    }
    const middle = { x: x + width / 2, align: 'middle' } as const;
    pen.svg.push(
      `<rect x="${x}" y="${pen.y}" width="${width}" height="${cellHeight}" fill="${CARD}" stroke="${INK}" stroke-width="2"/>`,
      setText(label, pen.styles.soft, { ...middle, top: pen.y + 17 }).svg,
      setText(count, pen.styles.heading, { ...middle, top: pen.y + 51 }).svg,
    );
    x += width + 12;
  }
  const total = picture('inAll', { count: garment.total });
  if (x + 24 + textWidthPx(total, pen.styles.heading) > WIDTH_PX - MARGIN_PX) {
    x = MARGIN_PX - 16;
    pen.y += cellHeight + 12;
  }
  pen.svg.push(setText(total, pen.styles.heading, { x: x + 16, top: pen.y + 33 }).svg);
  pen.y += cellHeight;
}

function drawFoot(pen: Pen, { number, seal }: RevisionSheetInput, { picture }: SheetWords): void {
  rule(pen);
  pen.y += 30;
  write(pen, picture('howToAnswer', { number }), 'strong', { maxWidthPx: INSIDE_PX });
  pen.y += 26;
  write(pen, picture('seal', { number, seal: shortSeal(seal) }), 'small', {});
  pen.y += MARGIN_PX;
}

function rule(pen: Pen): void {
  pen.svg.push(`<rect x="${MARGIN_PX}" y="${pen.y}" width="${INSIDE_PX}" height="2" fill="${INK}"/>`);
  pen.y += 2;
}

function write(pen: Pen, text: string, style: keyof Pen['styles'], { x = MARGIN_PX, maxWidthPx = INSIDE_PX }): void {
  const set = setText(text, pen.styles[style], { x, top: pen.y, maxWidthPx });
  pen.svg.push(set.svg);
  pen.y += set.heightPx;
}
