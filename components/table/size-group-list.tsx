import { useTranslations } from 'use-intl';
import { printReading } from '@/lib/domain/layout/readings';
import { keyOf, sameSize, sizesToShow } from '@/lib/domain/layout/sizes';
import type { LengthUnit } from '@/lib/domain/measure/length';
import type { ChosenPrint } from '@/lib/editor/chosen-print';
import { selectSize } from '@/lib/editor/selection';
import { withSelection } from '@/lib/editor/table-editor';
import { type ReadingWords, readingWords } from '@/lib/messages/reading-words';
import { classNames } from '../ui/class-names';
import { groupWords } from './group-words';
import styles from './slips.module.css';
import type { Change } from './use-reading';

type SizeGroupListProps = { chosen: ChosenPrint; unit: LengthUnit; change: Change };

/** For which sizes the readings of a print hold: the size group shown, and the others to go to. */
export function SizeGroupList({ chosen: { print, garment, group }, unit, change }: SizeGroupListProps) {
  const t = useTranslations('table.slips');
  const readings = useTranslations('readings');
  const sizes = sizesToShow(garment).map(keyOf);
  const groups = print.sizeGroups.flatMap((each) => {
    const { groupId, members } = each;
    const sizeNames = groupWords(readings, garment, members);
    const words = readingWords(readings, printReading(print, each), unit);
    return sizeNames === '' ? [] : [{ groupId, members, sizeNames, words }];
  });

  function show(members: typeof group.members): void {
    const size = sizes.find((key) => members.some((member) => sameSize(member, key))) ?? members[0];
    if (size) change((editor) => withSelection(editor, (layout, selection) => selectSize(layout, selection, size)));
  }

  return (
    <fieldset className={styles.groups}>
      <legend>{t('groups')}</legend>
      {groups.map(({ groupId, members, sizeNames, words }) => {
        const isShown = groupId === group.groupId;
        return (
          <button
            key={groupId}
            type="button"
            aria-pressed={isShown}
            className={classNames(styles.group, isShown && styles.shownGroup)}
            onClick={() => show(members)}
          >
            <b>{sizeNames}</b>{' '}
            <span>
              {whatTellsApart(
                words,
                groups.map((each) => each.words),
              ).join(', ')}
            </span>
          </button>
        );
      })}
    </fieldset>
  );
}

/** The size, and of groups of one size what else tells them apart. */
function whatTellsApart(words: ReadingWords, all: readonly ReadingWords[]): string[] {
  const alike = all.filter(({ size }) => size === words.size);
  const differing = (['drop', 'across'] as const).filter((reading) =>
    alike.some((each) => each[reading] !== words[reading]),
  );
  return [words.size, ...differing.map((reading) => words[reading])];
}
