import { fieldFindings, usualCaseOf } from './field-checks';
import type { GarmentOnOffer, ListLine, Meant, PeopleList } from './list';
import { isBlankLine, sizePlace } from './list';
import type { Finding, ListCheck, OpenInList } from './list-check';
import { openChecks, stopsSending } from './list-check';
import { countedOf, listCounts } from './list-counts';
import { sizeFindings } from './size-checks';
import { namesAlike, namesTwice, numbersTwice, type SameAgain } from './twice-checks';

/** What a list is held against. */
export type CheckedAgainst = {
  readonly garments: readonly GarmentOnOffer[];
  /** Columns that lettering prints: nobody's may be empty. */
  readonly letteredColumnIds: readonly string[];
  readonly thisYear: number;
};

/**
 * Everything worth a look in a list, each finding at its cell: lines in their order, on a line from left to right. One that
 * was answered "meant so" stays, with the answer, until what it was said of changes.
 */
export function listChecks(
  list: Pick<PeopleList, 'columns' | 'settings' | 'lines'>,
  against: CheckedAgainst,
): ListCheck[] {
  const { columns, settings } = list;
  const lines = list.lines.filter((line) => !isBlankLine(line));
  if (lines.length === 0) return [];
  const twice = twiceByPerson(list, lines);
  const usual = new Map(columns.map(({ columnId }) => [columnId, usualCaseOf(lines, columnId)]));
  const found = lines.flatMap((line) => {
    const ofFields = columns.flatMap((column): Found[] => {
      const { columnId } = column;
      const text = line.fields[columnId] ?? '';
      const options = { usual: usual.get(columnId) ?? null, thisYear: against.thisYear };
      const findings = fieldFindings(text, column, options).map((finding) => ({ finding, about: text }));
      const isMissing = text.trim() === '' && against.letteredColumnIds.includes(columnId);
      if (isMissing) findings.push({ finding: { code: 'fieldMissing' }, about: '' });
      const again = twice.get(line.personId)?.filter(({ place }) => place === columnId) ?? [];
      return [...findings.map((each) => ({ ...each, place: columnId })), ...again];
    });
    return [...ofFields, ...sizeFindings(line, against.garments)].map(
      (each): ListCheck => ({
        personId: line.personId,
        ...each,
        meant: whyMeant(line.meant, each) ?? whyMeantBySharers(list.lines, each),
      }),
    );
  });
  return [...found, ...countChecks({ ...list, lines }, against.garments, settings.meant)];
}

/** What of the list has to be settled yet. */
export function openInList(list: PeopleList, checks: readonly ListCheck[]): OpenInList {
  const lines = list.lines.filter((line) => !isBlankLine(line));
  return {
    findings: openChecks(checks).length,
    stops: checks.filter(stopsSending).length,
    unconfirmed: list.settings.confirmEach ? lines.filter(({ confirmed }) => confirmed === null).length : 0,
  };
}

type Found = { readonly place: string; readonly finding: Finding; readonly about: string };

function twiceByPerson({ columns, settings }: Pick<PeopleList, 'columns' | 'settings'>, lines: readonly ListLine[]) {
  const byPerson = new Map<string, Found[]>();
  const add = (place: string, code: 'numberTwice' | 'nameTwice' | 'lookAlikeName', found: readonly SameAgain[]) => {
    for (const { personIds, about } of found) {
      for (const personId of personIds) {
        const others = personIds.filter((id) => id !== personId);
        byPerson.set(personId, [...(byPerson.get(personId) ?? []), { place, finding: { code, others }, about }]);
      }
    }
  };
  for (const { columnId, kind } of columns) {
    if (kind === 'number')
      add(columnId, 'numberTwice', numbersTwice(lines, columns, columnId, settings.numberOnceWithin));
    if (kind !== 'name') continue;
    add(columnId, 'nameTwice', namesTwice(lines, columnId));
    add(columnId, 'lookAlikeName', namesAlike(lines, columnId));
  }
  return byPerson;
}

function whyMeant(meant: readonly Meant[], { place, finding, about }: Found): string | null {
  return meant.find((each) => each.code === finding.code && each.place === place && each.about === about)?.why ?? null;
}

/** What two lines share is settled for both when it is on one of them. */
function whyMeantBySharers(lines: readonly ListLine[], found: Found): string | null {
  if (!('others' in found.finding)) return null;
  const { others } = found.finding;
  const sharers = lines.filter(({ personId }) => others.includes(personId));
  return sharers.map(({ meant }) => whyMeant(meant, found)).find((why) => why !== null) ?? null;
}

function countChecks(
  { lines, settings }: Pick<PeopleList, 'lines' | 'settings'>,
  garments: readonly GarmentOnOffer[],
  meant: readonly Meant[],
): ListCheck[] {
  const counts = listCounts(lines, settings.spares, garments);
  return garments.flatMap((garment): ListCheck[] => {
    const { garmentId, ordered } = garment;
    if (ordered.every(({ quantity }) => quantity === 0)) return [];
    const listed = counts.filter((count) => count.garmentId === garmentId);
    const differences = garment.sizes
      .map((size) => ({ size, ordered: countedOf(ordered, size), listed: countedOf(listed, size) }))
      .filter((each) => each.ordered !== each.listed);
    if (differences.length === 0) return [];
    const about = differences
      .map((each) => `${each.size.blankId}/${each.size.sizeId} ${each.ordered} ${each.listed}`)
      .join(' ')
      .slice(0, 2_000);
    const place = sizePlace(garmentId);
    const finding: Finding = { code: 'countsDiffer', garmentId, differences };
    return [{ personId: null, place, finding, about, meant: whyMeant(meant, { place, finding, about }) }];
  });
}
