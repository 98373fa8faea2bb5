import type { Point } from '@/lib/domain/geometry/point';

/** Where a pointer is on an element, CSS pixels from its upper left corner. */
export function pointOn(element: Element, { clientX, clientY }: { clientX: number; clientY: number }): Point {
  const { left, top } = element.getBoundingClientRect();
  return { x: clientX - left, y: clientY - top };
}
