'use client';

import type { KonvaEventObject } from 'konva/lib/Node';
import { useEffect, useState } from 'react';
import { Image, Layer, Path } from 'react-konva';
import { matrixParts } from '@/lib/domain/geometry/matrix';
import type { Point } from '@/lib/domain/geometry/point';
import type { GlyphsShape, ImageShape, LAYERS, PathShape, Scene, Shape } from '@/lib/domain/layout/scene';

type PrintPointer = (printId: string, event: KonvaEventObject<PointerEvent>) => void;

type SceneLayerProps = {
  scene: Pick<Scene, 'shapes'>;
  /** Only these layers of the scene are drawn; all where absent. */
  layers?: readonly (typeof LAYERS)[number][];
  /** How large a millimetre is drawn, px. */
  pxPerMm: number;
  /** Where the scene's origin lies on the stage, px. */
  originPx: Point;
  /** Address of a picture by its SHA-256. */
  href: (sha256: string) => string;
  /** A pointer went down on a print. Without it nothing here takes part in pointing. */
  onPrintPointerDown?: PrintPointer;
  /** A pointer came onto a print, or left it. */
  onPrintPointerEnter?: PrintPointer;
  onPrintPointerLeave?: PrintPointer;
};

/** A scene, or some of its layers, on the layout table: one layer of the stage, drawn in millimetres. */
export function SceneLayer({ scene, layers, pxPerMm, originPx, href, ...pointer }: SceneLayerProps) {
  const shapes = layers ? scene.shapes.filter(({ layer }) => layers.includes(layer)) : scene.shapes;
  const listening = pointer.onPrintPointerDown !== undefined;
  return (
    <Layer x={originPx.x} y={originPx.y} scaleX={pxPerMm} scaleY={pxPerMm} listening={listening}>
      {shapes.map((shape, index) =>
        shape.kind === 'image' ? (
          <PrintImage key={shape.printId} shape={shape} src={href(shape.sha256)} {...pointer} />
        ) : (
          // biome-ignore lint/suspicious/noArrayIndexKey: drawn shapes have no names; their order is what they are
          <DrawnPath key={index} shape={shape} />
        ),
      )}
    </Layer>
  );
}

function DrawnPath({ shape }: { shape: Exclude<Shape, ImageShape> }) {
  const stroke = shape.kind === 'path' ? shape.stroke : roundLetters(shape);
  return (
    <Path
      data={shape.d}
      fill={shape.fill}
      stroke={stroke?.hex}
      strokeWidth={stroke?.widthMm}
      dash={stroke?.dashMm}
      lineJoin="round"
      fillAfterStrokeEnabled={shape.kind === 'glyphs'}
      listening={false}
      perfectDrawEnabled={false}
    />
  );
}

/** The line round letters: half of it lies under their fill. */
function roundLetters({ outline }: GlyphsShape): PathShape['stroke'] {
  return outline && { hex: outline.hex, widthMm: 2 * outline.widthMm };
}

type PrintImageProps = { shape: ImageShape; src: string } & Pick<
  SceneLayerProps,
  'onPrintPointerDown' | 'onPrintPointerEnter' | 'onPrintPointerLeave'
>;

/** A print: the small picture stretched over the size of the art, set down by the scene's matrix. */
function PrintImage({ shape, src, onPrintPointerDown, onPrintPointerEnter, onPrintPointerLeave }: PrintImageProps) {
  const picture = usePicture(src);
  const { x, y, turnRad, scaleX, scaleY } = matrixParts(shape.matrix);
  const { printId } = shape;
  return (
    <Image
      id={printId}
      image={picture ?? undefined}
      width={shape.widthPx}
      height={shape.heightPx}
      x={x}
      y={y}
      rotation={(turnRad * 180) / Math.PI}
      scaleX={scaleX}
      scaleY={scaleY}
      perfectDrawEnabled={false}
      onPointerDown={onPrintPointerDown && ((event) => onPrintPointerDown(printId, event))}
      onPointerEnter={onPrintPointerEnter && ((event) => onPrintPointerEnter(printId, event))}
      onPointerLeave={onPrintPointerLeave && ((event) => onPrintPointerLeave(printId, event))}
    />
  );
}

/** The picture at an address once it has loaded; null until then, and where it cannot be. */
function usePicture(src: string): HTMLImageElement | null {
  const [loaded, setLoaded] = useState<{ src: string; picture: HTMLImageElement } | null>(null);
  useEffect(() => {
    const picture = new window.Image();
    picture.onload = () => setLoaded({ src, picture });
    picture.src = src;
    return () => {
      picture.onload = null;
    };
  }, [src]);
  return loaded?.src === src ? loaded.picture : null;
}
