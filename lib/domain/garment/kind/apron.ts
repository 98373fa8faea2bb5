import { curve, endOf, line, move, type Path, reversedPath } from '../../geometry/path';
import type { Point } from '../../geometry/point';
import type { KindDesign, Tape } from '../kind-design';
import { assembled } from '../shape/assembled';
import { bent, beside, chained, straight } from '../shape/curves';
import { band, closed, type Drawn, lineOf, mirroredWhole, pairOf, partOf, partPair, whole } from '../shape/drawn';
import { rectangle } from '../shape/rectangle';
import { of } from './top-estimates';

/** Width of neck strap and ties, mm: 1 in (common practice, no source). */
const STRAP_MM = 25;
/** How rounded the lower corners are, mm. */
const CORNER_MM = 34;
/** Distance of the stitching from the edge, mm. */
const STITCH_MM = 10;

/** An apron with a bib, a neck strap, ties and a pocket (proportions: common practice, no source). Only its front is decorated. */
export const apron: KindDesign = {
  sides: ['front'],
  required: ['bodyLength', 'panelWidth'],
  estimates: {
    bibWidth: of('panelWidth', 0, 0.42),
    bibHeight: of('bodyLength', 0, 0.32),
    pocketWidth: of('panelWidth', 0, 0.5),
    pocketHeight: of('bodyLength', 20, 0.21),
    pocketDrop: of('bodyLength', 0, 0.49),
  },
  checks: [
    (tape) =>
      tape('bodyLength') > 4 * tape('panelWidth') ? { reason: 'tooLongForWidth', measure: 'bodyLength' } : null,
    (tape) =>
      tape('panelWidth') > 4 * tape('bodyLength') ? { reason: 'tooWideForLength', measure: 'panelWidth' } : null,
    (tape) =>
      tape('bibWidth') > tape('panelWidth') || tape('bibWidth') < 4 * STRAP_MM
        ? { reason: 'partTooLarge', measure: 'bibWidth' }
        : null,
    (tape) => (tape('bibHeight') > tape('bodyLength') * 0.6 ? { reason: 'partTooLarge', measure: 'bibHeight' } : null),
    (tape) =>
      tape('pocketWidth') > tape('panelWidth') * 0.94 ? { reason: 'partTooLarge', measure: 'pocketWidth' } : null,
    (tape) =>
      tape('pocketDrop') + tape('pocketHeight') > tape('bodyLength') - CORNER_MM ||
      tape('pocketDrop') < tape('bibHeight')
        ? { reason: 'partTooLarge', measure: 'pocketHeight' }
        : null,
  ],
  draw: (tape, side) => {
    const [x, length, bib] = [
      tape('panelWidth') / 2,
      tape('bodyLength'),
      { x: tape('bibWidth') / 2, y: tape('bibHeight') },
    ];
    const top = straight({ x: 0, y: 0 }, { x: bib.x, y: 0 });
    const scoop: Path = [
      move({ x: bib.x, y: 0 }),
      curve(
        { x: bib.x + (x - bib.x) * 0.08, y: bib.y * 0.55 },
        { x: bib.x + (x - bib.x) * 0.45, y: bib.y * 0.94 },
        { x, y: bib.y },
      ),
    ];
    const fall = straight({ x, y: bib.y }, { x, y: length - CORNER_MM });
    const hem: Path = [
      move({ x, y: length - CORNER_MM }),
      curve(
        { x, y: length - CORNER_MM * 0.45 },
        { x: x - CORNER_MM * 0.55, y: length },
        { x: x - CORNER_MM, y: length },
      ),
      line({ x: 0, y: length }),
    ];
    const outline = mirroredWhole(chained(top, scoop, fall, hem));
    const [straps, pocket] = [strapsOf(tape), pocketOf(tape)];
    return assembled(
      side,
      {
        parts: [...straps.parts, partOf('body', outline), ...pocket.parts],
        lines: [
          ...straps.lines,
          lineOf('bibEdge', whole(top)),
          ...pairOf('bibEdge', scoop),
          ...pairOf('sideSeam', fall),
          lineOf('hem', whole(hem)),
          lineOf('stitch', whole(straight({ x: 0, y: 2.4 * STITCH_MM }, { x: bib.x + 1, y: 2.4 * STITCH_MM }))),
          ...pairOf('stitch', beside(scoop, STITCH_MM)),
          ...pairOf(
            'stitch',
            straight({ x: x - STITCH_MM, y: bib.y + 2 }, { x: x - STITCH_MM, y: length - CORNER_MM }),
          ),
          lineOf('stitch', whole(beside(hem, STITCH_MM))),
          ...pairOf('fold', bent({ x: x * 0.86, y: bib.y + 14 }, { x: x * 0.6, y: bib.y + length * 0.12 }, 0.08)),
          ...pocket.lines,
        ],
      },
      outline,
      { bibTopCentre: { x: 0, y: 0 }, hemCentre: { x: 0, y: length } },
    );
  },
};

function strapsOf(tape: Tape): Drawn {
  const [x, bib] = [tape('panelWidth') / 2, { x: tape('bibWidth') / 2, y: tape('bibHeight') }];
  const rise = -bib.x * 1.25;
  const loop = (half: number, top: number): Path => [
    move({ x: half, y: 0 }),
    curve({ x: half * 1.02, y: top * 0.7 }, { x: half * 0.7, y: top }, { x: 0, y: top }),
  ];
  const [outer, inner] = [loop(bib.x - 6, rise), loop(bib.x - 6 - STRAP_MM, rise + STRAP_MM)];
  const y = bib.y + 5;
  const hanging = Math.min(1, tape('panelWidth') / 600);
  const at = (right: number, down: number): Point => ({ x: x + right * hanging, y: y + down * hanging });
  const upper: Path = [
    move({ x: x - 2, y }),
    curve(at(34, -6), at(58, 18), at(62, 76)),
    curve(at(66, 134), at(50, 150), at(58, 218)),
  ];
  const lower = beside(upper, STRAP_MM * hanging);
  const end = straight(endOf(upper), endOf(lower));
  return {
    parts: [
      partOf('strap', band(outer, inner)),
      ...partPair('strap', closed(chained(upper, end, reversedPath(lower)))),
    ],
    lines: [
      lineOf('strapEdge', whole(outer)),
      lineOf('strapEdge', whole(inner)),
      ...pairOf('strapEdge', chained(upper, end, reversedPath(lower))),
    ],
  };
}

function pocketOf(tape: Tape): Drawn {
  const [half, top, foot] = [tape('pocketWidth') / 2, tape('pocketDrop'), tape('pocketDrop') + tape('pocketHeight')];
  const edge = rectangle({ x: -half, y: top }, { x: half, y: foot });
  return {
    parts: [partOf('pocket', edge)],
    lines: [
      lineOf('pocketEdge', edge),
      lineOf('stitch', straight({ x: -half, y: top + 18 }, { x: half, y: top + 18 })),
      lineOf(
        'stitch',
        straight(
          { x: -half + 5, y: top + 18 },
          { x: -half + 5, y: foot - 5 },
          { x: half - 5, y: foot - 5 },
          { x: half - 5, y: top + 18 },
        ),
      ),
      lineOf('pocketEdge', straight({ x: 0, y: top }, { x: 0, y: foot })),
    ],
  };
}
