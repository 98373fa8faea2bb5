import { curve, move, type Path, reversedPath } from '../../geometry/path';
import type { KindDesign } from '../kind-design';
import { assembled } from '../shape/assembled';
import { chained, circle, straight } from '../shape/curves';
import { closed, lineOf, mirroredWhole, pairOf, partOf, partPair, whole } from '../shape/drawn';
import { PANEL_CHECKS } from './plain-panel';
import { of } from './top-estimates';

/** How far the brim seam falls towards the ends of the front panel, as a share of its width; for looks. */
const SEAM_FALL = 0.035;

/** A cap seen from the front: only its front panel is decorated (proportions: common practice, no source). */
export const capFront: KindDesign = {
  sides: ['front'],
  required: ['panelWidth', 'panelHeight'],
  estimates: {
    brimWidth: of('panelWidth', 8, 1.16),
    brimDepth: of('panelWidth', 6, 0.32),
  },
  checks: [
    ...PANEL_CHECKS,
    (tape) =>
      tape('brimWidth') < tape('panelWidth') * 1.06 ? { reason: 'partTooLarge', measure: 'panelWidth' } : null,
    (tape) => (tape('brimWidth') > tape('panelWidth') * 1.5 ? { reason: 'partTooLarge', measure: 'brimWidth' } : null),
  ],
  draw: (tape, side) => {
    const [width, height] = [tape('panelWidth'), tape('panelHeight')];
    const end = { x: width / 2, y: height + width * SEAM_FALL };
    const seam: Path = [
      move(end),
      curve(
        { x: end.x * 0.7, y: height + width * SEAM_FALL * 0.4 },
        { x: end.x * 0.36, y: height },
        { x: 0, y: height },
      ),
    ];
    const shoulder = { x: width * 0.27, y: height * 0.075 };
    const panelTop: Path = [
      move({ x: 0, y: 0 }),
      curve({ x: width * 0.1, y: 0 }, { x: width * 0.2, y: height * 0.02 }, shoulder),
    ];
    const panelSeam: Path = [
      move(shoulder),
      curve({ x: width * 0.4, y: height * 0.2 }, { x: end.x * 0.985, y: height * 0.56 }, end),
    ];
    const ear = { x: end.x + width * 0.07, y: end.y - width * 0.014 };
    const crown: Path = [
      move(shoulder),
      curve({ x: width * 0.48, y: height * 0.15 }, { x: ear.x + width * 0.02, y: height * 0.54 }, ear),
    ];
    const band: Path = straight(ear, end);
    const [tip, foot] = [{ x: tape('brimWidth') / 2, y: end.y + tape('brimDepth') * 0.3 }, height + tape('brimDepth')];
    const brim: Path = [
      move(end),
      curve({ x: end.x + (tip.x - end.x) * 0.8, y: end.y + (tip.y - end.y) * 0.2 }, { x: tip.x, y: tip.y - 5 }, tip),
      curve({ x: tip.x, y: tip.y + (foot - tip.y) * 0.55 }, { x: tip.x * 0.62, y: foot }, { x: 0, y: foot }),
    ];
    const rows = [0.28, 0.52, 0.76].map((share): Path => {
      const y = height + tape('brimDepth') * share;
      return [
        move({ x: end.x + (tip.x - end.x) * share * 0.7, y: end.y + (tip.y - end.y) * share * 1.15 }),
        curve({ x: tip.x * 0.66, y: y + (end.y - height) * (1 - share) * 0.7 }, { x: tip.x * 0.34, y }, { x: 0, y }),
      ];
    });
    const panel = mirroredWhole(chained(panelTop, panelSeam, seam));
    const outline = mirroredWhole(chained(panelTop, crown, band, brim));
    const eye = { x: ear.x - width * 0.05, y: height * 0.46 };
    return assembled(
      side,
      {
        parts: [
          partOf('button', circle({ x: 0, y: 0 }, 6)),
          ...partPair('side', closed(chained(reversedPath(panelSeam), crown, band))),
          partOf('collar', mirroredWhole(chained(reversedPath(seam), brim))),
          partOf('body', panel),
        ],
        lines: [
          ...rows.map((row) => lineOf('stitch', whole(row))),
          ...pairOf('panelSeam', panelSeam),
          lineOf('topEdge', whole(reversedPath(panelTop))),
          ...pairOf('eyelet', circle(eye, 2.6)),
          lineOf('brimSeam', whole(seam)),
          lineOf('brimEdge', whole(brim)),
        ],
      },
      outline,
      { brimSeamCentre: { x: 0, y: height }, topEdgeCentre: { x: 0, y: 0 } },
    );
  },
};
