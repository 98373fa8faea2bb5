import AxeBuilder from '@axe-core/playwright';
import type { Browser, Page } from '@playwright/test';
import { ownShop } from './fixtures/own-shop';
import { expect, phone, test, watchPage } from './fixtures/shop';
import { ArtLinkPage } from './pages/art-link-page';

const own = ownShop();

const svg = (inside: string) =>
  Buffer.from(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 100">${inside}</svg>`);
const LIVE_TEXT = {
  name: 'club.svg',
  mimeType: 'image/svg+xml',
  buffer: svg(
    '<rect width="150" height="90" fill="#f4c430"/><text x="20" y="60">Otterbank</text><script>alert(1)</script>',
  ),
};
const NOTE = { name: 'note.png', mimeType: 'image/png', buffer: Buffer.from('Dear shop, the logo is on our website.') };
/** Pictures are unpacked and measured meanwhile, which takes its time on a busy machine. */
const UNTIL_READ = { timeout: 60_000 };
const CREST = 'prisma/demo/heron-crest.png';
const ON_WHITE = 'prisma/demo/heron-crest-on-white.jpg';

async function onPhone(browser: Browser, scripts: boolean, use: (art: ArtLinkPage, page: Page) => Promise<void>) {
  const context = await browser.newContext({ ...phone, javaScriptEnabled: scripts });
  const page = await context.newPage();
  const seen = watchPage(page);
  await use(new ArtLinkPage(page), page);
  expect(seen).toEqual([]);
  await context.close();
}

/** Signs the owner in and makes the link on a job's page. */
async function madeLink(page: Page, jobId: string): Promise<string> {
  await own.signIn(page);
  await page.goto(`${own.server.url}/jobs/${jobId}`);
  await page.getByText('Let the customer send art', { exact: true }).click();
  await page.getByRole('button', { name: 'Make the link' }).click();
  return page.getByLabel(/^Link for .* to send pictures$/).inputValue();
}

test('a customer sends pictures from a phone and is told at once what will become of them', async ({
  page,
  browser,
}) => {
  const { jobId } = own.side.layOut();
  const link = await madeLink(page, jobId);
  await onPhone(browser, true, async (art, customer) => {
    await art.open(link);
    await expect(customer.getByRole('heading', { level: 1 })).toHaveText('Send us your picture');
    await art.choose(ON_WHITE);
    await expect(art.sent('heron-crest-on-white.jpg')).toContainText('white background', UNTIL_READ);
    await art.choose(CREST);
    await expect(art.sent('heron-crest.png')).toBeVisible(UNTIL_READ);
    await art.choose(LIVE_TEXT);
    await expect(art.sent('club.svg')).toContainText('live text', UNTIL_READ);
    await art.choose(NOTE);
    await expect(customer.getByRole('main').getByRole('alert')).toContainText('This file is not a picture');
    await expect(customer.getByRole('article')).toHaveCount(3);
    const shown = art.sent('heron-crest.png').getByRole('img');
    await expect.poll(() => shown.evaluate((image) => (image as HTMLImageElement).naturalWidth)).toBeGreaterThan(500);

    const { violations } = await new AxeBuilder({ page: customer })
      .withTags(['wcag2a', 'wcag2aa', 'wcag22aa'])
      .analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
    const beside = await customer.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(beside).toBe(0);
  });

  await page.reload();
  await expect(page.getByRole('heading', { name: 'heron-crest-on-white.jpg' })).toBeVisible();
  await expect(page.getByText('A picture came from the customer').first()).toBeAttached();
  await page.getByRole('button', { name: 'Take the link back' }).click();
  await expect(page.getByText('Link for sending art taken back')).toBeAttached();
  await page.getByText('Let the customer send art', { exact: true }).click();
  await expect(page.getByRole('button', { name: 'Make the link' })).toBeVisible();
  await onPhone(browser, true, async (art, customer) => {
    await art.open(link);
    await expect(customer.getByRole('heading', { level: 1 })).toHaveText('This link does not open anything');
  });
});

test('a customer without scripts sends a picture by a plain form', async ({ page, browser }) => {
  const { jobId } = own.side.layOut();
  const link = await madeLink(page, jobId);
  await onPhone(browser, false, async (art, customer) => {
    await art.open(link);
    await art.choose(NOTE);
    await art.handOver();
    await expect(customer.getByRole('main').getByRole('alert')).toContainText('This file is not a picture');
    await art.choose(ON_WHITE);
    await art.handOver();
    await expect(art.sent('heron-crest-on-white.jpg')).toContainText('white background', UNTIL_READ);
  });
});

test('a link to send art opens no proof sheet, and another page cannot send with it', async ({ page, request }) => {
  const { jobId } = own.side.layOut();
  const link = await madeLink(page, jobId);
  expect((await request.get(link.replace('/art/', '/proof/'))).status()).toBe(404);
  const api = link.replace('/art/', '/api/art/customer/');
  const foreign = await request.post(`${api}?name=a.png`, {
    headers: { 'sec-fetch-site': 'cross-site' },
    data: NOTE.buffer,
  });
  expect(foreign.status()).toBe(403);
  const wrong = await request.post(`${api.slice(0, -1)}?name=a.png`, { data: NOTE.buffer });
  expect(wrong.status()).toBe(404);
});
