import { memo, useMemo, useState } from 'react';
import { Stage } from 'react-konva';
import { clothColours } from '@/lib/domain/garment/cloth-colours';
import type { LayoutDocument, Print } from '@/lib/domain/layout/document';
import { composeScene, printsOn, type Scene } from '@/lib/domain/layout/scene';
import { type Tape, tapeShapes } from '@/lib/domain/layout/tape';
import type { LengthUnit } from '@/lib/domain/measure/length';
import type { Selection } from '@/lib/editor/selection';
import type { Viewport } from '@/lib/editor/viewport';
import { SceneLayer } from './scene-layer';

type PaperSceneProps = {
  layout: LayoutDocument;
  selection: Selection;
  tapes: readonly Tape[];
  unit: LengthUnit;
  viewport: Viewport;
  widthPx: number;
  heightPx: number;
  href: (sha256: string) => string;
};

const PRINT = ['print'] as const;
const NONE: readonly Print[] = [];

/**
 * The garment that lies on the paper, its prints and the tapes on it: pictures only, nothing here is asked where it is.
 * What lies under and over the print in hand are layers of their own, so that a drag draws one picture at each frame.
 */
export function PaperScene({ layout, selection, tapes, unit, viewport, widthPx, heightPx, href }: PaperSceneProps) {
  const { garments } = layout;
  const { printId } = selection;
  const here = printsOn(layout, selection);
  const at = here.findIndex((print) => print.printId === printId);
  const under = useSameList(at < 0 ? here : here.slice(0, at));
  const print = here[at];
  const inHand = useMemo(() => (print ? [print] : NONE), [print]);
  const over = useSameList(at < 0 ? NONE : here.slice(at + 1));
  const hex = garments.find(({ garmentId }) => garmentId === selection.garmentId)?.cloth.hex ?? '#FFFFFF';
  const laid = useMemo(() => {
    const leaderHex = clothColours(hex).seam;
    return { shapes: tapes.flatMap((tape) => tapeShapes(tape, unit, leaderHex)) };
  }, [tapes, unit, hex]);
  const { pxPerMm, xPx, yPx } = viewport;
  const seen = { garments, selection, pxPerMm, xPx, yPx, href };
  return (
    <Stage width={widthPx} height={heightPx} listening={false}>
      <PrintsLayer {...seen} prints={under} withCloth />
      <PrintsLayer {...seen} prints={inHand} />
      {over.length > 0 ? <PrintsLayer {...seen} prints={over} /> : null}
      <SceneLayer scene={laid} pxPerMm={pxPerMm} originPx={{ x: xPx, y: yPx }} href={href} />
    </Stage>
  );
}

type PrintsLayerProps = {
  garments: LayoutDocument['garments'];
  prints: readonly Print[];
  selection: Selection;
  /** The garment itself lies under these prints. */
  withCloth?: boolean;
  pxPerMm: number;
  xPx: number;
  yPx: number;
  href: (sha256: string) => string;
};

/** Some prints of the side, drawn again only when one of them changed. */
const PrintsLayer = memo(function PrintsLayer({
  garments,
  prints,
  selection: { garmentId, size, side },
  withCloth = false,
  xPx,
  yPx,
  ...rest
}: PrintsLayerProps) {
  const scene: Scene = useMemo(
    () => composeScene({ garments, prints: [...prints] }, { garmentId, size, side, lineId: null }),
    [garments, prints, garmentId, size, side],
  );
  return <SceneLayer {...rest} scene={scene} layers={withCloth ? undefined : PRINT} originPx={{ x: xPx, y: yPx }} />;
});

/** The list from before while it holds the very same things. */
function useSameList<Item>(list: readonly Item[]): readonly Item[] {
  const [before, setBefore] = useState(list);
  const isSame = before.length === list.length && list.every((item, index) => item === before[index]);
  if (!isSame) setBefore(list);
  return isSame ? before : list;
}
