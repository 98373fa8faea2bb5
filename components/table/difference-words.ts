import { useTranslations } from 'use-intl';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import type { LengthUnit } from '@/lib/domain/measure/length';
import type { LayoutDifference } from '@/lib/editor/layout-differences';
import { turnValue } from '@/lib/editor/typed-reading';
import { readingWords } from '@/lib/messages/reading-words';
import { groupWords } from './group-words';

/** Puts one difference between two copies of a layout into a sentence: what it is in mine, what in theirs. */
export function useDifferenceWords(
  { garments }: Pick<LayoutDocument, 'garments'>,
  unit: LengthUnit,
): (difference: LayoutDifference) => string {
  const t = useTranslations('table.conflict.differs');
  const readings = useTranslations('readings');

  function namesOf(garmentIds: readonly string[]): string {
    return garments
      .filter(({ garmentId }) => garmentIds.includes(garmentId))
      .map(({ name }) => name)
      .join(', ');
  }

  function readsWords({ print, sizes, mine, theirs }: Extract<LayoutDifference, { kind: 'reads' }>): string {
    const [here, there] = [mine, theirs].map((reading) => readingWords(readings, reading, unit));
    const parts = (['size', 'drop', 'across'] as const).filter((part) => here?.[part] !== there?.[part]);
    const said = (words: typeof here) => parts.map((part) => words?.[part]).join(', ');
    const where = garments.map((garment) => groupWords(readings, garment, sizes)).filter((words) => words !== '');
    return t('reads', { print: print.name, sizes: where.join(', '), mine: said(here), theirs: said(there) });
  }

  return (difference) => {
    switch (difference.kind) {
      case 'onlyMine':
      case 'onlyTheirs':
        return t(difference.kind, { print: difference.print.name });
      case 'renamed':
        return t('renamed', { mine: difference.mine, theirs: difference.theirs });
      case 'moved':
        return t('moved', {
          print: difference.mine.name,
          mine: readings(`location.${difference.mine.locationId}`),
          theirs: readings(`location.${difference.theirs.locationId}`),
        });
      case 'otherPicture':
      case 'otherLettering':
        return t(difference.kind, { print: difference.mine.name });
      case 'goesAheadSoft':
        return t('goesAheadSoft', { print: difference.print.name, inMine: difference.mine ? 'yes' : 'no' });
      case 'otherGarments':
        return t('otherGarments', {
          print: difference.mine.name,
          mine: namesOf(difference.mine.garmentIds),
          theirs: namesOf(difference.theirs.garmentIds),
        });
      case 'turned':
        return t('turned', {
          print: difference.print.name,
          mine: turnValue(difference.mine),
          theirs: turnValue(difference.theirs),
        });
      case 'reads':
        return readsWords(difference);
      default:
        return t(difference.kind);
    }
  };
}
