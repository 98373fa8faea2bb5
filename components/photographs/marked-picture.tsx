'use client';

import { type KeyboardEvent, type PointerEvent as ReactPointerEvent, useEffect, useRef, useState } from 'react';
import { inverted, type Matrix } from '@/lib/domain/geometry/matrix';
import type { Point } from '@/lib/domain/geometry/point';
import type { PictureSize } from '@/lib/domain/layout/photograph';
import { CloseUp } from './close-up';
import { MarkCross } from './mark-cross';
import styles from './marked-picture.module.css';
import { MARKS, type Mark, type MarkedPhotograph, markAt } from './photograph-marks';
import { PictureTape } from './picture-tape';

/** How a flat is drawn over a photograph, mm. */
export type DrawnFlat = { readonly outline: string; readonly lines: readonly string[] };

type MarkedPictureProps = {
  src: string;
  picture: PictureSize;
  flat: DrawnFlat;
  /** Photograph px to mm of the flat; null while the points cannot be meant. */
  matrix: Matrix | null;
  marked: MarkedPhotograph;
  /** What the tapes read: A to B, and C to D. */
  readings: { readonly tape: string | null; readonly width: string | null };
  words: { readonly title: string; readonly mark: (mark: Mark, at: Point) => string };
  onTake: (mark: Mark) => void;
  onMove: (mark: Mark, to: Point) => void;
  /** A click on the photograph sets the mark in hand. */
  onPlace: (to: Point) => void;
};

const ARROWS: Record<string, Point> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** A photograph with its marks, the tapes between them, and the outline of the flat as it then lies. */
export function MarkedPicture(props: MarkedPictureProps) {
  const { src, picture, flat, matrix, marked, readings, words, onTake, onMove, onPlace } = props;
  const surface = useRef<SVGSVGElement>(null);
  const unit = usePxPerCssPx(surface, picture);
  const [held, setHeld] = useState<{ mark: Mark; offset: Point } | null>(null);
  const [moved, setMoved] = useState(false);
  const inHand = markAt(marked, marked.inHand);

  function at({ clientX, clientY }: { clientX: number; clientY: number }): Point | null {
    const toScreen = surface.current?.getScreenCTM();
    return toScreen ? new DOMPoint(clientX, clientY).matrixTransform(toScreen.inverse()) : null;
  }

  function hold(event: ReactPointerEvent<SVGGElement>, mark: Mark): void {
    const [pointer, place] = [at(event), markAt(marked, mark)];
    if (!(pointer && place) || event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    setHeld({ mark, offset: { x: place.x - pointer.x, y: place.y - pointer.y } });
    setMoved(true);
    onTake(mark);
  }

  function drag(event: ReactPointerEvent<SVGGElement>): void {
    const pointer = at(event);
    if (held && pointer) onMove(held.mark, { x: pointer.x + held.offset.x, y: pointer.y + held.offset.y });
  }

  function nudge(event: KeyboardEvent, mark: Mark): void {
    const [step, place] = [ARROWS[event.key], markAt(marked, mark)];
    if (!(step && place)) return;
    event.preventDefault();
    const far = event.shiftKey ? 10 : 1;
    setMoved(true);
    onMove(mark, { x: place.x + step.x * far, y: place.y + step.y * far });
  }

  const tapes = [
    { name: 'tape', ends: marked.points, reading: readings.tape },
    ...(marked.check ? [{ name: 'width', ends: marked.check, reading: readings.width }] : []),
  ];
  return (
    <svg
      ref={surface}
      viewBox={`0 0 ${picture.widthPx} ${picture.heightPx}`}
      className={styles.picture}
      onPointerUp={(event) => {
        const pointer = event.target instanceof Element && event.target.closest('[data-mark]') ? null : at(event);
        if (pointer && !held && event.button === 0) onPlace(pointer);
      }}
    >
      <title>{words.title}</title>
      <image href={src} width={picture.widthPx} height={picture.heightPx} preserveAspectRatio="none" />
      {matrix ? <FlatOver flat={flat} matrix={matrix} /> : null}
      {tapes.map(({ name, ends, reading }) => (
        <PictureTape key={name} ends={ends} reading={reading} unit={unit} />
      ))}
      {MARKS.map((mark) => {
        const place = markAt(marked, mark);
        return place ? (
          <g
            key={mark}
            role="button"
            tabIndex={0}
            aria-label={words.mark(mark, place)}
            aria-pressed={mark === marked.inHand}
            data-mark={mark}
            className={styles.mark}
            onFocus={() => onTake(mark)}
            onKeyDown={(event) => nudge(event, mark)}
            onPointerDown={(event) => hold(event, mark)}
            onPointerMove={drag}
            onPointerUp={() => setHeld(null)}
            onPointerCancel={() => setHeld(null)}
          >
            <MarkCross at={place} letter={mark} unit={unit} inHand={mark === marked.inHand} />
          </g>
        ) : null;
      })}
      {moved && inHand ? <CloseUp src={src} picture={picture} at={inHand} unit={unit} /> : null}
    </svg>
  );
}

function FlatOver({ flat, matrix }: { flat: DrawnFlat; matrix: Matrix }) {
  return (
    <g transform={`matrix(${inverted(matrix).join(' ')})`} className={styles.flat}>
      <path d={flat.outline} className={styles.halo} />
      <path d={flat.outline} className={styles.outline} />
      <path d={flat.lines.join('')} className={styles.lines} />
    </g>
  );
}

/** How many px of the photograph one CSS px shows, so that marks keep their size on the screen. */
function usePxPerCssPx(surface: React.RefObject<SVGSVGElement | null>, { widthPx, heightPx }: PictureSize): number {
  const [unit, setUnit] = useState(widthPx / 600);
  useEffect(() => {
    const element = surface.current;
    if (!element) return;
    const observer = new ResizeObserver(() => {
      const { width, height } = element.getBoundingClientRect();
      if (width > 0 && height > 0) setUnit(Math.max(widthPx / width, heightPx / height));
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [surface, widthPx, heightPx]);
  return unit;
}
