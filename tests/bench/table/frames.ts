import type { Page } from '@playwright/test';

/** 60 Hz. */
export const FRAME_MS = 1000 / 60;

/** Where a drag begins, in CSS pixels of the window, and how far it goes round from there. */
export type Round = { readonly x: number; readonly y: number; readonly radiusPx: number; readonly frames: number };

export type Frames = { readonly medianMs: number; readonly p95Ms: number; readonly droppedShare: number };

/**
 * Takes hold of what lies at a place and drags it round in figures of eight, one move a frame as a browser hands them
 * over, and measures how long each frame took to come. The press and the letting go are the browser's own; the moves are
 * made in the page, so that nothing between it and its driver is measured with it.
 */
export async function draggedFrames(page: Page, selector: string, round: Round): Promise<Frames> {
  await page.bringToFront();
  // The compiler that runs a bench wraps functions in one of its own, which a page does not have.
  await page.evaluate('globalThis.__name ??= (wrapped) => wrapped');
  await page.mouse.move(round.x, round.y);
  await page.mouse.down();
  const gaps = await page.evaluate(moveOnEachFrame, { selector, ...round });
  await page.mouse.up();
  return summedUp(gaps);
}

/** Runs in the page. The first frames are left out: a drag begins with work of its own. */
function moveOnEachFrame({ selector, x, y, radiusPx, frames }: Round & { selector: string }): Promise<number[]> {
  const target = document.querySelector(selector);
  if (!target) throw new Error(`nothing at ${selector} to drag over`);
  const skipped = 10;
  return new Promise((resolve) => {
    const times: number[] = [];
    const onFrame = (now: number) => {
      times.push(now);
      if (times.length > frames + skipped) {
        resolve(times.slice(skipped + 1).map((time, index) => time - (times[skipped + index] ?? time)));
        return;
      }
      const angle = (times.length / 90) * 2 * Math.PI;
      const at = {
        clientX: x + radiusPx * Math.sin(angle),
        clientY: y + (radiusPx / 2) * Math.sin(2 * angle),
        bubbles: true,
        buttons: 1,
      };
      target.dispatchEvent(
        new PointerEvent('pointermove', { ...at, pointerId: 1, pointerType: 'mouse', isPrimary: true }),
      );
      target.dispatchEvent(new MouseEvent('mousemove', at));
      requestAnimationFrame(onFrame);
    };
    requestAnimationFrame(onFrame);
  });
}

function summedUp(gaps: readonly number[]): Frames {
  const sorted = [...gaps].sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
  const dropped = gaps.reduce((sum, gap) => sum + Math.max(0, Math.round(gap / FRAME_MS) - 1), 0);
  return { medianMs: at(0.5), p95Ms: at(0.95), droppedShare: dropped / (gaps.length + dropped) };
}
