import { useMemo, useState } from 'react';
import { folded } from '@/lib/domain/people/clean-field';
import type { GarmentOnOffer, ListLine, PeopleList } from '@/lib/domain/people/list';
import type { ListCheck } from '@/lib/domain/people/list-check';
import { type Sorting, saysSomewhere, sortedIds } from './shown-lines';

/** Which lines are shown, and in which order. */
export type ShownLines = {
  readonly lines: readonly ListLine[];
  readonly sorting: Sorting | null;
  readonly sortBy: (place: string) => void;
  readonly wanted: string;
  readonly find: (text: string) => void;
  readonly onlyOpen: boolean;
  readonly showOnlyOpen: (only: boolean) => void;
  /** The value of each grouping column that is asked for. */
  readonly groups: Readonly<Record<string, string>>;
  readonly chooseGroup: (columnId: string, value: string) => void;
};

/**
 * Order and choice of the lines. Both are made when they are asked for and stay while cells are written in: a line does not
 * run away from under the hand because it was put right.
 */
export function useShownLines(
  list: PeopleList,
  checks: readonly ListCheck[],
  garments: readonly GarmentOnOffer[],
  locale: string,
): ShownLines {
  const [sorted, setSorted] = useState<{ sorting: Sorting; ids: readonly string[] } | null>(null);
  const [wanted, setWanted] = useState('');
  const [open, setOpen] = useState<ReadonlySet<string> | null>(null);
  const [groups, setGroups] = useState<Readonly<Record<string, string>>>({});
  const openNow = useMemo(
    () => new Set(checks.flatMap(({ personId, meant }) => (meant === null && personId !== null ? [personId] : []))),
    [checks],
  );
  const lines = useMemo(() => {
    const places = new Map(sorted?.ids.map((id, at) => [id, at]));
    const inOrder = sorted
      ? list.lines.toSorted(
          (a, b) => (places.get(a.personId) ?? list.lines.length) - (places.get(b.personId) ?? list.lines.length),
        )
      : list.lines;
    return inOrder.filter(
      (line) =>
        (open === null || open.has(line.personId) || openNow.has(line.personId)) &&
        Object.entries(groups).every(([columnId, value]) => folded(line.fields[columnId] ?? '') === value) &&
        saysSomewhere(line, wanted, garments),
    );
  }, [list.lines, sorted, open, openNow, groups, wanted, garments]);
  return {
    lines,
    sorting: sorted?.sorting ?? null,
    sortBy: (place) => {
      const before = sorted?.sorting.place === place ? sorted.sorting : null;
      if (before?.down) return setSorted(null);
      const sorting = { place, down: before !== null };
      setSorted({ sorting, ids: sortedIds(list.lines, sorting, garments, locale) });
    },
    wanted,
    find: setWanted,
    onlyOpen: open !== null,
    showOnlyOpen: (only) => setOpen(only ? openNow : null),
    groups,
    chooseGroup: (columnId, value) =>
      setGroups(({ [columnId]: _before, ...others }) => (value === '' ? others : { ...others, [columnId]: value })),
  };
}
