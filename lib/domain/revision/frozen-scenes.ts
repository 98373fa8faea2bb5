import { clothColours } from '../garment/cloth-colours';
import { sidesOf } from '../garment/kinds';
import { type Box, boxAroundBoxes, grownBox } from '../geometry/box';
import type { Garment, LayoutDocument } from '../layout/document';
import {
  commonBox,
  composeScene,
  flatOf,
  placedPrint,
  printsOn,
  type Scene,
  type SceneKey,
  shownSides,
} from '../layout/scene';
import { garmentOf, keyOf, sizeOf, sizesToShow } from '../layout/sizes';
import { type OutlineText, tapeScale, tapesFor } from '../layout/tape';
import { laidTapes } from '../layout/tape-labels';
import type { SetType, TypeCase } from '../layout/type-case';
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

/**
 * Every drawing a revision shows: each garment, each size ordered, each side it shows, its tapes laid on. Lettering needs
 * the type it is set in.
 */
export function frozenScenes(
  layout: LayoutDocument,
  unit: LengthUnit,
  outlineText: OutlineText,
  type?: TypeCase | null,
): FrozenScene[] {
  return layout.garments
    .flatMap((garment) => sceneKeys(layout, garment))
    .map((key) => {
      const scene = sceneWithTapes(layout, key, unit, outlineText, type?.of(key.lineId));
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
  setType?: SetType,
): Scene {
  const scene = composeScene(layout, key, setType);
  const garment = garmentOf(layout, key.garmentId);
  const { blank, size } = sizeOf(garment, key.size);
  const flat = flatOf(blank.kind, size, key.side);
  const prints = printsOn(layout, key);
  const scale = tapeScale(shownBox(layout, garment));
  const { shapes, boxes } = laidTapes(
    prints.flatMap((print) => tapesFor(print, key.size, flat, { scale, setType })),
    {
      unit,
      leaderHex: clothColours(garment.cloth.hex).seam,
      outlineText,
      inkBoxes: prints.map((print) => placedPrint(print, key.size, flat, setType).inkBox),
      frame: grownBox(scene.box, BESIDE_MM * scale),
    },
  );
  return { ...scene, box: boxAroundBoxes([scene.box, ...boxes]), shapes: [...scene.shapes, ...shapes] };
}

/** How far beside a garment a reading may stand, mm where tapes are drawn full size. */
const BESIDE_MM = 60;

/** What the pictures of a garment have to show, all at one scale: its tapes are drawn to be read on them. */
function shownBox(layout: Pick<LayoutDocument, 'prints'>, garment: Garment): Box {
  const boxes = sizesToShow(garment).flatMap(({ blank, size }) =>
    shownSides(layout, garment.garmentId, blank.kind).map((side) => ({ box: flatOf(blank.kind, size, side).box })),
  );
  return commonBox(boxes, 0);
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
