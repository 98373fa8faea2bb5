'use client';

import { type ReactNode, type PointerEvent as ReactPointerEvent, useId, useRef } from 'react';
import { useTranslations } from 'use-intl';
import type { Spot } from '@/lib/domain/art/art-facts';
import { distance, type Point } from '@/lib/domain/geometry/point';
import { classNames } from '../ui/class-names';
import type { PictureSize } from './box-edits';
import styles from './picture-frame.module.css';
import { type PictureZoom, usePictureZoom } from './use-picture-zoom';
import { ZoomButtons } from './zoom-buttons';

/** A pointer that moves less than this meant to press, px of the screen. */
const DRAG_PX = 4;

/** What a press on the picture does: look (drag moves the picture), draw a box, or point at a place. */
export type PressMeans = 'look' | 'box' | 'point';

type PictureFrameProps = {
  title: string;
  picture: PictureSize;
  /** A cloth's colour under the picture; null for checks. */
  groundHex: string | null;
  press: PressMeans;
  /** A box being drawn, from where it began to where the pointer is. */
  onDraw?: (from: Point, to: Point, isDone: boolean) => void;
  onPoint?: (at: Point) => void;
  /** What stands in the frame's upper left corner: what is being computed. */
  note?: ReactNode;
  /** Tools beside the zoom. */
  tools?: ReactNode;
  /**
   * Everything drawn on the ground in px of the picture; `unit` is how many of them one px of the screen shows, `seen` the
   * part in sight where it is magnified.
   */
  children: (unit: number, seen: Spot | null) => ReactNode;
};

/** A picture to look at closely: lying on pattern paper, as a whole or magnified, moved by scrolling or by dragging. */
export function PictureFrame(props: PictureFrameProps) {
  const { title, picture, groundHex, press, onDraw, onPoint, note, tools, children } = props;
  const t = useTranslations('art-page.frame');
  const frame = useRef<HTMLElement>(null);
  const surface = useRef<SVGSVGElement>(null);
  const checks = useId();
  const zoom = usePictureZoom(frame, surface, picture);
  const { widthPx, heightPx } = picture;
  const scale = zoom.scale ?? 0;
  const unit = scale > 0 ? 1 / scale : 1;
  const held = useHeldPointer(frame, surface, { press, onDraw, onPoint });
  return (
    <div className={styles.framed}>
      <div className={styles.bar}>
        {tools}
        <ZoomButtons zoom={zoom} />
      </div>
      <div className={styles.room}>
        <section
          ref={frame}
          className={classNames(styles.frame, styles[press])}
          aria-label={t('label')}
          tabIndex={0}
          onScroll={zoom.look}
        >
          <svg
            ref={surface}
            viewBox={`0 0 ${widthPx} ${heightPx}`}
            width={widthPx * scale}
            height={heightPx * scale}
            className={classNames(styles.picture, isMagnified(zoom) && styles.magnified)}
            {...held}
          >
            <title>{title}</title>
            <Ground id={checks} picture={picture} hex={groundHex} unit={unit} />
            {zoom.scale === null ? null : children(unit, zoom.seen)}
          </svg>
        </section>
        {note ? <div className={styles.note}>{note}</div> : null}
      </div>
    </div>
  );
}

/** Beyond this the picture's own pixels are to be seen, not what a browser makes up between them. */
function isMagnified({ scale }: PictureZoom): boolean {
  return scale !== null && scale >= 3;
}

type GroundProps = { id: string; picture: PictureSize; hex: string | null; unit: number };

/** What shows where the picture is clear: cloth, or checks as far from white as from black. */
function Ground({ id, picture: { widthPx, heightPx }, hex, unit }: GroundProps) {
  const side = 10 * unit;
  return (
    <>
      <pattern id={id} width={2 * side} height={2 * side} patternUnits="userSpaceOnUse">
        <rect width={2 * side} height={2 * side} className={styles.lightCheck} />
        <path d={`M0 0h${side}v${side}H0zM${side} ${side}h${side}v${side}h${-side}z`} className={styles.darkCheck} />
      </pattern>
      <rect width={widthPx} height={heightPx} fill={hex ?? `url(#${id})`} />
    </>
  );
}

type Held = Pick<PictureFrameProps, 'press' | 'onDraw' | 'onPoint'>;

/** Turns the pointer on the picture into what a press means there. Anything marked `data-own` sees to itself. */
function useHeldPointer(
  frame: React.RefObject<HTMLElement | null>,
  surface: React.RefObject<SVGSVGElement | null>,
  { press, onDraw, onPoint }: Held,
) {
  const from = useRef<{ at: Point; screen: Point; isDrag: boolean } | null>(null);

  function placeOf({ clientX, clientY }: ReactPointerEvent): Point | null {
    const toScreen = surface.current?.getScreenCTM();
    return toScreen ? new DOMPoint(clientX, clientY).matrixTransform(toScreen.inverse()) : null;
  }

  function start(event: ReactPointerEvent<SVGSVGElement>): void {
    const at = placeOf(event);
    const isOwn = event.target instanceof Element && event.target.closest('[data-own]') !== null;
    // A finger scrolls the frame by itself.
    if (!at || isOwn || event.button !== 0 || (press === 'look' && event.pointerType !== 'mouse')) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    from.current = { at, screen: { x: event.clientX, y: event.clientY }, isDrag: false };
  }

  function move(event: ReactPointerEvent<SVGSVGElement>): void {
    const start = from.current;
    if (!start) return;
    const at = placeOf(event);
    start.isDrag ||= distance(start.screen, { x: event.clientX, y: event.clientY }) >= DRAG_PX;
    if (press === 'box' && at && start.isDrag) onDraw?.(start.at, at, false);
    if (press !== 'look') return;
    frame.current?.scrollBy({ left: -event.movementX, top: -event.movementY, behavior: 'instant' });
  }

  function end(event: ReactPointerEvent<SVGSVGElement>): void {
    const [start, at] = [from.current, placeOf(event)];
    from.current = null;
    if (!(start && at)) return;
    if (press === 'point') onPoint?.(at);
    if (press === 'box' && start.isDrag) onDraw?.(start.at, at, true);
  }

  return {
    onPointerDown: start,
    onPointerMove: move,
    onPointerUp: end,
    onPointerCancel: () => {
      from.current = null;
    },
  };
}
