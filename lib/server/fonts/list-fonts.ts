import type { FontChoices } from '@/lib/domain/lettering/font-choice';
import type { FontRef } from '@/lib/domain/lettering/lettering';
import type { MakerAccess } from '../auth/maker-access';
import { reader, write } from '../db/database';
import { offeredPackagedFonts, packagedFontsBehind } from './packaged-fonts';

/** A font of the shop's own that is offered for lettering. */
export type OwnFont = {
  readonly ref: FontRef;
  readonly fileName: string;
  /** What its own bits say: installable, editable or previewAndPrint. */
  readonly embedding: string;
  readonly createdAt: Date;
};

/** The fonts new lettering can be set in, the shop's own first, and those that stand behind them. */
export async function listFonts(maker: MakerAccess): Promise<FontChoices> {
  const own = await listOwnFonts(maker);
  return {
    offered: [
      ...own.map(({ ref }) => ({ ref, kind: 'own' as const })),
      ...offeredPackagedFonts().map(({ ref, kind }) => ({ ref, kind })),
    ],
    behind: packagedFontsBehind().map(({ ref }) => ref),
  };
}

/** The shop's own fonts by their names. */
export async function listOwnFonts(_maker: MakerAccess): Promise<OwnFont[]> {
  const rows = await reader().shopFont.findMany({
    select: { sha256: true, fileName: true, embedding: true, createdAt: true, font: true },
  });
  return rows
    .map(({ sha256, fileName, embedding, createdAt, font }) => ({
      ref: { sha256, family: font.family, style: font.style },
      fileName,
      embedding,
      createdAt,
    }))
    .sort((one, other) => nameOf(one.ref).localeCompare(nameOf(other.ref), 'en'));
}

/** Stops offering a font of the shop's own. Its file is kept for what was set in it. */
export async function withdrawFont(_maker: MakerAccess, sha256: string): Promise<{ ok: boolean }> {
  const { count } = await write((tx) => tx.shopFont.deleteMany({ where: { sha256 } }));
  return { ok: count > 0 };
}

function nameOf({ family, style }: FontRef): string {
  return `${family} ${style}`;
}
