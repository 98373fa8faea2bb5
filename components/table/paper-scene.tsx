import { memo, useMemo } from 'react';
import { Stage } from 'react-konva';
import { clothColours } from '@/lib/domain/garment/cloth-colours';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { composeScene, type Scene } from '@/lib/domain/layout/scene';
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

const CLOTH = ['cloth'] as const;
const PRINT = ['print'] as const;

/** The garment that lies on the paper, its prints and the tapes on it: pictures only, nothing here is asked where it is. */
export function PaperScene({ layout, selection, tapes, unit, viewport, widthPx, heightPx, href }: PaperSceneProps) {
  const { garmentId, size, side } = selection;
  const { garments, prints } = layout;
  const cloth = useMemo(
    () => composeScene({ garments, prints: [] }, { garmentId, size, side, lineId: null }),
    [garments, garmentId, size, side],
  );
  const scene = useMemo(
    () => composeScene({ garments, prints }, { garmentId, size, side, lineId: null }),
    [garments, prints, garmentId, size, side],
  );
  const hex = garments.find((garment) => garment.garmentId === garmentId)?.cloth.hex ?? '#FFFFFF';
  const laid = useMemo(() => {
    const leaderHex = clothColours(hex).seam;
    return { shapes: tapes.flatMap((tape) => tapeShapes(tape, unit, leaderHex)) };
  }, [tapes, unit, hex]);
  const { pxPerMm, xPx, yPx } = viewport;
  return (
    <Stage width={widthPx} height={heightPx} listening={false}>
      <StillLayer scene={cloth} layers={CLOTH} pxPerMm={pxPerMm} xPx={xPx} yPx={yPx} href={href} />
      <SceneLayer scene={scene} layers={PRINT} pxPerMm={pxPerMm} originPx={{ x: xPx, y: yPx }} href={href} />
      <SceneLayer scene={laid} pxPerMm={pxPerMm} originPx={{ x: xPx, y: yPx }} href={href} />
    </Stage>
  );
}

type StillLayerProps = {
  scene: Scene;
  layers: typeof CLOTH;
  pxPerMm: number;
  xPx: number;
  yPx: number;
  href: (sha256: string) => string;
};

/** A layer that a drag leaves alone, so that it is not gone through again at each move. */
const StillLayer = memo(function StillLayer({ xPx, yPx, ...rest }: StillLayerProps) {
  return <SceneLayer {...rest} originPx={{ x: xPx, y: yPx }} />;
});
