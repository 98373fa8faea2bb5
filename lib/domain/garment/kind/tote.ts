import { curve, line, move, type Path } from '../../geometry/path';
import type { KindDesign, Tape } from '../kind-design';
import { assembled } from '../shape/assembled';
import { bent, chained, straight } from '../shape/curves';
import { band, type Drawn, lineOf, mirroredWhole, pairOf, partOf, partPair, whole } from '../shape/drawn';
import { rectangle } from '../shape/rectangle';
import { PANEL_CHECKS } from './plain-panel';
import { of } from './top-estimates';

/** How far the foot of a filled-out seam rises at the corners, mm; for looks. */
const FOOT_RISE_MM = 3;
/** Depth of the hem at the mouth: 1 1/8 in (common practice, no source). */
const MOUTH_HEM_MM = 28.5;
/** How far a handle is sewn down below the mouth: 1 1/2 in (common practice, no source). */
const SEWN_DOWN_MM = 38;

/** A bag with two handles (proportions: common practice, no source). Handle length is the height of the loop. */
export const tote: KindDesign = {
  sides: ['front', 'back'],
  required: ['panelWidth', 'panelHeight'],
  estimates: {
    handleLength: of('panelHeight', 90, 0.4),
    handleWidth: of('panelWidth', 14, 0.03),
    handleSpacing: of('panelWidth', 10, 0.38),
  },
  checks: [
    ...PANEL_CHECKS,
    (tape) =>
      tape('handleSpacing') + tape('handleWidth') > tape('panelWidth') ||
      tape('handleSpacing') < 2 * tape('handleWidth')
        ? { reason: 'partTooLarge', measure: 'handleSpacing' }
        : null,
    (tape) =>
      tape('handleLength') < 1.5 * tape('handleWidth') ? { reason: 'partTooLarge', measure: 'handleWidth' } : null,
    (tape) => (tape('panelHeight') < 3 * SEWN_DOWN_MM ? { reason: 'outOfRange', measure: 'panelHeight' } : null),
  ],
  draw: (tape, side) => {
    const [x, height] = [tape('panelWidth') / 2, tape('panelHeight')];
    const foot = { x, y: height - FOOT_RISE_MM };
    const hem: Path = [move(foot), curve({ x: x * 0.8, y: height }, { x: x * 0.4, y: height }, { x: 0, y: height })];
    const sideSeam = straight({ x, y: 0 }, foot);
    const outline = mirroredWhole(chained(straight({ x: 0, y: 0 }, { x, y: 0 }), sideSeam, hem));
    const [behind, over] = [handle(tape, -10), handle(tape, 0)];
    return assembled(
      side,
      {
        parts: [
          ...behind.parts.map((each) => ({ ...each, part: 'side' as const })),
          partOf('body', outline),
          ...over.parts,
          ...sewnDown(tape).parts,
        ],
        lines: [
          ...behind.lines.slice(0, 1),
          ...over.lines,
          lineOf('topEdge', straight({ x, y: 0 }, { x: -x, y: 0 })),
          lineOf('stitch', straight({ x, y: MOUTH_HEM_MM }, { x: -x, y: MOUTH_HEM_MM })),
          ...pairOf('sideSeam', sideSeam),
          ...pairOf('fold', bent({ x: x - 1, y: height * 0.93 }, { x: x * 0.78, y: height * 0.84 }, 0.1)),
          ...pairOf('fold', bent({ x: x - 1, y: height * 0.1 }, { x: x * 0.86, y: height * 0.2 }, -0.1)),
          lineOf('hem', whole(hem)),
          ...sewnDown(tape).lines,
        ],
      },
      outline,
      { topEdgeCentre: { x: 0, y: 0 }, hemCentre: { x: 0, y: height } },
    );
  },
};

/** The loop of one handle above the mouth, `raisedMm` higher where negative. */
function handle(tape: Tape, raisedMm: number): Drawn {
  const [width, length] = [tape('handleWidth'), tape('handleLength')];
  const loop = (x: number, top: number): Path => [
    move({ x, y: 0 }),
    line({ x, y: top * 0.3 }),
    curve({ x, y: top * 0.78 }, { x: x * 0.62, y: top }, { x: 0, y: top }),
  ];
  const outer = loop((tape('handleSpacing') + width) / 2, raisedMm - length);
  const inner = loop((tape('handleSpacing') - width) / 2, raisedMm - length + width);
  return {
    parts: [partOf('strap', band(outer, inner))],
    lines: [lineOf('strapEdge', whole(outer)), lineOf('strapEdge', whole(inner))],
  };
}

/** The ends of the front handle, sewn down with a crossed square. */
function sewnDown(tape: Tape): Drawn {
  const [left, right] = [
    (tape('handleSpacing') - tape('handleWidth')) / 2,
    (tape('handleSpacing') + tape('handleWidth')) / 2,
  ];
  const [inL, inR, top, foot] = [left + 4, right - 4, 8, SEWN_DOWN_MM - 5];
  return {
    parts: partPair('strap', rectangle({ x: left, y: 0 }, { x: right, y: SEWN_DOWN_MM })),
    lines: [
      ...pairOf(
        'strapEdge',
        straight({ x: left, y: 0 }, { x: left, y: SEWN_DOWN_MM }, { x: right, y: SEWN_DOWN_MM }, { x: right, y: 0 }),
      ),
      ...pairOf('stitch', rectangle({ x: inL, y: top }, { x: inR, y: foot })),
      ...pairOf('stitch', straight({ x: inL, y: top }, { x: inR, y: foot })),
      ...pairOf('stitch', straight({ x: inR, y: top }, { x: inL, y: foot })),
    ],
  };
}
