import type { LayoutDocument } from '@/lib/domain/layout/document';

/** Whether two layouts say the same, whatever order their fields were written in. */
export function saysTheSame(a: LayoutDocument, b: LayoutDocument): boolean {
  return a === b || inOrder(a) === inOrder(b);
}

function inOrder(layout: LayoutDocument): string {
  return JSON.stringify(layout, (_key, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
}
