import { type PointerEvent, type RefObject, useEffect, useRef } from 'react';
import { distance, type Point } from '@/lib/domain/geometry/point';
import { UM_PER_MM } from '@/lib/domain/measure/length';
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
import { mmAt } from '@/lib/editor/viewport';
import { isPinned } from '@/lib/editor/working-aids';
import type { PaperView } from './use-paper-view';
import type { Change } from './use-reading';

/** How far a pointer may tremble before a press becomes a drag, CSS pixels (by eye; fingers tremble more). */
const TREMBLE_PX = { mouse: 3, touch: 8 } as const;
/** How near the centre line a drag must come to be caught by it, CSS pixels (by eye). */
const CENTRE_CATCH_PX = 6;
/** How far outside its frame a print can still be taken hold of, CSS pixels (by eye). */
const REACH_PX = 6;

type Hand =
  | { readonly does: 'move'; readonly from: Point; readonly fromPx: Point; readonly isMoving: boolean }
  | { readonly does: 'resize'; readonly corner: FrameCorner; readonly grip: Point }
  | { readonly does: 'pan'; readonly lastPx: Point; readonly fromPx: Point; readonly isMoving: boolean }
  | { readonly does: 'pinch'; readonly middlePx: Point; readonly spreadPx: number };

/**
 * What pointers do on the paper: a print is taken hold of and dragged, a corner resizes it, bare paper is pushed, two
 * fingers push and bring it closer. All of it runs commands; what is drawn is never asked where it is.
 */
export function usePaperPointer(
  surface: RefObject<HTMLElement | null>,
  view: PaperView | null,
  editor: TableEditor,
  change: Change,
) {
  const hand = useRef<Hand | null>(null);
  const fingers = useRef(new Map<number, Point>());
  useWheel(surface, view);

  const pxOf = (event: PointerEvent): Point => pointOn(event.currentTarget, event);

  function snapFor(event: PointerEvent, { viewport }: PaperView): Snap {
    return event.altKey ? null : tradeSnap(editor.unit, (CENTRE_CATCH_PX / viewport.pxPerMm) * UM_PER_MM);
  }

  function onPointerDown(event: PointerEvent<HTMLElement>): void {
    const target = event.target as HTMLElement;
    if (!view || event.button !== 0 || target.closest('[data-reading]')) return;
    // What waits in a field is applied before something else comes in hand.
    if (document.activeElement instanceof HTMLInputElement) document.activeElement.blur();
    const atPx = pxOf(event);
    fingers.current.set(event.pointerId, atPx);
    if (event.pointerType === 'touch' && fingers.current.size === 2) {
      change(withoutDrag);
      hand.current = pinchOf([...fingers.current.values()]);
      return;
    }
    const corner = target.closest<HTMLElement>('[data-corner]');
    hand.current = corner ? cornerInHand(corner, atPx, view) : takenHold(event, atPx, view);
    if (hand.current && event.pointerType !== 'touch') event.currentTarget.setPointerCapture(event.pointerId);
  }

  function cornerInHand(corner: HTMLElement, atPx: Point, { viewport }: PaperView): Hand | null {
    if (editor.locked || isPinned(editor, editor.selection?.printId ?? '')) return null;
    const at = mmAt(viewport, atPx);
    const corners = { x: Number(corner.dataset.xMm), y: Number(corner.dataset.yMm) };
    return {
      does: 'resize',
      corner: corner.dataset.corner as FrameCorner,
      grip: { x: corners.x - at.x, y: corners.y - at.y },
    };
  }

  function takenHold(event: PointerEvent, atPx: Point, { viewport }: PaperView): Hand {
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
    if (held.does === 'resize') {
      const at = mmAt(view.viewport, atPx);
      const toMm = { x: at.x + held.grip.x, y: at.y + held.grip.y };
      const snap = snapFor(event, view);
      change((before) => whileDragging(before, resizePrint, { corner: held.corner, toMm, snap }));
      return;
    }
    const tremble = TREMBLE_PX[event.pointerType === 'touch' ? 'touch' : 'mouse'];
    if (!held.isMoving && distance(held.fromPx, atPx) < tremble) return;
    if (held.does === 'pan') {
      view.pan({ x: atPx.x - held.lastPx.x, y: atPx.y - held.lastPx.y });
      hand.current = { ...held, lastPx: atPx, isMoving: true };
      return;
    }
    hand.current = { ...held, isMoving: true };
    const at = mmAt(view.viewport, atPx);
    const snap = snapFor(event, view);
    change((before) =>
      whileDragging(before, movePrint, { byXMm: at.x - held.from.x, byYMm: at.y - held.from.y, snap }),
    );
  }

  function onPointerUp(event: PointerEvent<HTMLElement>): void {
    const held = hand.current;
    const atPx = pxOf(event);
    letGo(event);
    if (!(held && view)) return;
    if (held.does === 'move' && held.isMoving) change((before) => afterDrag(before, 'movePrint'));
    if (held.does === 'resize') change((before) => afterDrag(before, 'resizePrint'));
    if (held.does === 'pan' && !held.isMoving) {
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

  return { handlers: { onPointerDown, onPointerMove, onPointerUp, onPointerCancel }, giveUp };
}

function printUnder(editor: TableEditor, atMm: Point, reachMm: number): string | null {
  const layout = shownLayout(editor);
  const { selection } = editor;
  const shown = shownFlat({ layout, selection });
  if (!(selection && shown)) return null;
  // What is in hand stays in hand under what lies over it.
  const inHand = layout.prints.filter(({ printId }) => printId === selection.printId);
  const found =
    printAt({ prints: inHand }, selection, shown.flat, atMm, 0) ??
    printAt(layout, selection, shown.flat, atMm, reachMm);
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

/** A wheel pushes the paper, and with Control (or a pinch on a trackpad) brings it closer. */
function useWheel(surface: RefObject<HTMLElement | null>, view: PaperView | null): void {
  useEffect(() => {
    const element = surface.current;
    if (!(element && view)) return;
    const onWheel = (event: WheelEvent) => {
      const isPage = document.documentElement.scrollHeight > window.innerHeight + 1;
      if (isPage && !event.ctrlKey) return;
      event.preventDefault();
      const linePx = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 20 : 1;
      if (event.ctrlKey) view.zoom(Math.exp((-event.deltaY * linePx) / 300), pointOn(element, event));
      else view.pan({ x: -event.deltaX * linePx, y: -event.deltaY * linePx });
    };
    // React's own listener is passive and could not keep the page from zooming.
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, [surface, view]);
}

function pointOn(element: Element, { clientX, clientY }: { clientX: number; clientY: number }): Point {
  const { left, top } = element.getBoundingClientRect();
  return { x: clientX - left, y: clientY - top };
}
