import type { LengthUnit } from '@/lib/domain/measure/length';
import type { RevisionState } from '@/lib/domain/revision/state';
import type { Locale } from '@/lib/messages/locales';

/** How the shop can be reached. */
export type ShopReach = { readonly name: string; readonly email: string | null; readonly phone: string | null };

/** What every part of a proof sheet needs: the language and unit the revision was sealed with, and whose it is. */
export type SheetContext = {
  readonly locale: Locale;
  readonly unit: LengthUnit;
  /** IANA name of the shop's time zone. */
  readonly zone: string;
  readonly shop: ShopReach;
  readonly jobTitle: string;
  readonly number: number;
  /** All 64 digits. */
  readonly seal: string;
  readonly state: RevisionState;
  readonly currentNumber: number | null;
  /** Address of the page itself, from the root: `/proof/TOKEN`. */
  readonly path: string;
};
