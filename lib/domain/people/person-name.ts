import type { People, Person } from './person';

/** What somebody of the list is called by: the first name column that says something, otherwise the first column that does. */
export function personName({ columns }: Pick<People, 'columns'>, { fields }: Pick<Person, 'fields'>): string | null {
  const names = columns.filter(({ columnId, kind }) => kind === 'name' || columnId === 'name');
  const said = [...names, ...columns].map(({ columnId }) => fields[columnId]?.trim() ?? '').find((text) => text !== '');
  return said ?? null;
}
