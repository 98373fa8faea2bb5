import type { SizeKey } from '@/lib/domain/layout/document';

const PREFIX = 'count';

/** The form field that holds the count of one size. */
export function countFieldName({ blankId, sizeId }: SizeKey): string {
  return [PREFIX, blankId, sizeId].join(' ');
}

/** The size a field's name stands for, or null for any other field. */
export function sizeOfCountField(name: string): SizeKey | null {
  const [prefix, blankId, ...rest] = name.split(' ');
  const sizeId = rest.join(' ');
  return prefix === PREFIX && blankId && sizeId ? { blankId, sizeId } : null;
}
