import type { useTranslations } from 'use-intl';
import { type GarmentOnOffer, garmentOfPlace } from '@/lib/domain/people/list';
import type { ListCheck, OddCharacter } from '@/lib/domain/people/list-check';
import type { Column } from '@/lib/domain/people/person';

export type PeopleWords = ReturnType<typeof useTranslations<'people'>>;

/** As many of a list's lines as a sentence names. */
const MOST_NAMED = 4;

/** What is known when a finding is put in words. */
export type FindingContext = {
  readonly t: PeopleWords;
  readonly garments: readonly GarmentOnOffer[];
  /** The number a line has on the page. */
  readonly lineNumber: (personId: string) => number;
  /** What the cell says. */
  readonly text: string;
};

/** What a column of the table is called. */
export function placeName(
  t: PeopleWords,
  place: string,
  columns: readonly Column[],
  garments: readonly GarmentOnOffer[],
): string {
  const garmentId = garmentOfPlace(place);
  if (garmentId === null) return columns.find(({ columnId }) => columnId === place)?.name ?? place;
  if (garments.length === 1) return t('table.size');
  const garment = garments.find((each) => each.garmentId === garmentId)?.name ?? '';
  return t('table.sizeOf', { garment });
}

/** A finding in one sentence. */
export function findingWords({ finding }: Pick<ListCheck, 'finding'>, context: FindingContext): string {
  const { t } = context;
  switch (finding.code) {
    case 'sizeUnknown':
      return t('find.sizeUnknown', { typed: finding.typed });
    case 'sizeNotOffered':
      return t('find.sizeNotOffered', { typed: finding.typed, sizes: allSizes(context.garments) });
    case 'sizeAmbiguous':
      return t('find.sizeAmbiguous', {
        typed: finding.typed,
        choices: finding.choices.map(({ words }) => words).join(' / '),
      });
    case 'numberTwice':
    case 'nameTwice':
    case 'lookAlikeName':
      return t(`find.${finding.code}`, { lines: lineWords(finding.others, context) });
    case 'lookAlike':
      return t('find.lookAlike', { characters: finding.characters.map((each) => oddWords(t, each)).join('; ') });
    case 'invisible':
      return t('find.invisible', { characters: finding.characters.map(({ codePoint }) => codePoint).join(', ') });
    case 'veryLong':
      return t('find.veryLong', { count: [...context.text].length });
    case 'yearUnlikely':
      return t('find.yearUnlikely', { year: String(finding.year) });
    case 'countsDiffer':
      return t('find.countsDiffer', {
        garment: context.garments.find(({ garmentId }) => garmentId === finding.garmentId)?.name ?? '',
        differences: finding.differences
          .map(({ size, ordered, listed }) => t('find.difference', { size: size.words, ordered, listed }))
          .join('; '),
      });
    default:
      return t(`find.${finding.code}`);
  }
}

function oddWords(t: PeopleWords, { character, codePoint, like }: OddCharacter): string {
  if (like === '?') return t('find.lookAlikeStray', { character, codePoint });
  return t('find.lookAlikeOne', { character, codePoint, like });
}

function lineWords(personIds: readonly string[], { t, lineNumber }: FindingContext): string {
  const named = personIds.slice(0, MOST_NAMED).map((id) => t('find.line', { number: lineNumber(id) }));
  return personIds.length > MOST_NAMED ? `${named.join(', ')} …` : named.join(', ');
}

function allSizes(garments: readonly GarmentOnOffer[]): string {
  return [...new Set(garments.flatMap(({ sizes }) => sizes.map(({ words }) => words)))].join(', ');
}
