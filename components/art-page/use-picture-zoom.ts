import { type RefObject, useCallback, useEffect, useLayoutEffect, useRef, useState } from 'react';
import type { Spot } from '@/lib/domain/art/art-facts';
import type { Point } from '@/lib/domain/geometry/point';
import type { PictureSize } from './box-edits';

/** How much closer one press brings the picture (by eye). */
const CLOSER = 1.5;
const CLOSEST = 16;
/** Room left around a picture that is seen whole, px of the screen on each side. */
const MARGIN = 16;
/** The frame's own line on both sides, px of the screen. */
const BORDERS = 4;

export type PictureZoom = {
  /** Px of the screen to one px of the picture; null until the frame has been measured. */
  readonly scale: number | null;
  readonly isWhole: boolean;
  /** Whether one px of the picture takes one dot of the screen. */
  readonly isOneToOne: boolean;
  /** The part of the picture in sight, whole px of it; null while all of it is. */
  readonly seen: Spot | null;
  /** To be called when the frame was scrolled. */
  readonly look: () => void;
  readonly closer: () => void;
  readonly further: () => void;
  readonly whole: () => void;
  readonly oneToOne: () => void;
};

/** How close a picture is looked at within a frame that scrolls. What is in the middle of the frame stays there. */
export function usePictureZoom(
  frame: RefObject<HTMLElement | null>,
  surface: RefObject<SVGSVGElement | null>,
  { widthPx, heightPx }: PictureSize,
): PictureZoom {
  const [room, setRoom] = useState<{ width: number; height: number } | null>(null);
  const [chosen, setChosen] = useState<number | null>(null);
  const [seen, setSeen] = useState<Spot | null>(null);
  const middle = useRef<Point | null>(null);

  useEffect(() => {
    const element = frame.current;
    if (!element) return;
    const observer = new ResizeObserver(() => {
      // Inside its border; bars to scroll by do not count, since a picture seen whole has none.
      const [width, height] = [element.offsetWidth - BORDERS, element.offsetHeight - BORDERS];
      setRoom({ width: width - 2 * MARGIN, height: height - 2 * MARGIN });
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [frame]);

  const fitted = room ? Math.min(room.width / widthPx, room.height / heightPx, 1) : null;
  const scale = chosen ?? fitted;

  const look = useCallback(() => {
    const [outer, inner] = [frame.current?.getBoundingClientRect(), surface.current?.getBoundingClientRect()];
    if (!(outer && inner) || chosen === null) return setSeen(null);
    const across = inSight(outer.left, outer.right, inner.left, widthPx * chosen, chosen);
    const down = inSight(outer.top, outer.bottom, inner.top, heightPx * chosen, chosen);
    setSeen(across && down ? { x: across.from, y: down.from, width: across.length, height: down.length } : null);
  }, [frame, surface, chosen, widthPx, heightPx]);

  // The frame can only be scrolled to where the picture's new size reaches, so after it was laid out.
  useLayoutEffect(() => {
    const [element, at] = [frame.current, middle.current];
    if (element && at && scale !== null) {
      element.scrollTo({
        left: at.x * element.scrollWidth - element.clientWidth / 2,
        top: at.y * element.scrollHeight - element.clientHeight / 2,
        behavior: 'instant',
      });
    }
    look();
  }, [frame, scale, look]);

  function zoomTo(next: number | null): void {
    const element = frame.current;
    if (!element) return;
    middle.current = {
      x: (element.scrollLeft + element.clientWidth / 2) / element.scrollWidth,
      y: (element.scrollTop + element.clientHeight / 2) / element.scrollHeight,
    };
    setChosen(next);
  }

  function zoomBy(times: number): void {
    if (scale === null || fitted === null) return;
    const next = Math.min(CLOSEST, scale * times);
    zoomTo(next <= fitted ? null : next);
  }

  const dot = typeof window === 'undefined' ? 1 : 1 / window.devicePixelRatio;
  return {
    scale,
    isWhole: chosen === null,
    isOneToOne: chosen === dot,
    seen,
    look,
    closer: () => zoomBy(CLOSER),
    further: () => zoomBy(1 / CLOSER),
    whole: () => zoomTo(null),
    oneToOne: () => zoomTo(dot),
  };
}

/** What of a stretch can be seen through an opening: px of the picture, rounded outwards; null where nothing can. */
function inSight(
  from: number,
  to: number,
  start: number,
  length: number,
  scale: number,
): { from: number; length: number } | null {
  const first = Math.floor(Math.max(0, from - start) / scale);
  const last = Math.ceil(Math.min(length, to - start) / scale);
  return last > first ? { from: first, length: last - first } : null;
}
