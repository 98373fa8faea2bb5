import { type PointerEvent, type RefObject, useRef } from 'react';
import { distance, type Point } from '@/lib/domain/geometry/point';
import { placedPrint } from '@/lib/domain/layout/scene';
import { UM_PER_MM } from '@/lib/domain/measure/length';
import { chosenPrint } from '@/lib/editor/chosen-print';
import { shownType } from '@/lib/editor/command';
import { setTurn } from '@/lib/editor/commands/change-print';
import { movePrint } from '@/lib/editor/commands/place-print';
import { resizePrint } from '@/lib/editor/commands/size-print';
import { type FrameCorner, printAt } from '@/lib/editor/print-frame';
import { selectPrint } from '@/lib/editor/selection';
import { shownFlat } from '@/lib/editor/shown-flat';
import { type Snap, tradeSnap } from '@/lib/editor/snapping';
import {
  afterDrag,
  shownLayout,
  type TableEditor,
  whileDragging,
  withoutDrag,
  withSelection,
} from '@/lib/editor/table-editor';
import { turnByHand } from '@/lib/editor/turning';
import { mmAt, type Viewport } from '@/lib/editor/viewport';
import { isPinned } from '@/lib/editor/working-aids';
import { pointOn } from './point-on';
import type { PaperView } from './use-paper-view';
import type { Change } from './use-reading';
import { useSpaceHeld } from './use-space-held';
import { useWheel } from './use-wheel';

/** How far a pointer may tremble before a press becomes a drag, CSS pixels (by eye; fingers tremble more). */
const TREMBLE_PX = { mouse: 3, touch: 8 } as const;
/** How near what is offered a drag must come to be caught by it, CSS pixels (by eye). */
const CATCH_PX = 6;
/** How far outside its frame a print can still be taken hold of, CSS pixels (by eye). */
const REACH_PX = 6;

type Hand =
  | { readonly does: 'move'; readonly from: Point; readonly fromPx: Point; readonly isMoving: boolean }
  | { readonly does: 'resize'; readonly corner: FrameCorner; readonly grip: Point }
  | { readonly does: 'turn'; readonly startCentideg: number; readonly middle: Point; readonly from: Point }
  | {
      readonly does: 'pan';
      readonly lastPx: Point;
      readonly fromPx: Point;
      readonly isMoving: boolean;
      readonly isPush?: boolean;
    }
  | { readonly does: 'pinch'; readonly middlePx: Point; readonly spreadPx: number };

/**
 * What pointers do on the paper: a print is taken hold of and dragged, a corner resizes it, bare paper is pushed, two
 * fingers push and bring it closer, its handle turns it; with Space or the middle button held the paper is pushed whatever
 * lies under the pointer. All of it runs commands; what is drawn is never asked where it is.
 */
export function usePaperPointer(
  surface: RefObject<HTMLElement | null>,
  view: PaperView | null,
  editor: TableEditor,
  change: Change,
) {
  const hand = useRef<Hand | null>(null);
  const fingers = useRef(new Map<number, Point>());
  const space = useSpaceHeld(surface);
  useWheel(surface, view);

  const pxOf = (event: PointerEvent): Point => pointOn(event.currentTarget, event);

  function snapFor(event: PointerEvent, { viewport }: PaperView): Snap {
    return event.altKey ? null : tradeSnap(editor.unit, (CATCH_PX / viewport.pxPerMm) * UM_PER_MM, editor.hidden);
  }

  function onPointerDown(event: PointerEvent<HTMLElement>): void {
    const target = event.target as HTMLElement;
    const isPush = event.button === 1 || (event.button === 0 && space.isHeld());
    if (!view || !(event.button === 0 || isPush) || target.closest('[data-reading]')) return;
    // What waits in a field is applied before something else comes in hand.
    if (document.activeElement instanceof HTMLInputElement) document.activeElement.blur();
    const atPx = pxOf(event);
    fingers.current.set(event.pointerId, atPx);
    if (event.pointerType === 'touch' && fingers.current.size === 2) {
      change(withoutDrag);
      hand.current = pinchOf([...fingers.current.values()]);
      return;
    }
    hand.current = isPush
      ? { does: 'pan', lastPx: atPx, fromPx: atPx, isMoving: false, isPush }
      : inHand(target, event, atPx, view);
    if (hand.current && event.pointerType !== 'touch') event.currentTarget.setPointerCapture(event.pointerId);
  }

  function inHand(target: HTMLElement, event: PointerEvent, atPx: Point, { viewport }: PaperView): Hand | null {
    if (target.closest('[data-turn]')) return turnInHand(mmAt(viewport, atPx));
    const corner = target.closest<HTMLElement>('[data-corner]');
    return corner ? cornerInHand(corner, mmAt(viewport, atPx)) : takenHold(event, atPx, viewport);
  }

  function turnInHand(from: Point): Hand | null {
    const { selection } = editor;
    const chosen = chosenPrint({ layout: shownLayout(editor), selection });
    if (!(chosen && selection) || editor.locked || isPinned(editor, chosen.print.printId)) return null;
    const { x, y, width, height } = placedPrint(chosen.print, selection.size, chosen.flat, shownType(editor)).inkBox;
    const { turnCentideg: startCentideg } = chosen.print;
    return { does: 'turn', startCentideg, middle: { x: x + width / 2, y: y + height / 2 }, from };
  }

  function cornerInHand(corner: HTMLElement, at: Point): Hand | null {
    if (editor.locked || isPinned(editor, editor.selection?.printId ?? '')) return null;
    const corners = { x: Number(corner.dataset.xMm), y: Number(corner.dataset.yMm) };
    return {
      does: 'resize',
      corner: corner.dataset.corner as FrameCorner,
      grip: { x: corners.x - at.x, y: corners.y - at.y },
    };
  }

  function takenHold(event: PointerEvent, atPx: Point, viewport: Viewport): Hand {
    const at = mmAt(viewport, atPx);
    const print = printUnder(editor, at, REACH_PX / viewport.pxPerMm);
    const isInHand = print !== null && print === editor.selection?.printId;
    // A finger has to take a print in hand first: a swipe over it scrolls the page.
    const canTake = print !== null && (isInHand || event.pointerType !== 'touch');
    if (!canTake) return { does: 'pan', lastPx: atPx, fromPx: atPx, isMoving: false };
    if (!isInHand)
      change((before) => withSelection(before, (layout, selection) => selectPrint(layout, selection, print)));
    return { does: 'move', from: at, fromPx: atPx, isMoving: false };
  }

  function onPointerMove(event: PointerEvent<HTMLElement>): void {
    const atPx = pxOf(event);
    if (fingers.current.has(event.pointerId)) fingers.current.set(event.pointerId, atPx);
    const held = hand.current;
    if (!(held && view)) return;
    if (held.does === 'pinch') {
      hand.current = pinched(held, [...fingers.current.values()], view);
      return;
    }
    const tremble = TREMBLE_PX[event.pointerType === 'touch' ? 'touch' : 'mouse'];
    if ('isMoving' in held && !held.isMoving && distance(held.fromPx, atPx) < tremble) return;
    if (held.does === 'pan') {
      view.pan({ x: atPx.x - held.lastPx.x, y: atPx.y - held.lastPx.y });
      hand.current = { ...held, lastPx: atPx, isMoving: true };
      return;
    }
    if (held.does === 'move') hand.current = { ...held, isMoving: true };
    drag(held, event, mmAt(view.viewport, atPx), view);
  }

  function drag(
    held: Extract<Hand, { does: 'move' | 'resize' | 'turn' }>,
    event: PointerEvent,
    at: Point,
    view: PaperView,
  ) {
    const snap = snapFor(event, view);
    switch (held.does) {
      case 'move': {
        const by = { byXMm: at.x - held.from.x, byYMm: at.y - held.from.y };
        change((before) => whileDragging(before, movePrint, { ...by, snap }));
        return;
      }
      case 'resize': {
        const toMm = { x: at.x + held.grip.x, y: at.y + held.grip.y };
        change((before) => whileDragging(before, resizePrint, { corner: held.corner, toMm, snap }));
        return;
      }
      case 'turn': {
        const turnSnap = event.altKey ? 'free' : event.shiftKey ? 'fifteens' : 'degrees';
        const turnCentideg = turnByHand(held.startCentideg, held.middle, { from: held.from, to: at }, turnSnap);
        change((before) => whileDragging(before, setTurn, { turnCentideg }));
      }
    }
  }

  function onPointerUp(event: PointerEvent<HTMLElement>): void {
    const held = hand.current;
    const atPx = pxOf(event);
    letGo(event);
    if (!(held && view)) return;
    if (held.does === 'move' && held.isMoving) change((before) => afterDrag(before, 'movePrint'));
    if (held.does === 'resize') change((before) => afterDrag(before, 'resizePrint'));
    if (held.does === 'turn') change((before) => afterDrag(before, 'setTurn'));
    if (held.does === 'pan' && !held.isMoving && !held.isPush) {
      const print = printUnder(editor, mmAt(view.viewport, atPx), REACH_PX / view.viewport.pxPerMm);
      change((before) => withSelection(before, (layout, selection) => selectPrint(layout, selection, print)));
    }
  }

  function onPointerCancel(event: PointerEvent<HTMLElement>): void {
    letGo(event);
    change(withoutDrag);
  }

  function letGo(event: PointerEvent): void {
    fingers.current.delete(event.pointerId);
    hand.current = null;
  }

  /** Gives up the drag in progress; true when there was one. */
  function giveUp(): boolean {
    const had = hand.current !== null && hand.current.does !== 'pan';
    hand.current = null;
    if (had) change(withoutDrag);
    return had;
  }

  return { handlers: { onPointerDown, onPointerMove, onPointerUp, onPointerCancel, ...space.handlers }, giveUp };
}

function printUnder(editor: TableEditor, atMm: Point, reachMm: number): string | null {
  const layout = shownLayout(editor);
  const { selection } = editor;
  const shown = shownFlat({ layout, selection });
  if (!(selection && shown)) return null;
  const setType = shownType(editor);
  // What is in hand stays in hand under what lies over it.
  const inHand = layout.prints.filter(({ printId }) => printId === selection.printId);
  const found =
    printAt({ prints: inHand }, selection, shown.flat, atMm, 0, setType) ??
    printAt(layout, selection, shown.flat, atMm, reachMm, setType);
  return found?.printId ?? null;
}

function pinchOf(points: readonly Point[]): Hand | null {
  const [a, b] = points;
  if (!(a && b)) return null;
  return { does: 'pinch', middlePx: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, spreadPx: distance(a, b) };
}

function pinched(held: Extract<Hand, { does: 'pinch' }>, points: readonly Point[], view: PaperView): Hand | null {
  const next = pinchOf(points);
  if (next?.does !== 'pinch') return held;
  view.pan({ x: next.middlePx.x - held.middlePx.x, y: next.middlePx.y - held.middlePx.y });
  if (held.spreadPx > 0) view.zoom(next.spreadPx / held.spreadPx, next.middlePx);
  return next;
}
