import { countField, countOfField, MOST_ON_HAND, seenCountField } from '@/components/blanks/on-hand-fields';
import type { FormState } from '@/components/ui/form-state';
import type { OnHand } from '@/lib/server/blanks/load-blank';
import type { CountedOnHand } from '@/lib/server/blanks/set-on-hand';

type ReadOnHand = { readonly counts: readonly CountedOnHand[]; readonly mistakes: Readonly<Record<string, string>> };

/** Reads a form of counts: a whole number for each size and colour, nothing for none. What nobody changed is left out. */
export function readOnHand(typed: Readonly<Record<string, string>>): ReadOnHand {
  const mistakes: Record<string, string> = {};
  const counts: CountedOnHand[] = [];
  for (const [name, text] of Object.entries(typed)) {
    const at = countOfField(name);
    if (!at) continue;
    const quantity = text.trim() === '' ? 0 : /^\d{1,6}$/.test(text.trim()) ? Number(text) : Number.NaN;
    const seen = Number(typed[seenCountField(at)]);
    if (!(quantity >= 0 && quantity <= MOST_ON_HAND)) mistakes[name] = 'notANumber';
    else if (quantity !== seen) counts.push({ ...at, quantity, seen: Number.isInteger(seen) ? seen : 0 });
  }
  return { counts, mistakes };
}

/** The form again, with what others counted meanwhile: sending it once more is meant over those counts. */
export function meanwhileState(typed: Readonly<Record<string, string>>, now: readonly OnHand[]): FormState {
  return {
    typed,
    mistakes: Object.fromEntries(now.map((each) => [countField(each), 'meanwhile'])),
    refusal: null,
    detail: Object.fromEntries(now.map((each) => [countField(each), each.quantity])),
    done: false,
  };
}
