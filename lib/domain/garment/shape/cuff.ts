import { type Path, reversedPath } from '../../geometry/path';
import { chained } from './curves';
import { closed, type Drawn } from './drawn';
import { ribKnit } from './rib';

/** A knitted cuff between the seam it is sewn to and its free edge, two runs that go the same way. One piece. */
export function cuffBetween(seam: Path, edge: Path): Drawn {
  return {
    parts: [{ part: 'rib', path: closed(chained(seam, reversedPath(edge))) }],
    lines: [
      { line: 'ribKnit', path: ribKnit(seam, edge) },
      { line: 'cuffSeam', path: seam },
    ],
  };
}
