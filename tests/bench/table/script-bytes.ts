import { gzipSync } from 'node:zlib';
import type { BrowserContext } from '@playwright/test';

/** Kilobytes (1000 bytes) of JavaScript that a route loads into a browser that was never there, each file gzipped. */
export async function scriptKilobytes(context: BrowserContext, url: string): Promise<number> {
  const page = await context.newPage();
  const sizes: Promise<number>[] = [];
  page.on('response', (response) => {
    if (response.request().resourceType() === 'script')
      sizes.push(response.body().then((body) => gzipSync(body).length));
  });
  const response = await page.goto(url, { waitUntil: 'networkidle' });
  if (!response?.ok()) throw new Error(`${url} answered ${response?.status()}`);
  const bytes = (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0);
  await page.close();
  return Math.round(bytes / 100) / 10;
}
