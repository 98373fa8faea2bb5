import jsQR from 'jsqr';
import { describe, expect, it } from 'vitest';
import { qrCode } from '@/lib/server/qr/qr-code';

const PX_A_MODULE = 4;

/** Paints the code's path, which is made of rectangles `Mx yhwv1h-wz`, into pixels as a camera would see them. */
function painted({ size, d }: { size: number; d: string }): { data: Uint8ClampedArray; sidePx: number } {
  const sidePx = size * PX_A_MODULE;
  const data = new Uint8ClampedArray(sidePx * sidePx * 4).fill(255);
  for (const [, x, y, width] of d.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)) {
    for (let row = Number(y) * PX_A_MODULE; row < (Number(y) + 1) * PX_A_MODULE; row += 1) {
      const from = (row * sidePx + Number(x) * PX_A_MODULE) * 4;
      for (let at = 0; at < Number(width) * PX_A_MODULE; at += 1) data.set([0, 0, 0, 255], from + at * 4);
    }
  }
  return { data, sidePx };
}

// Read back by jsQR, a decoder that is not ours.
describe('a QR code', () => {
  it.each([
    'http://localhost:3000/proof/AaISf8n5d2qHTFm5LAPnwAAAAQGvHUXlQh7PZydOhVP_Tz-l',
    `https://proofs.example.org/proof/${'x'.repeat(48)}?and=more`,
    'a',
  ])('says %s to a reader', (text) => {
    const { data, sidePx } = painted(qrCode(text));
    expect(jsQR(data, sidePx, sidePx)?.data).toBe(text);
  });

  it('keeps a quiet zone of four modules on every side', () => {
    const { size, d } = qrCode('quiet');
    const runs = [...d.matchAll(/M(\d+) (\d+)h(\d+)/g)].map(([, x, y, width]) => [Number(x), Number(y), Number(width)]);
    const left = Math.min(...runs.map(([x = 0]) => x));
    const right = Math.max(...runs.map(([x = 0, , width = 0]) => x + width));
    const bottom = Math.max(...runs.map(([, y = 0]) => y + 1));
    expect([left, Math.min(...runs.map(([, y = 0]) => y)), size - right, size - bottom]).toEqual([4, 4, 4, 4]);
  });
});
