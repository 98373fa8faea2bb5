import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { FontRef } from '@/lib/domain/lettering/lettering';
import { readPackagedFont } from '../text/font-file';
import { FONTS_BEHIND, OFFERED_FONTS, type ShippedFont } from './shipped-fonts';

/** A shipped font with its file. */
export type PackagedFont = ShippedFont & { readonly ref: FontRef; readonly bytes: Uint8Array };

const read = new Map<string, PackagedFont>();

/** The fonts offered for lettering that come with the app, in the order they are shown. */
export function offeredPackagedFonts(): PackagedFont[] {
  return OFFERED_FONTS.map(packaged);
}

/** The fonts that stand behind every other for letters it lacks, in their order. */
export function packagedFontsBehind(): PackagedFont[] {
  return FONTS_BEHIND.map(packaged);
}

/** The shipped font with this SHA-256; null where none of this version of the app has it. */
export function packagedFont(sha256: string): PackagedFont | null {
  return [...offeredPackagedFonts(), ...packagedFontsBehind()].find(({ ref }) => ref.sha256 === sha256) ?? null;
}

/** The text of a shipped font's licence; null where no font of this version of the app has the SHA-256. */
export function packagedLicence(sha256: string): string | null {
  const path = packagedFont(sha256)?.licencePath;
  if (path === undefined) return null;
  const isInPackage = path.startsWith('@');
  return new TextDecoder().decode(isInPackage ? readPackagedFont(path) : readFileSync(path));
}

function packaged(font: ShippedFont): PackagedFont {
  const before = read.get(font.path);
  if (before) return before;
  const bytes = readPackagedFont(font.path);
  const sha256 = createHash('sha256').update(bytes).digest('hex');
  const opened = { ...font, bytes, ref: { sha256, family: font.family, style: font.style } };
  read.set(font.path, opened);
  return opened;
}
