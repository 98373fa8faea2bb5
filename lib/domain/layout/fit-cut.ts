import type { FlatLineName } from '../garment/flat';
import type { Micrometres } from '../measure/length';
import type { Location } from './locations';

/** How much a chart's garments vary in cutting, either way: in width as measured edge to edge, and in length. */
export type CutTolerance = { readonly acrossUm: Micrometres; readonly longUm: Micrometres };

/** Lines that run down the garment beside a print. */
const BESIDE: ReadonlySet<FlatLineName> = new Set<FlatLineName>([
  'armhole',
  'sideSeam',
  'inseam',
  'outseam',
  'rise',
  'strapEdge',
]);

/** Lines that lie further down than a print whose drop is measured down. */
const FURTHER_DOWN: ReadonlySet<FlatLineName> = new Set<FlatLineName>([
  'hem',
  'ribSeam',
  'pocketEdge',
  'legEdge',
  'snap',
]);

/** Lines at the far end from a hem that a print is measured up from. */
const FURTHER_UP: ReadonlySet<FlatLineName> = new Set<FlatLineName>(['armhole']);

/**
 * How much nearer than on the drawn flat a line can lie to the ink on a garment cut within its chart's tolerance.
 *
 * A print is placed by tape: across from the centre line, and along from its location's point. So
 * - a line beside it varies by half the tolerance across, since a garment that much narrower loses half at each side (and
 *   a centre line found by folding is known no better);
 * - a line at the far end from where its drop is measured varies by the whole tolerance along;
 * - a line that moves with the point the tape starts from (collar, shoulder, zip and placket on the centre line, a cuff
 *   under a sleeve print) does not vary.
 */
export function variesUm(
  line: FlatLineName,
  { direction, side }: Pick<Location, 'direction' | 'side'>,
  { acrossUm, longUm }: CutTolerance,
): Micrometres {
  const isSleeve = side === 'leftSleeve' || side === 'rightSleeve';
  if (direction === 'down' && FURTHER_DOWN.has(line)) return longUm;
  if (isSleeve && direction === 'up' && FURTHER_UP.has(line)) return longUm;
  return BESIDE.has(line) ? Math.ceil(acrossUm / 2) : 0;
}
