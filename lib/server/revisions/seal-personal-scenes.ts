import { randomBytes } from 'node:crypto';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { type Scene, sceneSchema } from '@/lib/domain/layout/scene';
import type { TypeCase } from '@/lib/domain/layout/type-case';
import { type PersonalScene, personalScenes } from '@/lib/domain/revision/personal-scenes';
import { reader } from '../db/database';
import { newId } from '../db/new-id';
import type { Transaction } from '../db/open-database';

/** Length of a drawing's salt; as long as the hash it goes into (FIPS 180-4, SHA-256). */
const SALT_BYTES = 32;

/** As many rows as are written in one statement: a drawing of a garment has some kB. */
const ROWS_AT_ONCE = 100;

/** The drawings of a layout that differ by person, each under a salt of its own. */
export function sealPersonalScenes(layout: LayoutDocument, type: TypeCase | null): PersonalScene[] {
  return personalScenes(layout, type, () => randomBytes(SALT_BYTES).toString('hex'));
}

/** Keeps them beside their revision: which drawing belongs where for good, the drawings themselves until they are erased. */
export async function storePersonalScenes(
  tx: Transaction,
  revisionId: string,
  scenes: readonly PersonalScene[],
): Promise<void> {
  for (let first = 0; first < scenes.length; first += ROWS_AT_ONCE) {
    const some = scenes.slice(first, first + ROWS_AT_ONCE).map((scene) => ({ sceneId: newId(), ...scene }));
    await tx.revisionScene.createMany({
      data: some.map(({ sceneId, key, sha256 }) => ({
        id: sceneId,
        revisionId,
        garment: key.garmentId,
        blank: key.size.blankId,
        size: key.size.sizeId,
        side: key.side,
        line: key.lineId,
        hash: sha256,
      })),
    });
    await tx.personalDrawing.createMany({
      data: some.map(({ sceneId, scene, bytes }) => ({
        sceneId,
        salt: Uint8Array.from(Buffer.from(scene.salt ?? '', 'hex')),
        bytes: Uint8Array.from(bytes),
      })),
    });
  }
}

/** A drawing of what one person of a revision gets, by its hash; null when there is none, and once it was erased. */
export async function sealedPersonalScene(revisionId: string, sha256: string): Promise<Scene | null> {
  const shown = await reader().revisionScene.findFirst({
    where: { revisionId, hash: sha256, line: { not: '' } },
    select: { personal: { select: { bytes: true } } },
  });
  return shown?.personal ? sceneSchema.parse(JSON.parse(new TextDecoder().decode(shown.personal.bytes))) : null;
}

/** The hashes of a revision's drawings that differ by person and were not erased, in the order of the list. */
export async function personalSceneHashes(revisionId: string): Promise<string[]> {
  const rows = await reader().revisionScene.findMany({
    where: { revisionId, line: { not: '' }, personal: { isNot: null } },
    orderBy: { id: 'asc' },
    select: { hash: true },
  });
  return rows.map(({ hash }) => hash);
}
