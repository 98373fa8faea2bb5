import type { ShownChange } from '@/components/roster/list-history';
import { itemsText } from '@/lib/domain/people/items-text';
import { momentWords } from '@/lib/messages/moments';
import { type Translator, translatorFor } from '@/lib/messages/translator';
import type { LineChange, LineSaid } from '@/lib/server/people/list-history';
import type { PeopleView } from '@/lib/server/people/load-people';
import type { Shop } from '@/lib/server/shop/read-shop';

/** The changes to a list in words, newest first. */
export function shownChanges(
  { locale, timeZone }: Pick<Shop, 'locale' | 'timeZone'>,
  view: PeopleView,
  changes: readonly LineChange[],
): ShownChange[] {
  const t = translatorFor(locale, 'people');
  return changes.map((change, at) => {
    const details = change.kind === 'changed' ? detailsOf(t, view, change) : [];
    const words = {
      by: change.by ?? t('history.somebody'),
      who: nameOf(view, change.after) || nameOf(view, change.before) || t('history.nobody'),
    };
    const isAnswer = change.kind === 'changed' && details.length === 0;
    return {
      key: `${change.at.toISOString()} ${change.personId} ${at}`,
      what: t(`history.${isAnswer ? 'meant' : change.kind}`, words),
      when: momentWords(locale, timeZone, change.at),
      details,
    };
  });
}

function nameOf({ list }: PeopleView, said: LineSaid | null): string {
  const column = list.columns.find(({ kind }) => kind === 'name');
  return said && column ? (said.fields[column.columnId] ?? '') : '';
}

/** What of a line changed: `Number: 15 → 51`. */
function detailsOf(t: Translator<'people'>, { list, garments }: PeopleView, { before, after }: LineChange): string[] {
  const empty = t('history.empty');
  const columns = [
    ...list.columns.map(({ columnId, name }) => ({
      column: name,
      of: (said: LineSaid | null) => said?.fields[columnId] ?? '',
    })),
    ...garments.map((garment) => ({
      column: garments.length === 1 ? t('table.size') : t('table.sizeOf', { garment: garment.name }),
      of: (said: LineSaid | null) => itemsText(said?.items ?? [], garment),
    })),
  ];
  return columns
    .map(({ column, of }) => ({ column, before: of(before), after: of(after) }))
    .filter((each) => each.before !== each.after)
    .map(({ column, ...said }) =>
      t('history.change', { column, before: said.before || empty, after: said.after || empty }),
    );
}
