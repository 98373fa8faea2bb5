import { type FrozenFlat, pointOf } from '@/lib/domain/garment/flat';
import type { Box } from '@/lib/domain/geometry/box';
import type { LayoutDocument, Print, SizeKey } from '@/lib/domain/layout/document';
import { LOCATIONS } from '@/lib/domain/layout/locations';
import { acrossSign, placeAt } from '@/lib/domain/layout/placement';
import { placedPrint, printsOn } from '@/lib/domain/layout/scene';
import { sameSize } from '@/lib/domain/layout/sizes';
import type { SetType } from '@/lib/domain/layout/type-case';
import { type Micrometres, mmFromUm, umFromMm } from '@/lib/domain/measure/length';
import { type ChosenPrint, chosenPrint, printInHand } from './chosen-print';
import { shownType, type TableState } from './command';
import { type Alignment, alignmentsWith, type GuideLine } from './neighbours';
import { usualPlace } from './usual-place';

/** A reading a dragged print can be caught at, why, and the thin lines that show it; the centre line shows itself. */
export type Offer = {
  readonly of: 'drop' | 'across';
  readonly kind: 'centreLine' | 'usual' | Alignment['kind'];
  readonly um: Micrometres;
  readonly guides: readonly GuideLine[];
};

type Readings = { readonly dropUm: number; readonly acrossUm: number };

/** How far a guide to the usual place reaches past the print, mm (by eye). */
const PAST_MM = 14;

/**
 * What is offered to the print in hand where a drag has it now: the centre line, its usual place, and places in line with
 * the other prints of the side. Prints that keep under it come along and offer nothing. Nearness is for whoever asks.
 */
export function offersAt(state: TableState, at: Readings, unseen: readonly string[] = []): Offer[] {
  const chosen = printInHand(state);
  const box = boxAt(chosen, at, shownType(state));
  return [
    { of: 'across', kind: 'centreLine', um: 0, guides: [] },
    ...usualOffers(state, chosen, box),
    ...neighbourOffers(chosen, at, box, neighbourBoxes(state, chosen, unseen)),
  ];
}

/** The thin lines that show what the print in hand is caught at; `state` is the table as the drag has it. */
export function caughtGuides(state: TableState, unseen: readonly string[] = []): GuideLine[] {
  const chosen = chosenPrint(state);
  if (!chosen) return [];
  const { dropUm, acrossUm } = chosen.group;
  return offersAt(state, chosen.group, unseen)
    .filter(({ of, um }) => Math.abs(um - (of === 'drop' ? dropUm : acrossUm)) <= 1)
    .flatMap(({ guides }) => guides);
}

function boxAt({ print, group, flat }: ChosenPrint, { dropUm, acrossUm }: Readings, setType?: SetType): Box {
  return placeAt(print, { ...group, dropUm, acrossUm }, flat, setType).readBox;
}

function usualOffers(state: TableState, { print, flat }: ChosenPrint, box: Box): Offer[] {
  const usual = usualPlace(state);
  if (!usual) return [];
  const y = pointOf(flat, LOCATIONS[print.locationId].measuredFrom).y + mmFromUm(usual.dropUm);
  const x = acrossSign(flat.side) * mmFromUm(usual.acrossUm);
  const level = { from: { x: box.x - PAST_MM, y }, to: { x: box.x + box.width + PAST_MM, y } };
  const upright = { from: { x, y: box.y - PAST_MM }, to: { x, y: box.y + box.height + PAST_MM } };
  return [
    { of: 'drop', kind: 'usual', um: usual.dropUm, guides: [level] },
    ...(usual.acrossUm === 0
      ? []
      : [{ of: 'across', kind: 'usual', um: usual.acrossUm, guides: [upright] } satisfies Offer]),
  ];
}

function neighbourOffers({ flat }: ChosenPrint, at: Readings, box: Box, others: readonly Box[]): Offer[] {
  const sign = acrossSign(flat.side);
  return alignmentsWith(box, others).map(({ axis, kind, atMm, guides }) =>
    axis === 'x'
      ? { of: 'across', kind, um: Math.round(at.acrossUm + sign * umFromMm(atMm - box.x)) + 0, guides }
      : { of: 'drop', kind, um: Math.round(at.dropUm + umFromMm(atMm - box.y)) + 0, guides },
  );
}

function neighbourBoxes(state: TableState, { print, flat }: ChosenPrint, unseen: readonly string[]): Box[] {
  const { layout, selection } = state;
  if (!selection) return [];
  return printsOn(layout, selection)
    .filter((other) => !keepsUnder(layout, other, print.printId) && !unseen.includes(other.printId))
    .map((other) => boxOn(other, selection.size, flat, shownType(state)));
}

type KnownBox = { readonly size: SizeKey; readonly setType: SetType | undefined; readonly box: Box };

const boxes = new WeakMap<Print, WeakMap<FrozenFlat, KnownBox>>();

/** Prints that lie still are asked for at each move of a drag: each is set down once. */
function boxOn(print: Print, size: SizeKey, flat: FrozenFlat, setType?: SetType): Box {
  const byFlat = boxes.get(print) ?? new WeakMap<FrozenFlat, KnownBox>();
  boxes.set(print, byFlat);
  const known = byFlat.get(flat);
  if (known && known.setType === setType && sameSize(known.size, size)) return known.box;
  const box = placedPrint(print, size, flat, setType).readBox;
  byFlat.set(flat, { size, setType, box });
  return box;
}

/** Whether a print is the other one, or keeps under it, or under one that does. */
function keepsUnder({ prints }: Pick<LayoutDocument, 'prints'>, print: Print, otherId: string): boolean {
  const seen = new Set<string>();
  for (let each: Print | undefined = print; each && !seen.has(each.printId); ) {
    if (each.printId === otherId) return true;
    seen.add(each.printId);
    const aboveId: string | undefined = each.below?.printId;
    each = prints.find(({ printId }) => printId === aboveId);
  }
  return false;
}
