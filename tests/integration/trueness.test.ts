import { expect, it } from 'vitest';
import { worstMm } from '../trueness/measure-trueness';
import { runTrueness } from '../trueness/trueness-run';

/** The bench of the same name does this for 200 layouts. */
it('draws every surface within 0.1 mm of the document, and the print file within 1 px', {
  timeout: 180_000,
}, async () => {
  const { prints, worst } = await runTrueness({ layouts: 8, art: 9, seed: 7 });
  expect(prints).toBeGreaterThanOrEqual(8);
  expect(worst.pngPx).toBeLessThanOrEqual(1);
  expect(worstMm(worst)).toBeLessThanOrEqual(0.1);
});
