import { type RefObject, useEffect } from 'react';
import { pointOn } from './point-on';
import type { PaperView } from './use-paper-view';

/** A wheel pushes the paper, and with Control (or a pinch on a trackpad) brings it closer. */
export function useWheel(surface: RefObject<HTMLElement | null>, view: PaperView | null): void {
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
