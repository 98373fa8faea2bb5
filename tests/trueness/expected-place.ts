import { svgPathProperties } from 'svg-path-properties';
import type { LocationId } from '@/lib/domain/layout/locations';
import type { KnownArt } from './known-art';

// Everything here is worked out from the document's readings and the drawn collar seam alone, without the code that
// places prints: a second way to the same place.

export type Place = { readonly x: number; readonly y: number };

/** The collar seam as it is drawn: its lowest place and the high points of the shoulders, mm on the flat. */
export type Seam = { readonly lowest: Place; readonly shoulderY: number };

/** Measures the drawn seam with svg-path-properties, an independent path library. */
export function measureSeam(d: string): Seam {
  const path = new svgPathProperties(d);
  const length = path.getTotalLength();
  return { lowest: path.getPointAtLength(length / 2), shoulderY: path.getPointAtLength(0).y };
}

export type PrintReadings = {
  readonly locationId: LocationId;
  readonly side: 'front' | 'back';
  readonly turnCentideg: number;
  readonly widthUm: number;
  readonly dropUm: number;
  readonly acrossUm: number;
};

export type ExpectedPlace = {
  /** Where a pixel position of the picture must come to lie, mm on the flat. */
  readonly placeOf: (pixel: Place) => Place;
  /** The box round the turned ink, mm on the flat. */
  readonly box: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };
};

/**
 * Where a print must lie. The drop is taken from the collar seam to the top of the turned ink, on a left or right chest
 * from the high point of the shoulder to its middle; across goes from the centre line to its middle, and the wearer's
 * left is at the viewer's right on the front only.
 */
export function expectedPlace(art: KnownArt, readings: PrintReadings, seam: Seam): ExpectedPlace {
  const corners = art.rectangles.flatMap(({ x, y, width, height }) => [
    { x, y },
    { x: x + width, y },
    { x, y: y + height },
    { x: x + width, y: y + height },
  ]);
  const inkWidthPx = Math.max(...corners.map(({ x }) => x)) - Math.min(...corners.map(({ x }) => x));
  const mmPerPx = readings.widthUm / 1_000 / inkWidthPx;
  const turn = (readings.turnCentideg / 100) * (Math.PI / 180);
  const turned = ({ x, y }: Place): Place => ({
    x: mmPerPx * (x * Math.cos(turn) - y * Math.sin(turn)),
    y: mmPerPx * (x * Math.sin(turn) + y * Math.cos(turn)),
  });
  const xs = corners.map((corner) => turned(corner).x);
  const ys = corners.map((corner) => turned(corner).y);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const onChest = readings.locationId === 'leftChest' || readings.locationId === 'rightChest';
  const wantedX = seam.lowest.x + ((readings.side === 'front' ? 1 : -1) * readings.acrossUm) / 1_000;
  const wantedY = (onChest ? seam.shoulderY : seam.lowest.y) + readings.dropUm / 1_000;
  const move = { x: wantedX - (left + right) / 2, y: wantedY - (onChest ? (top + bottom) / 2 : top) };
  return {
    placeOf: (pixel) => ({ x: turned(pixel).x + move.x, y: turned(pixel).y + move.y }),
    box: { left: left + move.x, right: right + move.x, top: top + move.y, bottom: bottom + move.y },
  };
}
