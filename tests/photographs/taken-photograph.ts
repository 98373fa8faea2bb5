import sharp from 'sharp';
import type { FrozenFlat } from '@/lib/domain/garment/flat';
import { applyMatrix, type Matrix, scaleTurnAndMove } from '@/lib/domain/geometry/matrix';
import type { Point } from '@/lib/domain/geometry/point';

/** Colours that a made photograph has, far apart from one another and from anything printed in tests. */
export const CLOTH = { r: 30, g: 150, b: 60 } as const;
export const MARK = { r: 0, g: 90, b: 230 } as const;

/** A photograph made for a test: a flat as if it lay on a table, with a mark on its cloth. */
export type TakenPhotograph = {
  readonly jpeg: Buffer;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Where a place of the flat, mm, is in the upright photograph, px. */
  readonly inPicture: (point: Point) => Point;
};

type Taken = {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pxPerMm: number;
  readonly turnDeg: number;
  /** The middle of a square mark of 60 mm, mm on the flat. */
  readonly markAt: Point;
  /** Exif orientation, as a camera held sideways writes it. */
  readonly orientation?: 1 | 6;
};

/** Takes a photograph of a flat: scaled and turned about its middle, in the middle of the picture. */
export async function takePhotograph(
  flat: Pick<FrozenFlat, 'outline' | 'box'>,
  { widthPx, heightPx, pxPerMm, turnDeg, markAt, orientation = 1 }: Taken,
): Promise<TakenPhotograph> {
  const { box } = flat;
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const turnRad = (turnDeg * Math.PI) / 180;
  const toPicture: Matrix = scaleTurnAndMove(pxPerMm, turnRad, middle, { x: widthPx / 2, y: heightPx / 2 });
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${widthPx}" height="${heightPx}">`,
    `<rect width="${widthPx}" height="${heightPx}" fill="rgb(236,226,205)"/>`,
    `<g transform="matrix(${toPicture.join(' ')})">`,
    `<path d="${flat.outline}" fill="rgb(${CLOTH.r},${CLOTH.g},${CLOTH.b})"/>`,
    `<rect x="${markAt.x - 30}" y="${markAt.y - 30}" width="60" height="60" fill="rgb(${MARK.r},${MARK.g},${MARK.b})"/>`,
    '</g></svg>',
  ].join('');
  const upright = sharp(Buffer.from(svg)).flatten();
  // Lying as the sensor saw it: turned back by what the orientation tells a reader to turn it by.
  const stored = orientation === 6 ? sharp(await upright.png().toBuffer()).rotate(270) : upright;
  const jpeg = await stored
    .jpeg({ quality: 95, chromaSubsampling: '4:4:4' })
    .withExif({
      IFD0: { Make: 'A camera' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1', GPSLongitudeRef: 'E', GPSLongitude: '0/1 7/1 0/1' },
    })
    .withMetadata({ orientation })
    .toBuffer();
  return { jpeg, widthPx, heightPx, inPicture: (point) => applyMatrix(toPicture, point) };
}
