import { type RefObject, useCallback, useEffect, useMemo, useState } from 'react';
import type { Box } from '@/lib/domain/geometry/box';
import type { Point } from '@/lib/domain/geometry/point';
import { fittedViewport, type InsetPx, pannedViewport, type Viewport, zoomedViewport } from '@/lib/editor/viewport';

/** Width of the yardsticks, CSS pixels; the style sheet has the same. */
export const YARDSTICK_PX = { along: 32, beside: 40 } as const;
/** Room left between a garment and what frames it, CSS pixels. */
const MARGIN_PX = 22;

type Seen = {
  readonly width: number;
  readonly height: number;
  readonly coveredLeft: number;
  readonly coveredRight: number;
};

export type PaperView = {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Where the slips begin to lie over it at its right, CSS pixels. */
  readonly freeToPx: number;
  readonly viewport: Viewport;
  readonly isFitted: boolean;
  readonly zoom: (factor: number, atPx?: Point) => void;
  readonly pan: (byPx: Point) => void;
  readonly fit: () => void;
  /** Brings a part of the garment, mm, into the free middle of the paper, as large as it goes. */
  readonly show: (box: Box) => void;
  /** Shows it at so many CSS pixels to the millimetre, what is in the middle staying there. */
  readonly showAt: (pxPerMm: number) => void;
};

/**
 * How the paper is seen: the whole garment in the part that neither yardsticks nor what lies left and right of it cover,
 * until somebody comes closer or pushes the paper. Null until the paper was measured.
 */
export function usePaperView(
  paper: RefObject<HTMLElement | null>,
  left: RefObject<HTMLElement | null>,
  right: RefObject<HTMLElement | null>,
  box: Box | null,
): PaperView | null {
  const [seen, setSeen] = useState<Seen | null>(null);
  const [own, setOwn] = useState<Viewport | null>(null);

  useEffect(() => {
    const elements = [paper.current, left.current, right.current].filter((each) => each !== null);
    const measure = () => {
      if (!paper.current) return;
      const area = paper.current.getBoundingClientRect();
      setSeen({
        width: Math.round(area.width),
        height: Math.round(area.height),
        coveredLeft: Math.max(0, (overlap(area, left.current)?.right ?? area.left) - area.left),
        coveredRight: Math.max(0, area.right - (overlap(area, right.current)?.left ?? area.right)),
      });
    };
    const observer = new ResizeObserver(measure);
    for (const element of elements) observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, [paper, left, right]);

  const fitted = useMemo(() => (seen && box ? fittedViewport(box, seen, insetOf(seen)) : null), [seen, box]);
  const viewport = own ?? fitted;

  // Several turns of a wheel can come in one frame: each goes on from the one before it.
  const zoom = useCallback(
    (factor: number, atPx?: Point) => {
      if (!(fitted && seen)) return;
      setOwn((before) => zoomedViewport(before ?? fitted, factor, atPx ?? middleOf(seen)));
    },
    [fitted, seen],
  );
  const pan = useCallback(
    (byPx: Point) => fitted && setOwn((before) => pannedViewport(before ?? fitted, byPx)),
    [fitted],
  );
  const fit = useCallback(() => setOwn(null), []);
  const show = useCallback((part: Box) => seen && setOwn(fittedViewport(part, seen, insetOf(seen))), [seen]);
  const showAt = useCallback(
    (pxPerMm: number) => {
      if (!(fitted && seen)) return;
      setOwn((before) => zoomedViewport(before ?? fitted, pxPerMm / (before ?? fitted).pxPerMm, middleOf(seen)));
    },
    [fitted, seen],
  );

  return useMemo(
    () =>
      viewport && seen
        ? {
            ...{ widthPx: seen.width, heightPx: seen.height, freeToPx: seen.width - seen.coveredRight },
            ...{ viewport, isFitted: own === null, zoom, pan, fit, show, showAt },
          }
        : null,
    [viewport, seen, own, zoom, pan, fit, show, showAt],
  );
}

function insetOf({ coveredLeft, coveredRight }: Seen): InsetPx {
  return {
    top: YARDSTICK_PX.along + MARGIN_PX,
    left: Math.max(YARDSTICK_PX.beside, coveredLeft) + MARGIN_PX,
    right: coveredRight + MARGIN_PX,
    bottom: MARGIN_PX,
  };
}

function middleOf(seen: Seen): Point {
  const { left, right, top, bottom } = insetOf(seen);
  return { x: (left + seen.width - right) / 2, y: (top + seen.height - bottom) / 2 };
}

/** Where an element lies when it lies over the paper; null when it stands elsewhere on the page. */
function overlap(area: DOMRect, element: HTMLElement | null): DOMRect | null {
  const rect = element?.getBoundingClientRect();
  if (!rect || rect.width === 0) return null;
  return rect.top < area.bottom - 1 && rect.bottom > area.top + 1 ? rect : null;
}
