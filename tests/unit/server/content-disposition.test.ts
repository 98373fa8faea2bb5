import { describe, expect, it } from 'vitest';
import { contentDisposition } from '@/lib/server/edge/content-disposition';

describe('a file’s Content-Disposition', () => {
  // RFC 6266, section 5 (from memory): filename="EURO rates"; filename*=utf-8''%e2%82%ac%20rates
  it('gives the name twice, in ASCII and in full', () => {
    expect(contentDisposition('attachment', '€ rates.png')).toBe(
      `attachment; filename="_ rates.png"; filename*=UTF-8''%E2%82%AC%20rates.png`,
    );
  });

  it.each(['Coxes’ tees Rev 1.png', 'a"b\\c%d.png', "it's (1)*.json", 'Łódź – Nguyễn.png', 'a\r\nSet-Cookie: b=c.png'])(
    'keeps %j on one line, in quotes that hold, and gives it back whole',
    (name) => {
      const header = contentDisposition('inline', name);
      expect(header).toMatch(/^inline; filename="[^"\\\r\n]*"; filename\*=UTF-8''[A-Za-z0-9%._~!-]+$/);
      expect(decodeURIComponent(header.split("UTF-8''")[1] ?? '')).toBe(name);
    },
  );
});
