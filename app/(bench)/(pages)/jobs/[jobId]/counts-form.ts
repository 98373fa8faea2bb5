import { typedIn } from '@/app/read-form';
import { sizeOfCountField } from '@/components/garments/count-field-name';
import type { SizeCount } from '@/lib/domain/layout/document';
import { MOST_OF_ONE_ITEM } from '@/lib/domain/people/person';

type ReadCounts = {
  readonly typed: Record<string, string>;
  readonly mistakes: Record<string, string>;
  readonly counts: readonly SizeCount[];
};

/** Reads a form of counts: a whole number for each size, nothing for none. */
export function readCounts(sent: FormData): ReadCounts {
  const typed = typedIn(sent);
  const mistakes: Record<string, string> = {};
  const counts: SizeCount[] = [];
  for (const [name, text] of Object.entries(typed)) {
    const size = sizeOfCountField(name);
    if (!size) continue;
    const quantity = text.trim() === '' ? 0 : /^\d{1,6}$/.test(text.trim()) ? Number(text) : Number.NaN;
    if (!(quantity >= 0 && quantity <= MOST_OF_ONE_ITEM)) mistakes[name] = 'number';
    else counts.push({ ...size, quantity });
  }
  return { typed, mistakes, counts };
}
