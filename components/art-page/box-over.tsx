import { type KeyboardEvent, type PointerEvent as ReactPointerEvent, useRef } from 'react';
import type { Spot } from '@/lib/domain/art/art-facts';
import type { Point } from '@/lib/domain/geometry/point';
import { BOX_EDGES, type BoxEdge, edgeAt, edgeRange, movedBox, type PictureSize, withEdge } from './box-edits';
import styles from './box-over.module.css';

type BoxOverProps = {
  box: Spot;
  picture: PictureSize;
  unit: number;
  /** What the box is for, and the name of an edge of it. */
  words: { readonly box: string; readonly edge: (edge: BoxEdge) => string };
  /** Kept: what is outside goes. Gone: what is inside goes. */
  look: 'kept' | 'gone';
  /** Only the box in hand has edges to take hold of. */
  isInHand: boolean;
  onTake?: () => void;
  onChange: (box: Spot) => void;
  onRemove?: () => void;
};

const ARROWS: Record<string, Point> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};
const CORNERS: readonly (readonly [BoxEdge, BoxEdge])[] = [
  ['left', 'top'],
  ['right', 'top'],
  ['right', 'bottom'],
  ['left', 'bottom'],
];

/** A box over the picture: moved as a whole, or by its edges and corners, by pointer and by arrow keys (with Shift by 10). */
export function BoxOver(props: BoxOverProps) {
  const { box, picture, unit, words, look, isInHand, onTake, onChange, onRemove } = props;
  const held = useRef<{ from: Point; box: Spot } | null>(null);

  function inPicture(event: ReactPointerEvent<SVGElement>): Point {
    const toScreen = event.currentTarget.ownerSVGElement?.getScreenCTM();
    return toScreen ? new DOMPoint(event.clientX, event.clientY).matrixTransform(toScreen.inverse()) : { x: 0, y: 0 };
  }

  /** What takes hold of a part of the box and drags it: `dragged` says what becomes of the box as it was taken. */
  function holding(dragged: (start: Spot, by: Point) => Spot) {
    return {
      'data-own': '',
      onPointerDown: (event: ReactPointerEvent<SVGElement>) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        held.current = { from: inPicture(event), box };
        onTake?.();
      },
      onPointerMove: (event: ReactPointerEvent<SVGElement>) => {
        const start = held.current;
        if (!start) return;
        const to = inPicture(event);
        onChange(dragged(start.box, { x: to.x - start.from.x, y: to.y - start.from.y }));
      },
      onPointerUp: () => {
        held.current = null;
      },
      onPointerCancel: () => {
        held.current = null;
      },
    };
  }

  const moveEdges = (edges: readonly BoxEdge[]) => (start: Spot, by: Point) =>
    edges.reduce((next, edge) => withEdge(next, edge, edgeAt(start, edge) + along(edge, by), picture), start);

  function nudgeBox(event: KeyboardEvent): void {
    const step = ARROWS[event.key];
    if (step) {
      event.preventDefault();
      const far = event.shiftKey ? 10 : 1;
      onChange(movedBox(box, { x: step.x * far, y: step.y * far }, picture));
    } else if (onRemove && (event.key === 'Delete' || event.key === 'Backspace')) {
      event.preventDefault();
      onRemove();
    }
  }

  function nudgeEdge(event: KeyboardEvent, edge: BoxEdge): void {
    const step = ARROWS[event.key];
    if (!step) return;
    event.preventDefault();
    onChange(withEdge(box, edge, edgeAt(box, edge) + along(edge, step) * (event.shiftKey ? 10 : 1), picture));
  }

  const { x, y, width, height } = box;
  return (
    <g className={styles[look]}>
      {look === 'kept' ? (
        <path
          d={`M0 0H${picture.widthPx}V${picture.heightPx}H0zM${x} ${y}v${height}h${width}v${-height}z`}
          className={styles.outside}
        />
      ) : null}
      <rect
        role="button"
        tabIndex={0}
        aria-label={words.box}
        aria-pressed={isInHand}
        x={x}
        y={y}
        width={width}
        height={height}
        className={styles.box}
        onFocus={onTake}
        onKeyDown={nudgeBox}
        {...holding((start, by) => movedBox(start, by, picture))}
      />
      {look === 'gone' ? (
        <path
          d={`M${x} ${y}L${x + width} ${y + height}M${x + width} ${y}L${x} ${y + height}`}
          className={styles.cross}
        />
      ) : null}
      {isInHand
        ? BOX_EDGES.map((edge) => {
            const at = edgeMiddle(box, edge);
            const { min, max } = edgeRange(box, edge, picture);
            return (
              <g
                key={edge}
                role="slider"
                tabIndex={0}
                aria-label={words.edge(edge)}
                aria-valuenow={edgeAt(box, edge)}
                aria-valuemin={min}
                aria-valuemax={max}
                aria-orientation={isUpright(edge) ? 'horizontal' : 'vertical'}
                data-edge={edge}
                className={styles.handle}
                transform={`translate(${at.x} ${at.y}) scale(${unit})`}
                onKeyDown={(event) => nudgeEdge(event, edge)}
                {...holding(moveEdges([edge]))}
              >
                <circle r="20" className={styles.hold} />
                <rect x="-6" y="-6" width="12" height="12" className={styles.knob} />
              </g>
            );
          })
        : null}
      {isInHand
        ? CORNERS.map((corner) => (
            <g
              key={corner.join('-')}
              aria-hidden="true"
              data-edge={corner.join('-')}
              className={styles.handle}
              transform={`translate(${edgeAt(box, corner[0])} ${edgeAt(box, corner[1])}) scale(${unit})`}
              {...holding(moveEdges(corner))}
            >
              <circle r="20" className={styles.hold} />
              <circle r="7" className={styles.knob} />
            </g>
          ))
        : null}
    </g>
  );
}

function isUpright(edge: BoxEdge): boolean {
  return edge === 'left' || edge === 'right';
}

function along(edge: BoxEdge, by: Point): number {
  return isUpright(edge) ? by.x : by.y;
}

function edgeMiddle({ x, y, width, height }: Spot, edge: BoxEdge): Point {
  if (edge === 'left' || edge === 'right') return { x: edge === 'left' ? x : x + width, y: y + height / 2 };
  return { x: x + width / 2, y: edge === 'top' ? y : y + height };
}
