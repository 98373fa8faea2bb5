import { clothColours } from '../garment/cloth-colours';
import { sidesOf } from '../garment/kinds';
import type { Garment, LayoutDocument } from '../layout/document';
import { composeScene, flatOf, printsOn, type Scene, type SceneKey, shownSides } from '../layout/scene';
import { garmentOf, keyOf, sizeOf, sizesToShow } from '../layout/sizes';
import { type OutlineText, tapeShapes, tapesFor } from '../layout/tape';
import type { LengthUnit } from '../measure/length';
import { canonicalBytes, type JsonValue, sha256Hex } from './canonical';

/** The text form of a scene's key, as envelopes and picture addresses name it. */
export function sceneKeyText({ garmentId, size, side, lineId }: SceneKey): string {
  return [garmentId, size.blankId, size.sizeId, side, lineId ?? '-'].join('/');
}

/** A scene as a revision keeps it: canonical bytes and their hash. */
export type FrozenScene = {
  readonly key: SceneKey;
  readonly keyText: string;
  readonly scene: Scene;
  readonly bytes: Uint8Array;
  readonly sha256: string;
};

/** The layout with the flats of every size drawn and kept, so that nothing about the garment is ever computed again. */
export function withFrozenFlats(layout: LayoutDocument): LayoutDocument {
  return {
    ...layout,
    garments: layout.garments.map((garment) => ({
      ...garment,
      blanks: garment.blanks.map((blank) => ({
        ...blank,
        sizes: blank.sizes.map((size) => ({
          ...size,
          flats: sidesOf(blank.kind).map((side) => flatOf(blank.kind, size, side)),
        })),
      })),
    })),
  };
}

/** Every drawing a revision shows: each garment, each size ordered, each side it shows, its tapes laid on. */
export function frozenScenes(layout: LayoutDocument, unit: LengthUnit, outlineText: OutlineText): FrozenScene[] {
  return layout.garments
    .flatMap((garment) => sceneKeys(layout, garment))
    .map((key) => {
      const scene = sceneWithTapes(layout, key, unit, outlineText);
      const bytes = canonicalBytes(scene as unknown as JsonValue);
      return { key, keyText: sceneKeyText(key), scene, bytes, sha256: sha256Hex(bytes) };
    });
}

/** A scene with the tapes that show its readings laid over it. */
export function sceneWithTapes(
  layout: Pick<LayoutDocument, 'garments' | 'prints'>,
  key: SceneKey,
  unit: LengthUnit,
  outlineText: OutlineText,
): Scene {
  const scene = composeScene(layout, key);
  const garment = garmentOf(layout, key.garmentId);
  const { blank, size } = sizeOf(garment, key.size);
  const flat = flatOf(blank.kind, size, key.side);
  const leaderHex = clothColours(garment.cloth.hex).seam;
  const tapes = printsOn(layout, key).flatMap((print) => tapesFor(print, key.size, flat));
  return {
    ...scene,
    shapes: [...scene.shapes, ...tapes.flatMap((tape) => tapeShapes(tape, unit, leaderHex, outlineText))],
  };
}

function sceneKeys(layout: LayoutDocument, garment: Garment): SceneKey[] {
  return sizesToShow(garment).flatMap((offered) =>
    shownSides(layout, garment.garmentId, offered.blank.kind).map((side) => ({
      garmentId: garment.garmentId,
      size: keyOf(offered),
      side,
      lineId: null,
    })),
  );
}
