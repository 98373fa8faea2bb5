import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { BlankStyle } from '@/lib/domain/garment/blank-style';
import { starterChart, USUAL_CUT_TOLERANCE } from '@/lib/domain/garment/starter-charts';
import { umFromInches } from '@/lib/domain/measure/length';
import { addBlank, duplicateBlank } from '@/lib/server/blanks/add-blank';
import { archiveBlank, editBlank } from '@/lib/server/blanks/edit-blank';
import { listBlanks } from '@/lib/server/blanks/list-blanks';
import { type BlankView, loadBlank } from '@/lib/server/blanks/load-blank';
import { setOnHand } from '@/lib/server/blanks/set-on-hand';
import { reader } from '@/lib/server/db/database';
import { type FreshDatabase, freshDatabase } from './database';
import { someMaker } from './job-fixture';

let fresh: FreshDatabase;
const maker = someMaker();

beforeAll(async () => {
  fresh = await freshDatabase();
});
afterAll(() => fresh.remove());

/** A youth crew tee on its starter chart, in two colours. */
function youthTee(name = 'Crew tee'): BlankStyle {
  const chart = starterChart('crew-tee-youth');
  if (!chart) throw new Error('no chart');
  return {
    name,
    kind: chart.kind,
    ageBand: chart.ageBand,
    fabric: 'Cotton',
    supplierNote: '',
    chartSource: 'starter',
    cutToleranceUm: { ...USUAL_CUT_TOLERANCE },
    sizes: chart.sizes.map(({ id, label, entered }) => ({ sizeId: id, label, entered, costMinor: 320 })),
    colours: [
      { colourId: 'navy', name: 'Navy', hex: '#20344F', heather: false },
      { colourId: 'sand', name: 'Sand', hex: '#E4D8BF', heather: true },
    ],
  };
}

async function added(style: BlankStyle): Promise<BlankView> {
  const made = await addBlank(maker, style);
  if (!made.ok) throw new Error(JSON.stringify(made));
  return present(made.blankId);
}

async function present(blankId: string): Promise<BlankView> {
  const blank = await loadBlank(maker, blankId);
  if (!blank) throw new Error(`no blank ${blankId}`);
  return blank;
}

/** The ids of a size and a colour by what they are called. */
function cell({ style }: BlankView, label: string, colour: string) {
  const sizeId = style.sizes.find((size) => size.label === label)?.sizeId ?? '';
  const colourId = style.colours.find(({ name }) => name === colour)?.colourId ?? '';
  return { sizeId, colourId };
}

function onHandOf(blank: BlankView, label: string, colour: string): number {
  const at = cell(blank, label, colour);
  const found = blank.onHand.find(({ sizeId, colourId }) => sizeId === at.sizeId && colourId === at.colourId);
  return found?.quantity ?? 0;
}

describe('the list of blanks', () => {
  it('gives back a blank as it was kept, its sizes and colours under ids of their own', async () => {
    const style = youthTee();
    const blank = await added(style);
    const nameless = (of: BlankStyle) => ({
      ...of,
      sizes: of.sizes.map(({ sizeId: _, ...rest }) => rest),
      colours: of.colours.map(({ colourId: _, ...rest }) => rest),
    });
    expect(nameless(blank.style)).toEqual(nameless(style));
    expect(new Set(blank.style.sizes.map(({ sizeId }) => sizeId)).size).toBe(5);
    expect(blank.style.sizes.map(({ sizeId }) => sizeId)).not.toContain('M');
    const row = (await listBlanks(maker)).find(({ blankId }) => blankId === blank.blankId);
    expect(row).toMatchObject({ sizeLabels: ['XS', 'S', 'M', 'L', 'XL'], onHand: 0, archived: false });
  });

  it('keeps what is on hand when sizes and colours are called otherwise, even when two swap their names', async () => {
    const blank = await added(youthTee('Swapped'));
    await setOnHand(maker, blank.blankId, [{ ...cell(blank, 'M', 'Navy'), seen: 0, quantity: 7 }]);
    const other: Record<string, string> = { Navy: 'Sand', Sand: 'Navy', M: 'Medium' };
    const edited = await editBlank(maker, blank.blankId, blank.updatedAt, (style) => ({
      ...style,
      sizes: style.sizes.map((size) => ({ ...size, label: other[size.label] ?? size.label })),
      colours: style.colours.map((colour) => ({ ...colour, name: other[colour.name] ?? colour.name })),
    }));
    expect(edited).toEqual({ ok: true });
    const after = await present(blank.blankId);
    expect(onHandOf(after, 'Medium', 'Sand')).toBe(7);
    expect(onHandOf(after, 'Medium', 'Navy')).toBe(0);
  });

  it('tells a second window that it was changed elsewhere, and changes nothing', async () => {
    const blank = await added(youthTee('Two windows'));
    const rename = (name: string) => (style: BlankStyle) => ({ ...style, name });
    expect(await editBlank(maker, blank.blankId, blank.updatedAt, rename('First'))).toEqual({ ok: true });
    const second = await editBlank(maker, blank.blankId, blank.updatedAt, rename('Second'));
    const now = await present(blank.blankId);
    expect(second).toEqual({ ok: false, reason: 'changedElsewhere', updatedAt: now.updatedAt });
    expect(now.style.name).toBe('First');
    expect(await editBlank(maker, blank.blankId, now.updatedAt, rename('Second'))).toEqual({ ok: true });
  });

  it('lets exactly one of two edits at the same moment through', async () => {
    const blank = await added(youthTee('At once'));
    const results = await Promise.all(
      ['One', 'Other'].map((name) => editBlank(maker, blank.blankId, blank.updatedAt, (style) => ({ ...style, name }))),
    );
    expect(results.map(({ ok }) => ok).toSorted()).toEqual([false, true]);
  });

  it('refuses measures that cannot be, sizes that shrink and names that repeat, and leaves the blank as it was', async () => {
    const blank = await added(youthTee('Refused'));
    const [xs, s, m] = blank.style.sizes;
    if (!(xs && s && m)) throw new Error('three sizes');
    const wide = umFromInches(40);
    const refused = await editBlank(maker, blank.blankId, blank.updatedAt, (style) => ({
      ...style,
      sizes: [{ ...xs, entered: { ...xs.entered, neckWidth: wide } }, { ...m, label: 'xs ' }, s],
      colours: style.colours.map((colour) => ({ ...colour, name: 'Navy' })),
    }));
    expect(refused).toMatchObject({
      ok: false,
      reason: 'faults',
      faults: [
        { reason: 'repeatedSize', sizeId: m.sizeId },
        { reason: 'neckWiderThanShoulders', sizeId: xs.sizeId, measure: 'neckWidth', other: { isEstimated: true } },
        { reason: 'shrinks', sizeId: s.sizeId, afterSizeId: m.sizeId, measure: 'bodyLength' },
        { reason: 'shrinks', sizeId: s.sizeId, afterSizeId: m.sizeId, measure: 'chestWidth' },
        { reason: 'shrinks', sizeId: s.sizeId, afterSizeId: m.sizeId, measure: 'sleeveLength' },
        { reason: 'repeatedColour' },
      ],
    });
    expect(await present(blank.blankId)).toEqual(blank);
    expect(await addBlank(maker, { ...blank.style, sizes: [{ ...xs, entered: {} }] })).toMatchObject({
      reason: 'faults',
      faults: [{ reason: 'missing', measure: 'bodyLength' }],
    });
  });

  it('refuses to drop a size or a colour of which some are on hand', async () => {
    const blank = await added(youthTee('On the shelf'));
    await setOnHand(maker, blank.blankId, [{ ...cell(blank, 'L', 'Sand'), seen: 0, quantity: 3 }]);
    const without = (style: BlankStyle) => ({
      ...style,
      sizes: style.sizes.filter(({ label }) => !['L', 'XL'].includes(label)),
      colours: style.colours.filter(({ name }) => name !== 'Sand'),
    });
    expect(await editBlank(maker, blank.blankId, blank.updatedAt, without)).toEqual({
      ok: false,
      reason: 'onHand',
      sizes: ['L'],
      colours: ['Sand'],
    });
    await setOnHand(maker, blank.blankId, [{ ...cell(blank, 'L', 'Sand'), seen: 3, quantity: 0 }]);
    expect(await editBlank(maker, blank.blankId, blank.updatedAt, without)).toEqual({ ok: true });
    expect((await present(blank.blankId)).style.colours.map(({ name }) => name)).toEqual(['Navy']);
  });

  it('copies chart, costs and colours under another name, and nothing that is on hand', async () => {
    const blank = await added(youthTee('Original'));
    await setOnHand(maker, blank.blankId, [{ ...cell(blank, 'S', 'Navy'), seen: 0, quantity: 4 }]);
    const copied = await duplicateBlank(maker, blank.blankId, 'Original, copy');
    if (!copied.ok) throw new Error(copied.reason);
    const copy = await present(copied.blankId);
    expect(copy.style.name).toBe('Original, copy');
    expect(copy.style.sizes.map(({ label, costMinor }) => [label, costMinor])).toEqual(
      blank.style.sizes.map(({ label, costMinor }) => [label, costMinor]),
    );
    expect(copy.onHand).toEqual([]);
    expect(copy.style.sizes.some(({ sizeId }) => blank.style.sizes.some((size) => size.sizeId === sizeId))).toBe(false);
  });

  it('puts a blank away and brings it back', async () => {
    const { blankId } = await added(youthTee('Put away'));
    const isArchived = async () => (await listBlanks(maker)).find((row) => row.blankId === blankId)?.archived;
    expect(await archiveBlank(maker, blankId, true)).toEqual({ ok: true });
    expect(await isArchived()).toBe(true);
    await archiveBlank(maker, blankId, false);
    expect(await isArchived()).toBe(false);
  });

  it('says so when there is no such blank', async () => {
    const gone = { ok: false, reason: 'noBlank' };
    expect(await loadBlank(maker, 'gone')).toBeNull();
    expect(await editBlank(maker, 'gone', new Date(), (style) => style)).toEqual(gone);
    expect(await duplicateBlank(maker, 'gone', 'Copy')).toEqual(gone);
    expect(await archiveBlank(maker, 'gone', true)).toEqual(gone);
    expect(await setOnHand(maker, 'gone', [])).toEqual(gone);
  });
});

describe('counts on hand', () => {
  it('keeps two people’s counts of different sizes, sent at the same moment', async () => {
    const blank = await added(youthTee('Counted by two'));
    const counts = [
      { ...cell(blank, 'S', 'Navy'), seen: 0, quantity: 5 },
      { ...cell(blank, 'M', 'Navy'), seen: 0, quantity: 8 },
    ];
    const both = await Promise.all(counts.map((count) => setOnHand(maker, blank.blankId, [count])));
    expect(both).toEqual([{ ok: true }, { ok: true }]);
    const now = await present(blank.blankId);
    expect([onHandOf(now, 'S', 'Navy'), onHandOf(now, 'M', 'Navy')]).toEqual([5, 8]);
  });

  it('tells the second of two who counted the same size, and keeps nothing of theirs until they have seen it', async () => {
    const blank = await added(youthTee('Counted twice'));
    const at = cell(blank, 'S', 'Navy');
    const other = { ...cell(blank, 'M', 'Navy'), seen: 0, quantity: 2 };
    expect(await setOnHand(maker, blank.blankId, [{ ...at, seen: 0, quantity: 5 }])).toEqual({ ok: true });
    expect(await setOnHand(maker, blank.blankId, [{ ...at, seen: 0, quantity: 6 }, other])).toEqual({
      ok: false,
      reason: 'countedMeanwhile',
      now: [{ ...at, quantity: 5 }],
    });
    expect(onHandOf(await present(blank.blankId), 'M', 'Navy')).toBe(0);
    expect(await setOnHand(maker, blank.blankId, [{ ...at, seen: 5, quantity: 6 }, other])).toEqual({ ok: true });
    expect(onHandOf(await present(blank.blankId), 'S', 'Navy')).toBe(6);
  });

  it('has on hand the sum of its moves, each naming who counted, whatever was counted in turn', async () => {
    const blank = await added(youthTee('Counted in turn'));
    const at = cell(blank, 'XL', 'Sand');
    await fc.assert(
      fc.asyncProperty(fc.array(fc.integer({ min: 0, max: 500 }), { minLength: 1, maxLength: 8 }), async (counted) => {
        for (const quantity of counted) {
          const seen = onHandOf(await present(blank.blankId), 'XL', 'Sand');
          expect(await setOnHand(maker, blank.blankId, [{ ...at, seen, quantity }])).toEqual({ ok: true });
        }
        expect(onHandOf(await present(blank.blankId), 'XL', 'Sand')).toBe(counted.at(-1));
      }),
      { numRuns: 12 },
    );
    const moves = await reader().stockMove.findMany({ where: { sizeId: at.sizeId } });
    expect(
      moves.every(({ change, byUserId, reason }) => change !== 0 && byUserId === maker.userId && reason === 'counted'),
    ).toBe(true);
  });

  it('refuses a size or a colour that is no longer there', async () => {
    const blank = await added(youthTee('Colour gone'));
    const count = { ...cell(blank, 'S', 'Navy'), colourId: 'gone', seen: 0, quantity: 1 };
    expect(await setOnHand(maker, blank.blankId, [count])).toEqual({ ok: false, reason: 'sizeOrColourGone' });
  });
});
