import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import sharp from 'sharp';
import { chromiumArguments, findChromium } from '../fixtures/chromium';
import { startServer } from '../fixtures/server';
import { phone } from '../fixtures/shop';
import { Door } from '../pages/door';
import { RevisionPages } from '../pages/revision-pages';

// npm run pictures: makes the README's pictures from a shop that has the demo, as its users would see it.

const folder = join('docs', 'pictures');
const laptop = { width: 1440, height: 900 };

async function keep(page: Page, name: string, height?: number): Promise<void> {
  await page.waitForLoadState('networkidle');
  const png = await page.screenshot(
    height ? { clip: { x: 0, y: 0, width: page.viewportSize()?.width ?? 0, height } } : {},
  );
  await sharp(png)
    .png({ palette: true, quality: 90 })
    .toFile(join(folder, `${name}.png`));
}

const shop = await startServer({ demo: true });
const browser = await chromium.launch({ executablePath: findChromium(), args: chromiumArguments });
mkdirSync(folder, { recursive: true });

const bench = await browser.newPage({ viewport: laptop, locale: 'en-US', timezoneId: 'America/New_York' });
await bench.goto(shop.url);
await new Door(bench).setUp({
  code: shop.setUpCode(),
  shopName: 'Otterbank Press',
  unit: 'Inches',
  timeZone: 'America/New_York',
  currency: 'USD',
  ownerName: 'Robin Teal',
  email: 'robin@otterbank.example.org',
  password: 'heron wading at dusk',
});
await bench.getByRole('link', { name: /Autumn relay shirts/ }).waitFor();
await keep(bench, 'bench', 560);

await bench.getByRole('link', { name: /Autumn relay shirts/ }).click();
await bench.getByRole('heading', { name: 'Garments' }).waitFor();
await keep(bench, 'job');
await bench.getByRole('link', { name: 'Layout table' }).click();
await bench.getByRole('region', { name: 'Add a picture' }).waitFor();
await keep(bench, 'table');

await bench.goBack();
await bench.getByRole('link', { name: /See Rev 2/ }).click();
const link = await new RevisionPages(bench).customerLink();
const customer = await browser.newPage(phone);
await customer.goto(link);
await customer
  .getByText('See it on your own size')
  .first()
  .evaluate((element) => element.scrollIntoView());
await keep(customer, 'proof');

await bench.goto(`${shop.url}/jobs`);
await bench.getByRole('link', { name: /Coxes/ }).click();
await bench.getByRole('link', { name: 'Open the specification' }).click();
await bench.getByText('Before you press').waitFor();
await keep(bench, 'specification');

await browser.close();
await shop.remove();
