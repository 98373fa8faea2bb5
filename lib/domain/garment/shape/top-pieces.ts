import type { Path } from '../../geometry/path';
import type { Point } from '../../geometry/point';
import type { FlatPointName } from '../flat';
import type { Drawn } from './drawn';
import type { TopFrame } from './top-frame';

/** Front or back, which a top always has. */
export type BodySide = 'front' | 'back';

/** How a top is finished at the neck, seen from one side. Paths are those of the right half. */
export type Neck = {
  /** The neck seam of the body, from the high point of the shoulder to the centre line. */
  readonly seam: Path;
  /** The upper edge of the whole garment, from the centre line to where the shoulder line begins to show. */
  readonly top: Path;
  /** What lies behind the body, and what lies over it. */
  readonly behind: Drawn;
  readonly over: Drawn;
  readonly points: Readonly<Partial<Record<FlatPointName, Point>>>;
};

/** How a top ends below. Paths are those of the right half. */
export type Hem = {
  /** Where the side seam of the body ends. */
  readonly corner: Point;
  /** From there to the centre line along the lower edge of the body itself. */
  readonly bodyEdge: Path;
  /** From there to the centre line along the lower edge of the whole garment. */
  readonly outline: Path;
  readonly drawn: Drawn;
  readonly centre: Point;
  /** How far the edge of the body lies above its middle at a distance from the centre line. */
  readonly riseAt: (xMm: number) => number;
};

/** How a long or short sleeve ends: turned up and stitched, or with a rib `cuffRib` deep. */
export type SleeveEnd = 'hem' | 'rib';

/** A sleeve as it lies beside the body, or its absence. Paths are those of the right half. */
export type Arm = {
  /** Where the sleeve or the bare armhole begins, down to the underarm: the edge of the body. */
  readonly armhole: Path;
  /** From the shoulder round the sleeve to where it leaves the side of the body. */
  readonly outline: Path;
  /** The side of the body below that place. */
  readonly sideBelow: Path;
  /** Whether the shoulder line is a seam: not on a raglan, whose sleeve runs up to the neck. */
  readonly shoulderSeam: boolean;
  readonly behind: Drawn;
  readonly over: Drawn;
};

/** The body that sleeves, pockets and zips are made to fit. */
export type OnBody = {
  readonly side: BodySide;
  readonly frame: TopFrame;
  readonly hem: Hem;
  readonly neck: Neck;
  /** The right side seam, from the underarm down to the hem. */
  readonly sideSeam: Path;
};
