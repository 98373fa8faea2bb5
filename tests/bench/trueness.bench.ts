import { worstMm } from '../trueness/measure-trueness';
import { runTrueness } from '../trueness/trueness-run';
import { printResult } from './measure';

// How true the surfaces are: 200 layouts made by chance, each drawn as a page, as the layout table and as a print file,
// and measured there by Chromium, Konva and sharp. At most 0.1 mm from where the document's readings say.

const { layouts, prints, worst } = await runTrueness({ layouts: 200, art: 45, seed: 20_261_003 });

printResult('trueness', {
  layouts,
  prints,
  worst_mm: worstMm(worst),
  worst_png_px: worst.pngPx,
  worst_svg_mm: worst.svgMm,
  worst_konva_mm: worst.konvaMm,
});
