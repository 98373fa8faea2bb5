import { chromium } from '@playwright/test';
import type { ArtFacts } from '@/lib/domain/art/art-facts';
import { factsOfPixels } from '@/lib/domain/art/check/facts-of-pixels';
import { artFindings } from '@/lib/domain/art/findings/art-findings';
import { inkOfPixels } from '@/lib/domain/art/ink';
import { roundUm } from '@/lib/domain/measure/length';
import { chromiumArguments, findChromium } from '../browser/fixtures/chromium';
import { type DrawnPixels, drawnPixels, readyToDraw } from './art-truth/drawn-in-page';
import { picturesOf } from './art-truth/pictures-of';
import { count, emptyTally, sharesOf } from './art-truth/score';
import type { TruthPicture } from './art-truth/truth-picture';
import { printResult } from './measure';

// How right the art check is: pictures with known faults, and near misses that must not be found, drawn by a browser's
// canvas, which is no part of the check. One half comes from a seed that the check's thresholds were tuned against, the
// other from one that they were not. Only pixels go in, as they come out of a decoder; a finding counts as right when it
// was drawn, whatever its number, except that strokes and gaps are also held to their drawn width.

const SEEDS = { tuned: 20_261, untouched: 15_485_863 } as const;
function checked({ rgba, widthPx, heightPx }: DrawnPixels, picture: TruthPicture) {
  const ink = inkOfPixels(rgba, widthPx, heightPx);
  if (!ink) throw new Error(`${picture.family}: nothing was drawn`);
  const facts = factsOfPixels({ rgba, widthPx, heightPx }, ink);
  const widthUm = roundUm(ink.inkBox.width * picture.umPerPx);
  const notes = ink.anyClear ? [] : (['noTransparency'] as const);
  const findings = artFindings(facts, notes, { widthUm, cloths: picture.cloths });
  return { facts, found: new Set(findings.map(({ code }) => code)) };
}

function pxOff({ strokes, gaps }: ArtFacts, { strokePx, gapPx }: TruthPicture): number {
  const off = (measured: number | null, drawn: number | undefined) =>
    drawn === undefined ? 0 : Math.abs((measured ?? 0) - drawn);
  return Math.max(off(strokes.thinnestPx, strokePx), off(gaps.thinnestPx, gapPx));
}

const browser = await chromium.launch({ executablePath: findChromium(), args: chromiumArguments });
const tally = emptyTally();
let pictures = 0;
let worstPx = 0;
try {
  const page = await browser.newPage();
  await readyToDraw(page);
  for (const [half, seed] of Object.entries(SEEDS)) {
    const own = emptyTally();
    for (const [index, picture] of picturesOf(seed).entries()) {
      const { facts, found } = checked(await drawnPixels(page, picture.drawing), picture);
      const off = pxOff(facts, picture);
      worstPx = Math.max(worstPx, off);
      pictures += 1;
      count(tally, picture, found);
      const wrongs = [...count(own, picture, found), ...(off > 1 ? [`${off.toFixed(2)} px off`] : [])];
      if (wrongs.length > 0) process.stderr.write(`${half} ${index} ${picture.family}: ${wrongs.join(', ')}\n`);
    }
    process.stderr.write(`${half}: ${JSON.stringify(sharesOf(own))}\n`);
  }
} finally {
  await browser.close();
}
process.stderr.write(`${pictures} pictures\n`);
printResult('art-truth', { ...sharesOf(tally), stroke_px_worst: worstPx });
