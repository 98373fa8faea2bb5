import { useState } from 'react';
import type { Box } from '@/lib/domain/geometry/box';
import type { Point } from '@/lib/domain/geometry/point';
import type { Print } from '@/lib/domain/layout/document';
import { FRAME_CORNERS, type FrameCorner } from '@/lib/editor/print-frame';
import { pxAt } from '@/lib/editor/viewport';
import { classNames } from '../ui/class-names';
import styles from './print-frame.module.css';
import { TurnHandle } from './turn-handle';
import { type PaperView, YARDSTICK_PX } from './use-paper-view';
import type { Change } from './use-reading';

type PrintFrameProps = {
  corners: Readonly<Record<FrameCorner, Point>>;
  /** The centre line of the garment from the top of what is measured down to the hem, mm. */
  centre: { readonly fromY: number; readonly toY: number };
  /** The print is being dragged and lies on the centre line. */
  isCaught: boolean;
  isHeld: boolean;
  view: Pick<PaperView, 'viewport' | 'widthPx' | 'heightPx'>;
  /** The cards of its readings, which the turning handle keeps clear of; CSS pixels. */
  cards: readonly Box[];
  /** Ink of the guide on this cloth. */
  onDark: boolean;
  locked: boolean;
  print: Pick<Print, 'name' | 'turnCentideg'>;
  change: Change;
};

/** The frame around the print in hand, with the corners it is resized by and the handle it is turned by. */
export function PrintFrame(props: PrintFrameProps) {
  const { corners, centre, isCaught, isHeld, view, cards, onDark, locked, print, change } = props;
  const { viewport } = view;
  const placed = FRAME_CORNERS.map((corner) => ({ corner, at: pxAt(viewport, corners[corner]), mm: corners[corner] }));
  const outline = placed.map(({ at }) => `${at.x},${at.y}`).join(' ');
  const middle = {
    x: placed.reduce((sum, { at }) => sum + at.x, 0) / 4,
    y: placed.reduce((sum, { at }) => sum + at.y, 0) / 4,
  };
  const free = TURN_CORNERS.find((corner) => {
    const at = turnHandleAt(pxAt(viewport, corners[corner]), middle);
    return isOnPaper(at, view) && !cards.some((card) => liesOver(at, card));
  });
  const turnCorner = useWhileHeld(free ?? TURN_CORNERS[0], isHeld);
  const ys = placed.map(({ at }) => at.y);
  const [fromY, toY] = [centre.fromY, centre.toY].map((y) => pxAt(viewport, { x: 0, y }).y) as [number, number];
  // Over the art the line shows only while it has caught the print.
  const pieces = isCaught
    ? [[fromY, toY] as const]
    : [[fromY, Math.min(...ys)] as const, [Math.max(fromY, ...ys), toY] as const];
  return (
    <>
      <svg className={styles.lines} aria-hidden="true">
        {pieces.map(([from, to]) =>
          to > from ? (
            <line
              key={from}
              x1={viewport.xPx}
              x2={viewport.xPx}
              y1={from}
              y2={to}
              className={classNames(styles.centre, onDark && styles.onDark, isCaught && styles.caught)}
            />
          ) : null,
        )}
        <polygon points={outline} className={styles.under} />
        <polygon points={outline} className={styles.over} />
      </svg>
      <Grip placed={placed.map(({ at }) => at)} />
      {locked
        ? null
        : placed.map(({ corner, at, mm }) => {
            const handle = handleAt(at, middle);
            const isFalling = (at.x - middle.x) * (at.y - middle.y) > 0;
            return (
              <div
                key={corner}
                data-corner={corner}
                data-x-mm={mm.x}
                data-y-mm={mm.y}
                className={classNames(styles.corner, isFalling ? styles.falling : styles.rising)}
                style={{ transform: `translate(${handle.x}px, ${handle.y}px)` }}
              />
            );
          })}
      {locked ? null : (
        <TurnHandle
          name={print.name}
          turnCentideg={print.turnCentideg}
          change={change}
          at={turnHandleAt(pxAt(viewport, corners[turnCorner]), middle)}
        />
      )}
    </>
  );
}

/** Frames smaller than this have their corners set apart, so that the art between them shows and can be taken hold of. */
const SMALL_FRAME_PX = 64;

/** Where a corner is pressed: on the frame, or a little outside a small one. */
function handleAt(at: Point, middle: Point): Point {
  const arm = { x: at.x - middle.x, y: at.y - middle.y };
  const length = Math.hypot(arm.x, arm.y) || 1;
  const outside = Math.max(0, (SMALL_FRAME_PX - 2 * Math.min(Math.abs(arm.x), Math.abs(arm.y))) / 4);
  return { x: at.x + (arm.x / length) * outside, y: at.y + (arm.y / length) * outside };
}

/** How far outside a corner's own handle the print is turned by, CSS pixels: two fingers' width from the one to the other. */
const TURN_AWAY_PX = 34;

/** Where the print is turned by: below and to the right of the upright picture, or the next corner that is free. */
const TURN_CORNERS = ['bottomRight', 'topRight', 'bottomLeft', 'topLeft'] as const satisfies readonly FrameCorner[];
/** Half the width of the turning handle and a little room, CSS pixels; the style sheet has its width. */
const TURN_HALF_PX = 18;

/** Outside a corner; it goes round with the print. */
function turnHandleAt(corner: Point, middle: Point): Point {
  const handle = handleAt(corner, middle);
  const arm = { x: handle.x - middle.x, y: handle.y - middle.y };
  const length = Math.hypot(arm.x, arm.y) || 1;
  return { x: handle.x + (arm.x / length) * TURN_AWAY_PX, y: handle.y + (arm.y / length) * TURN_AWAY_PX };
}

function liesOver(at: Point, { x, y, width, height }: Box): boolean {
  const outside = { x: Math.max(x - at.x, at.x - x - width, 0), y: Math.max(y - at.y, at.y - y - height, 0) };
  return Math.max(outside.x, outside.y) < TURN_HALF_PX;
}

function isOnPaper(at: Point, { widthPx, heightPx }: Pick<PaperView, 'widthPx' | 'heightPx'>): boolean {
  const isWithin = (value: number, from: number, to: number) =>
    value >= from + TURN_HALF_PX && value <= to - TURN_HALF_PX;
  return isWithin(at.x, YARDSTICK_PX.beside, widthPx) && isWithin(at.y, YARDSTICK_PX.along, heightPx);
}

/** What it was when the hand took hold, until the hand lets go: a handle must not jump away while it is dragged. */
function useWhileHeld<Value>(now: Value, isHeld: boolean): Value {
  const [before, setBefore] = useState(now);
  if (!isHeld && before !== now) setBefore(now);
  return isHeld ? before : now;
}

/** Where a finger takes the print in hand: there a swipe drags it instead of scrolling the page. */
function Grip({ placed }: { placed: readonly Point[] }) {
  const xs = placed.map(({ x }) => x);
  const ys = placed.map(({ y }) => y);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return (
    <div
      className={styles.grip}
      style={{
        transform: `translate(${left}px, ${top}px)`,
        width: Math.max(...xs) - left,
        height: Math.max(...ys) - top,
      }}
    />
  );
}
