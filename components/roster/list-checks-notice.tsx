import type { GarmentOnOffer, PeopleList, SizeOnOffer } from '@/lib/domain/people/list';
import type { ListCheck } from '@/lib/domain/people/list-check';
import type { ListEdit } from '@/lib/domain/people/list-edit';
import { type CheckAct, CheckLine } from './check-line';
import styles from './people-editor.module.css';
import { meantEdit } from './roster-line';
import { findingWords, type PeopleWords } from './roster-words';

type ListChecksNoticeProps = {
  t: PeopleWords;
  list: PeopleList;
  garments: readonly GarmentOnOffer[];
  checks: readonly ListCheck[];
  readOnly: boolean;
  onEdit: (edits: readonly ListEdit[]) => void;
  onTakeCounts: (garmentId: string) => Promise<void>;
};

/** What is said of the list as a whole: where it differs from what was ordered. */
export function ListChecksNotice({ t, list, garments, checks, readOnly, onEdit, onTakeCounts }: ListChecksNoticeProps) {
  const ofList = checks.filter(({ personId }) => personId === null);
  if (ofList.length === 0) return null;
  return (
    <div className={styles.ofList}>
      {ofList.map((check) => (
        <CheckLine
          key={check.place}
          id={`check-${check.place.replace(/[^\w-]+/gu, '-')}`}
          t={t}
          check={check}
          place={null}
          sentence={findingWords(check, { t, garments, lineNumber: () => 0, text: '' })}
          acts={actsFor(t, list, check, onEdit, onTakeCounts)}
          readOnly={readOnly}
          onMeant={(why) => onEdit([meantEdit(check, why)])}
        />
      ))}
    </div>
  );
}

function actsFor(
  t: PeopleWords,
  list: PeopleList,
  { finding }: ListCheck,
  onEdit: ListChecksNoticeProps['onEdit'],
  onTakeCounts: ListChecksNoticeProps['onTakeCounts'],
): CheckAct[] {
  if (finding.code !== 'countsDiffer') return [];
  const { garmentId, differences } = finding;
  const spareOf = ({ blankId, sizeId }: SizeOnOffer) =>
    list.settings.spares.find(
      (each) => each.garmentId === garmentId && each.blankId === blankId && each.sizeId === sizeId,
    )?.quantity ?? 0;
  const takeCounts = { words: t('act.takeCounts'), act: () => void onTakeCounts(garmentId) };
  // More on the list than was ordered cannot be made up with spares.
  if (differences.some(({ ordered, listed }) => listed > ordered)) return [takeCounts];
  const spares = differences.map(({ size, ordered, listed }): ListEdit => {
    const { blankId, sizeId } = size;
    return { edit: 'spare', garmentId, blankId, sizeId, quantity: spareOf(size) + ordered - listed };
  });
  return [takeCounts, { words: t('act.restSpare'), act: () => onEdit(spares) }];
}
