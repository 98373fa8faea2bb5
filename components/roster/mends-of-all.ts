import type { PeopleList } from '@/lib/domain/people/list';
import type { FindingCode, ListCheck } from '@/lib/domain/people/list-check';
import type { ListEdit } from '@/lib/domain/people/list-edit';

/** What of one kind can be put right in several lines together. */
export type MendOfAll = { readonly code: FindingCode; readonly edits: readonly ListEdit[] };

/** The findings that several lines have alike and that have one honest mend. */
export function mendsOfAll({ lines }: Pick<PeopleList, 'lines'>, checks: readonly ListCheck[]): MendOfAll[] {
  const byCode = new Map<FindingCode, ListEdit[]>();
  const mended = new Set<string>();
  for (const { personId, place, finding, meant } of checks) {
    if (meant !== null || personId === null || !('better' in finding) || finding.better === null) continue;
    const was = lines.find((line) => line.personId === personId)?.fields[place] ?? '';
    // A cell with two findings is put right for the first; what is left is found again.
    if (mended.has(`${personId} ${place}`)) continue;
    mended.add(`${personId} ${place}`);
    const edits = byCode.get(finding.code) ?? [];
    edits.push({ edit: 'field', personId, columnId: place, was, text: finding.better });
    byCode.set(finding.code, edits);
  }
  return [...byCode].filter(([, edits]) => edits.length > 1).map(([code, edits]) => ({ code, edits }));
}
