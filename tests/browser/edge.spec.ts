import { expect, test } from './fixtures/shop';

/** Whether React has taken over the server's markup: it leaves its own properties on the elements it runs. */
const isHydrated = () => Object.keys(document.querySelector('a') ?? {}).some((key) => key.startsWith('__react'));

test('a page comes alive under its content policy', async ({ page }) => {
  const response = await page.goto('/there-is-no-such-page');
  expect(response?.status()).toBe(404);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('There is no page here');
  await expect.poll(() => page.evaluate(isHydrated)).toBe(true);
});

test('the nonce is another one each time, and the page carries it', async ({ page }) => {
  const nonces = new Set<string>();
  for (let visit = 0; visit < 3; visit += 1) {
    const response = await page.goto('/there-is-no-such-page');
    const policy = response?.headers()['content-security-policy'] ?? '';
    const nonce = /script-src [^;]*'nonce-([^']+)'/.exec(policy)?.[1] ?? '';
    expect(nonce.length).toBeGreaterThanOrEqual(22);
    expect(await page.evaluate(() => document.querySelector('script')?.nonce)).toBe(nonce);
    nonces.add(nonce);
  }
  expect(nonces.size).toBe(3);
});

test('script and style that got into a page do nothing', async ({ browser, shop }) => {
  const page = await browser.newPage();
  await page.goto(`${shop.url}/there-is-no-such-page`);
  const broken = await page.evaluate(async () => {
    const expected = new Set(['script-src-attr', 'style-src-attr']);
    const allRefused = new Promise<void>((resolve) => {
      document.addEventListener('securitypolicyviolation', (event) => {
        expected.delete(event.effectiveDirective);
        if (expected.size === 0) resolve();
      });
    });
    const place = document.createElement('div');
    document.body.append(place);
    place.innerHTML = '<img src="data:," onerror="document.title = `taken over`"><p style="position: fixed">x</p>';
    await allRefused;
    const styled = place.querySelector('p');
    return { title: document.title, position: styled && getComputedStyle(styled).position };
  });
  expect(broken.title).not.toContain('taken over');
  expect(broken.position).toBe('static');
  await page.close();
});

test('the customer’s side is neither kept, indexed nor passed on', async ({ request }) => {
  const headers = (await request.get('/proof/not-a-link')).headers();
  expect(headers['cache-control']).toContain('no-store');
  expect(headers['x-robots-tag']).toContain('noindex');
  expect(headers['referrer-policy']).toBe('same-origin');
  expect(headers['content-security-policy']).not.toContain('wasm');
});

test('every answer says as little as it can about the server', async ({ request }) => {
  for (const path of ['/there-is-no-such-page', '/icon.svg', '/api/art/none', '/proof/not-a-link']) {
    const headers = (await request.get(path)).headers();
    expect([path, headers['x-powered-by'], headers['x-content-type-options']]).toEqual([path, undefined, 'nosniff']);
    expect(headers['x-frame-options']).toBe('DENY');
  }
});

test('raw responses may run nothing at all', async ({ request }) => {
  const headers = (await request.get('/api/art/none')).headers();
  expect(headers['content-security-policy']).toMatch(/^default-src 'none'/);
});
