import type { FontRef, Lettering } from '../lettering/lettering';
import { fieldsIn, filledLine, sampleOf } from '../lettering/lettering-text';
import { inCase, type LetteringSize, type SetLettering, setLettering } from '../lettering/set-lettering';
import { thinnestOfFont } from '../lettering/thinnest-stroke';
import type { BorrowedText, TypeEngine } from '../lettering/type-engine';
import type { People, Person } from '../people/person';
import type { SizeGroup } from './document';

/** Sets a lettering at the letter height and within the width of a size group. */
export type SetType = (lettering: Lettering, group: Pick<SizeGroup, 'widthUm' | 'capHeightUm'>) => SetLettering;

/**
 * What lettering is set from: the fonts, and the list it takes its words from. Each way of setting is the same function
 * for as long as the case is.
 */
export type TypeCase = {
  /** With the columns' names in place of somebody's words: `NAME`, `00`. */
  readonly sample: SetType;
  /**
   * With the words of whoever of the list takes the most room across; samples while the list has none. What fits with
   * these fits with everybody's.
   */
  readonly longest: SetType;
  /** With the words of one person of the list; samples for nobody, and for somebody who is not on it. */
  readonly of: (personId: string | null) => SetType;
  /** What becomes of somebody's words (null: samples) letter by letter, at any size. */
  readonly textOf: (lettering: Lettering, personId: string | null) => LetteringText;
  /** Whether it says something else for each person. */
  readonly isPersonal: (lettering: Lettering) => boolean;
  /** The thinnest stroke of a font, thousandths of its letter height; null where it draws none. */
  readonly thinnestOf: (font: FontRef) => number | null;
  /** Whether it can set type in a font. */
  readonly has: (font: FontRef) => boolean;
};

/** Words as they will be set: what of them no font has, what another font has, whether there are any. */
export type LetteringText = {
  readonly missing: readonly string[];
  readonly borrowed: readonly BorrowedText[];
  readonly isEmpty: boolean;
};

/** As many settings of one lettering as are remembered: a drag asks for another at each move. */
const MOST_REMEMBERED = 400;

/** A type case over fonts that are open and a list of people. */
export function typeCase(engine: TypeEngine, people: People): TypeCase {
  const remembered = new WeakMap<Lettering, Map<string, SetLettering>>();
  const set = (lettering: Lettering, size: LetteringSize, lines: readonly string[]): SetLettering => {
    const known = remembered.get(lettering) ?? new Map<string, SetLettering>();
    remembered.set(lettering, known);
    const key = `${size.capHeightUm}/${size.mostAcrossUm}/${lines.join('\n')}`;
    const already = known.get(key);
    if (already) return already;
    if (known.size >= MOST_REMEMBERED) known.clear();
    const done = setLettering(lettering, size, lines, engine);
    known.set(key, done);
    return done;
  };
  const samples = samplesOf(people);
  const linesFor = (lettering: Lettering, person: Person | null): string[] =>
    lettering.lines.map((line) =>
      filledLine(line, (columnId) => (person ? (person.fields[columnId] ?? '') : samples(columnId))),
    );
  const longest = longestLines(engine, people, linesFor);
  const setFor =
    (lines: (lettering: Lettering) => readonly string[]): SetType =>
    (lettering, { widthUm, capHeightUm }) => {
      if (capHeightUm === undefined) throw new Error(`lettering "${lettering.lines.join(' / ')}" has no letter height`);
      return set(lettering, { capHeightUm, mostAcrossUm: widthUm }, lines(lettering));
    };
  const sample = setFor((lettering) => linesFor(lettering, null));
  const persons = new Map(people.lines.map((person) => [person.personId, person]));
  const byPerson = new Map(
    people.lines.map((person) => [person.personId, setFor((lettering) => linesFor(lettering, person))]),
  );
  return {
    sample,
    longest: setFor(longest),
    of: (personId) => (personId === null ? undefined : byPerson.get(personId)) ?? sample,
    textOf: (lettering, personId) => {
      const words = linesFor(lettering, (personId === null ? undefined : persons.get(personId)) ?? null);
      const lines = words.map((each) => engine.outlineLine(inCase(lettering, each), lettering.font));
      return {
        missing: lines.flatMap(({ missing }) => missing),
        borrowed: lines.flatMap(({ borrowed }) => borrowed),
        isEmpty: words.every((each) => each === ''),
      };
    },
    isPersonal: ({ lines }) => fieldsIn(lines).length > 0,
    thinnestOf: (font) => thinnestOfFont(font, engine),
    has: engine.has,
  };
}

function samplesOf({ columns, lines }: People): (columnId: string) => string {
  return (columnId) => {
    const column = columns.find((each) => each.columnId === columnId) ?? { columnId, name: columnId };
    return sampleOf(
      column,
      lines.map(({ fields }) => fields[columnId] ?? ''),
    );
  };
}

type LinesFor = (lettering: Lettering, person: Person | null) => string[];

/** The words that take the most room at their own width, found once a lettering. */
function longestLines(engine: TypeEngine, { lines }: People, linesFor: LinesFor): (lettering: Lettering) => string[] {
  const found = new WeakMap<Lettering, string[]>();
  return (lettering) => {
    const known = found.get(lettering);
    if (known) return known;
    const roomOf = (words: readonly string[]) =>
      Math.max(...words.map((each) => engine.outlineLine(inCase(lettering, each), lettering.font).advance));
    const differ = fieldsIn(lettering.lines).length > 0;
    const all = differ ? lines.map((person) => linesFor(lettering, person)) : [];
    let [longest, room] = [linesFor(lettering, null), 0];
    for (const words of all.filter((each) => each.some((line) => line !== ''))) {
      const needed = roomOf(words);
      if (needed > room) [longest, room] = [words, needed];
    }
    found.set(lettering, longest);
    return longest;
  };
}
