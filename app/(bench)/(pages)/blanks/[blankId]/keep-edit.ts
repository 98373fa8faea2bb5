import { refresh } from 'next/cache';
import { type FormState, refused, taken } from '@/components/ui/form-state';
import type { BlankStyle } from '@/lib/domain/garment/blank-style';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import { editBlank } from '@/lib/server/blanks/edit-blank';

/** Edits a blank from one of its forms: what came of it, with everything that was typed. */
export async function keepEdit(
  maker: MakerAccess,
  blankId: string,
  seen: Date,
  typed: Readonly<Record<string, string>>,
  edit: (style: BlankStyle) => BlankStyle,
): Promise<FormState> {
  const edited = await editBlank(maker, blankId, seen, edit);
  if (edited.ok) {
    refresh();
    return taken(typed);
  }
  switch (edited.reason) {
    case 'noBlank':
    case 'faults':
      return refused(typed, edited.reason);
    case 'changedElsewhere':
      return refused(typed, edited.reason, { seen: edited.updatedAt.toISOString() });
    case 'onHand':
      return edited.sizes.length > 0
        ? refused(typed, 'onHandSizes', { names: edited.sizes.join(', ') })
        : refused(typed, 'onHandColours', { names: edited.colours.join(', ') });
  }
}
