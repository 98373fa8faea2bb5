import { itemsText } from '@/lib/domain/people/items-text';
import { type GarmentOnOffer, type PeopleList, sizePlace } from '@/lib/domain/people/list';
import type { ListEdit } from '@/lib/domain/people/list-edit';
import { FormNotice } from '../ui/form-notice';
import type { RefusedEdit } from './list-keeper';
import styles from './people-editor.module.css';
import { type PeopleWords, placeName } from './roster-words';
import { saidIn } from './shown-lines';

type ElsewhereNoticesProps = {
  t: PeopleWords;
  list: PeopleList;
  garments: readonly GarmentOnOffer[];
  refused: readonly RefusedEdit[];
  onEdit: (edits: readonly ListEdit[]) => void;
  onClose: (id: number) => void;
};

/** What somebody else was faster with: what it says now, what was written here, and a way to write it all the same. */
export function ElsewhereNotices({ t, list, garments, refused, onEdit, onClose }: ElsewhereNoticesProps) {
  if (refused.length === 0) return null;
  return (
    <FormNotice kind="look" title={t('elsewhere.title')}>
      {refused.map((each) => {
        const { sentence, mine } = noticeOf(t, list, garments, each);
        return (
          <div key={each.id} className={styles.elsewhere}>
            <p>{sentence}</p>
            {mine ? (
              <button
                type="button"
                className={styles.act}
                onClick={() => {
                  onEdit([mine.edit]);
                  onClose(each.id);
                }}
              >
                {t('elsewhere.writeMine', { mine: mine.words })}
              </button>
            ) : null}
            <button type="button" className={styles.quiet} onClick={() => onClose(each.id)}>
              {t('elsewhere.close')}
            </button>
          </div>
        );
      })}
    </FormNotice>
  );
}

function noticeOf(
  t: PeopleWords,
  list: PeopleList,
  garments: readonly GarmentOnOffer[],
  { edit, reason }: RefusedEdit,
): { sentence: string; mine: { words: string; edit: ListEdit } | null } {
  if (reason === 'tooMany' || reason === 'lettered') return { sentence: t(`elsewhere.${reason}`), mine: null };
  if (edit.edit === 'columns') return { sentence: t('elsewhere.columns'), mine: null };
  if (edit.edit !== 'field' && edit.edit !== 'items') {
    const personId = 'personId' in edit ? edit.personId : null;
    const at = list.lines.findIndex((line) => line.personId === personId);
    return { sentence: at < 0 ? t('elsewhere.other') : t('elsewhere.line', { number: at + 1 }), mine: null };
  }
  const { personId } = edit;
  const place = edit.edit === 'field' ? edit.columnId : sizePlace(edit.garmentId);
  const column = placeName(t, place, list.columns, garments);
  const garment = garments.find(({ garmentId }) => sizePlace(garmentId) === place);
  const mine = edit.edit === 'field' ? edit.text : garment ? itemsText(edit.items, garment) : '';
  const at = list.lines.findIndex((line) => line.personId === personId);
  const line = list.lines[at];
  const words = mine || t('elsewhere.empty');
  if (!line) return { sentence: t('elsewhere.gone', { mine: words, column }), mine: null };
  const theirs = saidIn(line, place, garments);
  const again: ListEdit =
    edit.edit === 'field'
      ? { ...edit, was: theirs }
      : { ...edit, was: line.items.filter(({ garmentId }) => garmentId === edit.garmentId) };
  const said = { column, number: at + 1, theirs: theirs || t('elsewhere.empty'), mine: words };
  return { sentence: t('elsewhere.cell', said), mine: { words, edit: again } };
}
