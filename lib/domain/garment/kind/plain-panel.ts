import type { KindDesign, MeasureCheck } from '../kind-design';
import { assembled } from '../shape/assembled';
import { straight } from '../shape/curves';
import { lineOf, partOf } from '../shape/drawn';
import { rectangle } from '../shape/rectangle';

/** Distance of the stitching from the edge, mm: 1/2 in (common practice, no source). */
const STITCH_MM = 12.7;

/** A panel is not a ribbon. */
export const PANEL_CHECKS: readonly MeasureCheck[] = [
  (tape) =>
    tape('panelHeight') > 8 * tape('panelWidth') ? { reason: 'tooLongForWidth', measure: 'panelHeight' } : null,
  (tape) =>
    tape('panelWidth') > 8 * tape('panelHeight') ? { reason: 'tooWideForLength', measure: 'panelWidth' } : null,
];

/** A hemmed piece of cloth, width by height: a towel, a banner, anything that has no kind of its own. */
export const plainPanel: KindDesign = {
  sides: ['front', 'back'],
  required: ['panelWidth', 'panelHeight'],
  estimates: {},
  checks: PANEL_CHECKS,
  draw: (tape, side) => {
    const [x, height] = [tape('panelWidth') / 2, tape('panelHeight')];
    const outline = rectangle({ x: -x, y: 0 }, { x, y: height });
    const inset = Math.min(STITCH_MM, x / 4);
    return assembled(
      side,
      {
        parts: [partOf('body', outline)],
        lines: [
          lineOf('stitch', rectangle({ x: inset - x, y: inset }, { x: x - inset, y: height - inset })),
          lineOf('topEdge', straight({ x, y: 0 }, { x: -x, y: 0 })),
          lineOf('sideSeam', straight({ x, y: 0 }, { x, y: height })),
          lineOf('sideSeam', straight({ x: -x, y: 0 }, { x: -x, y: height })),
          lineOf('hem', straight({ x, y: height }, { x: -x, y: height })),
        ],
      },
      outline,
      { topEdgeCentre: { x: 0, y: 0 }, hemCentre: { x: 0, y: height } },
    );
  },
};
