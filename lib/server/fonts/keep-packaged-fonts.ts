import { reader, write } from '../db/database';
import { storeFile } from '../files/store';
import { offeredPackagedFonts, packagedFontsBehind } from './packaged-fonts';
import { addFont } from './receive-font';

/**
 * Puts the fonts of this version of the app among the shop's kept files. What was set in one can then be set again after
 * a later version has come with another drawing of it.
 */
export async function keepPackagedFonts(): Promise<void> {
  const shipped = [...offeredPackagedFonts(), ...packagedFontsBehind()];
  const sha256s = shipped.map(({ ref }) => ref.sha256);
  const rows = await reader().font.findMany({ where: { sha256: { in: sha256s } }, select: { sha256: true } });
  const kept = new Set(rows.map(({ sha256 }) => sha256));
  for (const { ref, bytes } of shipped) {
    if (kept.has(ref.sha256)) continue;
    const file = await storeFile(bytes);
    await write((tx) => addFont(tx, file, ref, 'shipped'));
    kept.add(ref.sha256);
  }
}
