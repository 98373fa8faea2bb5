import { expect, test } from './fixtures/shop';

const NOBODY = '01890000-0000-7000-8000-000000000000';
const SHA = '0'.repeat(64);

const pages = [
  '/jobs',
  '/jobs/new',
  `/jobs/${NOBODY}`,
  `/jobs/${NOBODY}/edit`,
  `/jobs/${NOBODY}/table`,
  `/jobs/${NOBODY}/send`,
  `/jobs/${NOBODY}/revisions/1`,
  `/jobs/${NOBODY}/revisions/1/specification`,
];

const files = [
  `/api/art/${SHA}/proxy.webp`,
  `/api/revisions/${NOBODY}/envelope.json`,
  `/api/revisions/${NOBODY}/picture.png`,
  `/api/revisions/${NOBODY}/picture/${SHA}.webp`,
  `/api/revisions/${NOBODY}/print/${NOBODY}/${NOBODY}.png`,
];

test.describe('a stranger', () => {
  for (const path of pages) {
    test(`is led to the door from ${path.replaceAll(NOBODY, 'ID')}`, async ({ page }) => {
      await page.goto(path);
      await expect(page).toHaveURL(/\/(set-up|sign-in)$/);
    });
  }

  test('gets no file, and cannot leave one', async ({ request }) => {
    for (const path of files) expect((await request.get(path)).status(), path).toBe(401);
    const left = await request.post(`/api/art/upload?job=${NOBODY}&name=a.png`, { data: Buffer.from('anything') });
    expect(left.status()).toBe(401);
  });
});
