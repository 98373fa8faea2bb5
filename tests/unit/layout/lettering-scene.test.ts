import fc from 'fast-check';
import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, it } from 'vitest';
import { boxAround } from '@/lib/domain/geometry/box';
import { type LayoutDocument, layoutDocumentSchema, type Print } from '@/lib/domain/layout/document';
import { layoutFault } from '@/lib/domain/layout/faults';
import { startingPrintOf } from '@/lib/domain/layout/garment-edits';
import { printFit } from '@/lib/domain/layout/layout-fit';
import { letteringFindings } from '@/lib/domain/layout/lettering-findings';
import { LOCATIONS, type LocationId } from '@/lib/domain/layout/locations';
import { printReading } from '@/lib/domain/layout/readings';
import { composeScene, flatOf, type PrintShape, placedPrint, type Scene } from '@/lib/domain/layout/scene';
import { garmentOf, groupFor, sizeOf } from '@/lib/domain/layout/sizes';
import { restacked } from '@/lib/domain/layout/stack';
import { tapesFor } from '@/lib/domain/layout/tape';
import { typeCase } from '@/lib/domain/layout/type-case';
import { unprintableLetters } from '@/lib/domain/layout/unprintable-letters';
import type { Lettering } from '@/lib/domain/lettering/lettering';
import type { People } from '@/lib/domain/people/person';
import { loadTypeEngine } from '@/lib/server/text/load-type-engine';
import { letteringOf, shippedFont } from '../lettering/fonts-at-hand';
import { TEE_LOCATIONS, teeWithPrints } from './sample-layout';

const engine = await loadTypeEngine([shippedFont('Oswald'), shippedFont('Graduate')]);
const ADULT_M = { blankId: 'crew-tee-adult', sizeId: 'M' };

const PEOPLE: People = {
  columns: [
    { columnId: 'name', name: 'Name', kind: 'name' },
    { columnId: 'number', name: 'Number', kind: 'number' },
  ],
  lines: [
    person('mia', 'Mia', '7'),
    person('zoe', 'Zoë Ødegård', '07'),
    person('long', 'Bartholomew Featherstonehaugh', '15'),
    person('none', '', ''),
  ],
};

function person(personId: string, name: string, number: string): People['lines'][number] {
  return { personId, fields: { name, number }, items: [] };
}

const NOBODY: People = { columns: [], lines: [] };
const everybody = typeCase(engine, PEOPLE);
const nobody = typeCase(engine, NOBODY);

/** A tee with lettering at a location. */
function lettered(
  locationId: LocationId,
  lettering: Lettering,
  people = NOBODY,
): { layout: LayoutDocument; print: Print } {
  const bare = { ...teeWithPrints([]), people };
  let next = 0;
  const print = startingPrintOf(
    bare,
    { kind: 'lettering', lettering },
    {
      printId: locationId,
      name: locationId,
      garmentIds: ['tee'],
      locationId,
      newId: () => `group-${locationId}-${next++}`,
    },
  );
  if (!print) throw new Error(`${locationId} does not suit`);
  return { layout: { ...bare, prints: [print] }, print };
}

function flatFor({ layout, print }: ReturnType<typeof lettered>) {
  const { blank, size } = sizeOf(garmentOf(layout, 'tee'), ADULT_M);
  return flatOf(blank.kind, size, print.side);
}

function glyphsOf(scene: Pick<Scene, 'shapes'>) {
  const found = scene.shapes.find((shape): shape is Extract<PrintShape, { kind: 'glyphs' }> => {
    return shape.kind === 'glyphs' && shape.layer === 'print';
  });
  if (!found) throw new Error('nothing is lettered');
  return found;
}

/** The box of a drawn path as another library measures it. */
function measured(d: string) {
  return boxAround(
    new svgPathProperties(d).getParts().flatMap(({ start, end, length, getPointAtLength }) => {
      return [start, end, ...Array.from({ length: 12 }, (_, index) => getPointAtLength((length * (index + 1)) / 13))];
    }),
  );
}

function keyOn(print: Print, lineId: string | null = null) {
  return { garmentId: 'tee', size: ADULT_M, side: print.side, lineId };
}

describe('lettering in a scene', () => {
  it('has its capitals at the drop, its middle on the centre line, as tall as its letter height', () => {
    for (const locationId of ['upperBack', 'backNumber', 'frontNumber', 'fullFront'] as const) {
      const made = lettered(locationId, letteringOf(['H']));
      const { print, layout } = made;
      const { capHeightUm = 0, dropUm } = groupFor(print, ADULT_M);
      const box = measured(glyphsOf(composeScene(layout, keyOn(print), nobody.sample)).d);
      const from = flatFor(made).points[LOCATIONS[locationId].measuredFrom]?.y ?? Number.NaN;
      expect(box.y - from, locationId).toBeCloseTo(dropUm / 1_000, 1);
      expect(box.height, locationId).toBeCloseTo(capHeightUm / 1_000, 1);
      expect(box.x + box.width / 2, locationId).toBeCloseTo(0, 1);
    }
  });

  it('says the words of whoever is meant, and samples for nobody', () => {
    const { layout, print } = lettered('upperBack', letteringOf(['{name} {number}']), PEOPLE);
    const said = (id: string | null) => glyphsOf(composeScene(layout, keyOn(print, id), everybody.of(id))).text;
    expect(said('mia')).toBe('MIA 7');
    // Numbers are text: 07 is not 7. Accents stay.
    expect(said('zoe')).toBe('ZOË ØDEGÅRD 07');
    expect(said(null)).toBe('NAME 00');
    const [bare] = composeScene(layout, keyOn(print, 'none'), everybody.of('none')).shapes.filter(
      ({ kind }) => kind === 'glyphs',
    );
    expect(bare).toBeUndefined();
  });

  it('keeps everybody’s capitals at one height on the garment, accents and tails beyond', () => {
    const { layout, print } = lettered('upperBack', letteringOf(['{name}'], { letterCase: 'asWritten' }), {
      columns: PEOPLE.columns,
      lines: [person('h', 'HIM', ''), person('a', 'HÅM', ''), person('g', 'HIMg', '')],
    });
    const type = typeCase(engine, { ...PEOPLE, lines: layout.people.lines });
    const placed = ['h', 'a', 'g'].map((id) => placedPrint(print, ADULT_M, flatFor({ layout, print }), type.of(id)));
    expect(new Set(placed.map(({ readBox }) => `${readBox.y} ${readBox.height}`)).size).toBe(1);
    const [plain, accented, tailed] = placed.map(({ inkBox }) => inkBox);
    expect((plain?.y ?? 0) - (accented?.y ?? 0)).toBeGreaterThan(2);
    expect((tailed?.height ?? 0) - (plain?.height ?? 0)).toBeGreaterThan(2);
  });

  it('lies within its placed outline however it is turned', () => {
    fc.assert(
      fc.property(fc.integer({ min: -18_000, max: 18_000 }), fc.integer({ min: -20, max: 20 }), (turn, archPercent) => {
        const outline = { hex: '#000000', widthUm: 2_000 };
        const made = lettered('fullFront', letteringOf(['HERON 7'], { archPercent, outline }));
        const print = { ...made.print, turnCentideg: turn };
        const layout = { ...made.layout, prints: [print] };
        const { inkBox, readBox } = placedPrint(print, ADULT_M, flatFor(made), nobody.sample);
        const box = measured(glyphsOf(composeScene(layout, keyOn(print), nobody.sample)).d);
        // The line round the letters reaches 2 mm beyond their outlines.
        expect(Math.abs(inkBox.x + 2 - box.x)).toBeLessThan(0.15);
        expect(Math.abs(inkBox.y + 2 - box.y)).toBeLessThan(0.15);
        expect(Math.abs(inkBox.width - 4 - box.width)).toBeLessThan(0.3);
        expect(readBox.x + readBox.width / 2).toBeCloseTo(0, 6);
      }),
      { numRuns: 10 },
    );
  });

  it('cannot be drawn without type, and says so', () => {
    const { layout, print } = lettered('upperBack', letteringOf(['HIM']));
    expect(() => composeScene(layout, keyOn(print))).toThrow(/without type/);
  });
});

describe('a document with lettering', () => {
  it('is whole with a letter height in each of its groups, and with none in those of a picture', () => {
    const { layout, print } = lettered('upperBack', letteringOf(['{name}']));
    expect(layoutFault(layout)).toBeNull();
    expect(layoutDocumentSchema.parse(layout)).toEqual(layout);
    const [first, ...rest] = print.sizeGroups;
    if (!first) throw new Error('no groups');
    const { capHeightUm: _gone, ...without } = first;
    expect(layoutFault({ ...layout, prints: [{ ...print, sizeGroups: [without, ...rest] }] })).toBe('letterHeight');
    const picture = teeWithPrints(['fullFront']);
    const tall = picture.prints.map((each) => ({
      ...each,
      sizeGroups: each.sizeGroups.map((group) => ({ ...group, capHeightUm: 50_800 })),
    }));
    expect(layoutFault({ ...picture, prints: tall })).toBe('letterHeight');
  });

  it('reads the letter height, and tapes show it', () => {
    const made = lettered('backNumber', letteringOf(['00']));
    const group = groupFor(made.print, ADULT_M);
    expect(printReading(made.print, group)).toMatchObject({ capHeightUm: 203_200, heightUm: 203_200 });
    const tapes = tapesFor(made.print, ADULT_M, flatFor(made), { setType: nobody.sample });
    expect(tapes.map(({ reading }) => reading)).toEqual(['drop', 'letters']);
    const letters = tapes[1];
    expect((letters?.to.y ?? 0) - (letters?.from.y ?? 0)).toBeCloseTo(203.2, 6);
  });

  it('starts clear of every line of a tee at every location, filled to what it may take across', () => {
    for (const locationId of TEE_LOCATIONS) {
      const { layout, print } = lettered(locationId, letteringOf(['HHHHHHHHHHHHHHHHHHHH']));
      const found = printFit(layout, print, nobody.longest).flatMap(({ findings }) => findings.map(({ kind }) => kind));
      expect(found, locationId).toEqual([]);
    }
  });

  it('keeps a number an inch under the foot of the name’s capitals, whoever’s name it is', () => {
    const name = lettered('upperBack', letteringOf(['{name}'], { archPercent: 0 }), PEOPLE);
    const number = lettered('backNumber', letteringOf(['{number}']));
    const both = { ...name.layout, prints: [name.print, number.print] };
    const laid = restacked(name.layout, both, 3_175, everybody);
    const [upper, lower] = laid.prints;
    if (!upper || !lower) throw new Error('a print is gone');
    expect(lower.below).toEqual({ printId: 'upperBack', gapUm: 25_400 });
    const top = (print: Print) => placedPrint(print, ADULT_M, flatFor(name), everybody.of('mia')).readBox;
    const foot = top(upper).y + top(upper).height;
    expect(Math.abs(top(lower).y - foot - 25.4)).toBeLessThan(3.175 / 2);
  });
});

describe('a number under an arched name', () => {
  it('clears the ends of the longest name of the list', () => {
    const name = lettered('upperBack', letteringOf(['{name}'], { archPercent: 20, squeezeFloorPercent: 40 }), PEOPLE);
    const number = lettered('backNumber', letteringOf(['{number}']));
    const laid = restacked(name.layout, { ...name.layout, prints: [name.print, number.print] }, 3_175, everybody);
    const [upper, lower] = laid.prints.map((print) => placedPrint(print, ADULT_M, flatFor(name), everybody.longest));
    if (!upper || !lower) throw new Error('a print is gone');
    expect(lower.inkBox.y).toBeGreaterThan(upper.inkBox.y + upper.inkBox.height);
  });
});

describe('what is said of lettering', () => {
  it('is who is squeezed and who is set lower, the worst first', () => {
    const { print, layout } = lettered('upperBack', letteringOf(['{name}']), PEOPLE);
    const found = letteringFindings(print, groupFor(print, ADULT_M), layout.people, everybody);
    const lowered = found.find(({ code }) => code === 'lowered');
    expect(lowered).toMatchObject({ people: [{ personId: 'long' }] });
    expect(found.some(({ code }) => code === 'missing')).toBe(false);
  });

  it('is nothing where everybody fits', () => {
    const { print, layout } = lettered('backNumber', letteringOf(['{number}']), PEOPLE);
    expect(letteringFindings(print, groupFor(print, ADULT_M), layout.people, everybody)).toEqual([]);
  });

  it('is which letters no font has, in whose words, and that stops a revision', () => {
    const people = { ...PEOPLE, lines: [...PEOPLE.lines, person('odd', 'A\u{13000}', '')] };
    const { layout } = lettered('upperBack', letteringOf(['{name}']), people);
    const found = unprintableLetters(layout, typeCase(engine, people));
    expect(found).toMatchObject([{ characters: ['\u{13000}'], personIds: ['odd'] }]);
    expect(unprintableLetters(layout, everybody)).toEqual([]);
  });

  it('is that strokes are too thin to hold, and from which height they are not', () => {
    const { print, layout } = lettered('leftChest', letteringOf(['crew'], { font: shippedFont('Graduate') }));
    const group = { ...groupFor(print, ADULT_M), capHeightUm: 4_000 };
    const thin = letteringFindings(print, group, layout.people, nobody).find(({ code }) => code === 'tooThin');
    if (thin?.code !== 'tooThin') throw new Error('not said');
    expect(thin.um).toBeLessThan(500);
    const tall = { ...group, capHeightUm: thin.passesAtUm + 10, widthUm: 400_000 };
    expect(letteringFindings(print, tall, layout.people, nobody).some(({ code }) => code === 'tooThin')).toBe(false);
  });

  it('takes a name of nothing for nothing: the list is what counts', () => {
    const people = { ...PEOPLE, lines: [person('none', '', '')] };
    const { print } = lettered('upperBack', letteringOf(['{name}']), people);
    const found = letteringFindings(print, groupFor(print, ADULT_M), people, typeCase(engine, people));
    expect(found.map(({ code }) => code)).toEqual(['nothingToSay']);
  });
});
