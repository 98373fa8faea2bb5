import { type ComponentProps, memo, useMemo, useState } from 'react';
import { Stage } from 'react-konva';
import { clothColours } from '@/lib/domain/garment/cloth-colours';
import type { LayoutDocument, Print } from '@/lib/domain/layout/document';
import { composePrints, composeScene, printsOn, type Scene } from '@/lib/domain/layout/scene';
import { type Tape, tapeShapes } from '@/lib/domain/layout/tape';
import type { SetType } from '@/lib/domain/layout/type-case';
import type { LengthUnit } from '@/lib/domain/measure/length';
import { areaAround, drawnCorners, tapeEnds, tapeReachMm } from '@/lib/editor/moving-area';
import type { Selection } from '@/lib/editor/selection';
import type { Viewport } from '@/lib/editor/viewport';
import styles from './paper.module.css';
import { SceneLayer } from './scene-layer';

type PaperSceneProps = {
  layout: LayoutDocument;
  selection: Selection;
  tapes: readonly Tape[];
  /** Sets the words that are looked at. */
  setType: SetType | undefined;
  unit: LengthUnit;
  viewport: Viewport;
  widthPx: number;
  heightPx: number;
  href: (sha256: string) => string;
};

const NONE: readonly Print[] = [];

/**
 * The garment that lies on the paper, its prints and the tapes on it: pictures only, nothing here is asked where it is.
 * What lies under and over the print in hand stays as it is drawn while that print moves, and the print and its tapes are
 * drawn on stages no larger than they are: the less of the window changes at each frame, the sooner it is shown.
 */
export function PaperScene(props: PaperSceneProps) {
  const { layout, selection, tapes, setType, unit, viewport, widthPx, heightPx, href } = props;
  const { garments } = layout;
  const here = printsOn(layout, selection);
  const at = here.findIndex(({ printId }) => printId === selection.printId);
  const under = useSameList(at < 0 ? here : here.slice(0, at));
  const over = useSameList(at < 0 ? NONE : here.slice(at + 1));
  const inHand = here[at];
  const { garmentId, size, side } = selection;
  const prints = useMemo(
    () => composePrints({ garments, prints: inHand ? [inHand] : [] }, { garmentId, size, side, lineId: null }, setType),
    [garments, inHand, garmentId, size, side, setType],
  );
  const hex = garments.find((garment) => garment.garmentId === garmentId)?.cloth.hex ?? '#FFFFFF';
  const laid = useMemo(() => {
    const leaderHex = clothColours(hex).seam;
    return tapes.flatMap((tape) => tapeShapes(tape, unit, leaderHex));
  }, [tapes, unit, hex]);
  const still = { garments, selection, setType, viewport, widthPx, heightPx, href };
  const moving = { viewport, widthPx, heightPx, href };
  const corners = prints.flatMap(drawnCorners);
  const ends = tapeEnds(tapes);
  const reach = tapeReachMm(tapes);
  // Where nothing lies over the print, it and its tapes are one picture.
  return over.length === 0 ? (
    <>
      <StillStage {...still} prints={under} withCloth />
      <MovingStage {...moving} shapes={[...prints, ...laid]} points={[...corners, ...ends]} aroundMm={reach} />
    </>
  ) : (
    <>
      <StillStage {...still} prints={under} withCloth />
      <MovingStage {...moving} shapes={prints} points={corners} aroundMm={0} />
      <StillStage {...still} prints={over} />
      <MovingStage {...moving} shapes={laid} points={ends} aroundMm={reach} />
    </>
  );
}

type StageProps = Pick<PaperSceneProps, 'viewport' | 'widthPx' | 'heightPx' | 'href'>;

type StillStageProps = StageProps & {
  garments: LayoutDocument['garments'];
  selection: Selection;
  setType: SetType | undefined;
  prints: readonly Print[];
  /** The garment itself lies under these prints. */
  withCloth?: boolean;
};

/** Prints that stay where they are, drawn again only when one of them changed or the paper is seen otherwise. */
const StillStage = memo(function StillStage(props: StillStageProps) {
  const { garments, selection, setType, prints, withCloth = false, viewport, widthPx, heightPx, href } = props;
  const { garmentId, size, side } = selection;
  const scene: Pick<Scene, 'shapes'> = useMemo(() => {
    const [layout, key] = [
      { garments, prints: [...prints] },
      { garmentId, size, side, lineId: null },
    ];
    return withCloth ? composeScene(layout, key, setType) : { shapes: composePrints(layout, key, setType) };
  }, [garments, prints, withCloth, garmentId, size, side, setType]);
  const originPx = { x: viewport.xPx, y: viewport.yPx };
  return (
    <Stage className={styles.stage} width={widthPx} height={heightPx} listening={false}>
      <SceneLayer {...{ scene, originPx, href }} pxPerMm={viewport.pxPerMm} />
    </Stage>
  );
});

type MovingStageProps = StageProps & {
  shapes: Scene['shapes'];
  /** What the stage has to hold, mm on the flat, and how much around it. */
  points: Parameters<typeof areaAround>[0];
  aroundMm: number;
};

/** What moves with the print in hand, on a stage just large enough. */
function MovingStage({ shapes, points, aroundMm, viewport, widthPx, heightPx, href }: MovingStageProps) {
  const area = areaAround(points, aroundMm, viewport, { width: widthPx, height: heightPx });
  const place: ComponentProps<'div'>['style'] = { transform: `translate(${area.x}px, ${area.y}px)` };
  const originPx = { x: viewport.xPx - area.x, y: viewport.yPx - area.y };
  return (
    <Stage className={styles.stage} style={place} width={area.width} height={area.height} listening={false}>
      <SceneLayer scene={{ shapes }} {...{ originPx, href }} pxPerMm={viewport.pxPerMm} />
    </Stage>
  );
}

/** The list from before while it holds the very same things. */
function useSameList<Item>(list: readonly Item[]): readonly Item[] {
  const [before, setBefore] = useState(list);
  const isSame = before.length === list.length && list.every((item, index) => item === before[index]);
  if (!isSame) setBefore(list);
  return isSame ? before : list;
}
