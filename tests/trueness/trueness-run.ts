import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { closeEverything } from '@/lib/server/edge/on-shutdown';
import { generateLayout } from './generated-layout';
import { drawKnownArt, type KnownArt } from './known-art';
import { measureTrueness, type Trueness, worse } from './measure-trueness';
import { seededRandom } from './seeded-random';
import { openSurfaces } from './surfaces';

export type TruenessRun = { readonly layouts: number; readonly prints: number; readonly worst: Trueness };

/** Generates layouts from one seed, draws each everywhere, and says how far anything was from its place at worst. */
export async function runTrueness(options: {
  readonly layouts: number;
  readonly art: number;
  readonly seed: number;
}): Promise<TruenessRun> {
  const folder = mkdtempSync(join(tmpdir(), 'yokemark-trueness-'));
  process.env.FILES_DIR = join(folder, 'files');
  const random = seededRandom(options.seed);
  const surfaces = await openSurfaces();
  try {
    const art: KnownArt[] = [];
    for (let index = 0; index < options.art; index += 1) {
      art.push(await drawKnownArt(random, (index % 3) as 0 | 1 | 2, `art-${index}`, folder));
    }
    let worst: Trueness = { svgMm: 0, konvaMm: 0, pngPx: 0 };
    let prints = 0;
    for (let index = 0; index < options.layouts; index += 1) {
      const generated = generateLayout(random, art);
      prints += generated.prints.length;
      worst = worse(worst, await measureTrueness(generated, surfaces));
    }
    return { layouts: options.layouts, prints, worst };
  } finally {
    await surfaces.close();
    await closeEverything();
    rmSync(folder, { recursive: true, force: true });
  }
}
