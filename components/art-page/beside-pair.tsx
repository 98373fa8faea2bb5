'use client';

import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { useTranslations } from 'use-intl';
import type { Spot } from '@/lib/domain/art/art-facts';
import { applyMatrix, inverted, type Matrix } from '@/lib/domain/geometry/matrix';
import type { Point } from '@/lib/domain/geometry/point';
import styles from './beside-pair.module.css';
import { PictureLayer } from './picture-layer';
import type { SteppedPicture } from './wiped-pictures';

type BesidePairProps = {
  artId: string;
  cloth: { readonly name: string; readonly hex: string };
  before: SteppedPicture;
  /** Null while it is computed. */
  after: SteppedPicture | null;
  /** Where the one before lies in the one after; null where that is not known. */
  place: Matrix | null;
  /** Looked at pixel for pixel around this place of the one after; null to see both whole. */
  near: Point | null;
  onNear: (at: Point) => void;
};

/** Room around a whole picture, of its longer side. */
const MARGIN_SHARE = 0.08;
const ARROWS: Record<string, Point> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** Before and after side by side on one cloth, whole or pixel for pixel at the same place. */
export function BesidePair({ artId, cloth, before, after, place, near, onNear }: BesidePairProps) {
  const t = useTranslations('art-page.beside');
  const pair = useRef<HTMLDivElement>(null);
  const sidePx = useSidePx(pair);
  const isNear = near !== null && after !== null && place !== null;
  const sight = isNear ? windowAround(near, sidePx) : null;

  function move(event: KeyboardEvent): void {
    const step = ARROWS[event.key];
    if (!(step && near)) return;
    event.preventDefault();
    const far = event.shiftKey ? 100 : 20;
    onNear({ x: near.x + step.x * far, y: near.y + step.y * far });
  }

  return (
    <figure className={styles.figure}>
      <div
        ref={pair}
        role="group"
        aria-label={t('pair', { cloth: cloth.name })}
        tabIndex={isNear ? 0 : undefined}
        className={styles.pair}
        onKeyDown={move}
      >
        <Half
          artId={artId}
          shown={before}
          hex={cloth.hex}
          title={t('beforeOn', { cloth: cloth.name })}
          sight={sight}
          place={isNear ? place : null}
          onNear={(at) => onNear(place && !isNear ? applyMatrix(place, at) : at)}
        />
        {after ? (
          <Half
            artId={artId}
            shown={after}
            hex={cloth.hex}
            title={t('afterOn', { cloth: cloth.name })}
            sight={sight}
            place={null}
            onNear={onNear}
          />
        ) : (
          <svg viewBox="0 0 1 1" className={styles.half}>
            <title>{t('computing')}</title>
            <rect width="1" height="1" fill={cloth.hex} />
          </svg>
        )}
      </div>
      <figcaption className={styles.caption}>
        <span>{t('before')}</span>
        <strong>{cloth.name}</strong>
        <span>{t('after')}</span>
      </figcaption>
    </figure>
  );
}

type HalfProps = {
  artId: string;
  shown: SteppedPicture;
  hex: string;
  title: string;
  /** What is seen, in px of the one after; null for all of this one. */
  sight: Spot | null;
  place: Matrix | null;
  onNear: (at: Point) => void;
};

function Half({ artId, shown, hex, title, sight, place, onNear }: HalfProps) {
  const surface = useRef<SVGSVGElement>(null);
  const box = sight ?? wholeBox(shown.picture);
  const seen = sight ? clipped(place ? mapped(inverted(place), sight) : sight, shown.picture) : null;
  return (
    <svg
      ref={surface}
      viewBox={`${box.x} ${box.y} ${box.width} ${box.height}`}
      className={styles.half}
      data-half=""
      onClick={({ clientX, clientY }) => {
        const toScreen = surface.current?.getScreenCTM();
        if (toScreen) onNear(new DOMPoint(clientX, clientY).matrixTransform(toScreen.inverse()));
      }}
    >
      <title>{title}</title>
      <rect {...box} fill={hex} />
      <g transform={place ? `matrix(${place.join(' ')})` : undefined}>
        <PictureLayer artId={artId} {...shown} seen={seen} />
      </g>
    </svg>
  );
}

/** A square around the whole picture with some cloth to be seen beside it. */
function wholeBox({ widthPx, heightPx }: { widthPx: number; heightPx: number }): Spot {
  const side = Math.max(widthPx, heightPx) * (1 + 2 * MARGIN_SHARE);
  return { x: (widthPx - side) / 2, y: (heightPx - side) / 2, width: side, height: side };
}

function windowAround(at: Point, sidePx: number): Spot {
  return { x: Math.round(at.x - sidePx / 2), y: Math.round(at.y - sidePx / 2), width: sidePx, height: sidePx };
}

function mapped(matrix: Matrix, { x, y, width, height }: Spot): Spot {
  const [a, b] = [applyMatrix(matrix, { x, y }), applyMatrix(matrix, { x: x + width, y: y + height })];
  return {
    x: Math.min(a.x, b.x),
    y: Math.min(a.y, b.y),
    width: Math.abs(a.x - b.x),
    height: Math.abs(a.y - b.y),
  };
}

/** What of the box lies on the picture, whole px; null where nothing does. */
function clipped(box: Spot, { widthPx, heightPx }: { widthPx: number; heightPx: number }): Spot | null {
  const [left, top] = [Math.max(0, Math.floor(box.x)), Math.max(0, Math.floor(box.y))];
  const width = Math.min(widthPx, Math.ceil(box.x + box.width)) - left;
  const height = Math.min(heightPx, Math.ceil(box.y + box.height)) - top;
  return width > 0 && height > 0 ? { x: left, y: top, width, height } : null;
}

/** How many dots of the screen one half of the pair is wide. */
function useSidePx(pair: React.RefObject<HTMLElement | null>): number {
  const [side, setSide] = useState(300);
  useEffect(() => {
    const element = pair.current?.querySelector('[data-half]');
    if (!element) return;
    const observer = new ResizeObserver(() => {
      const { width } = element.getBoundingClientRect();
      if (width > 0) setSide(width * window.devicePixelRatio);
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [pair]);
  return side;
}
