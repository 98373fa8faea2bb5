import AxeBuilder from '@axe-core/playwright';
import type { Browser, BrowserContextOptions, Page } from '@playwright/test';
import { ownShop } from './fixtures/own-shop';
import { startServer } from './fixtures/server';
import { expect, phone, test, watchPage } from './fixtures/shop';
import { ShopSide } from './fixtures/shop-side';
import { ProofSheet } from './pages/proof-sheet';

const own = ownShop();

/** A customer's phone with the page in hand; what the page must never do is looked at when it is put away. */
async function withPhone(
  browser: Browser,
  use: (sheet: ProofSheet, page: Page) => Promise<void>,
  options: BrowserContextOptions = {},
): Promise<void> {
  const context = await browser.newContext({ ...phone, ...options });
  const page = await context.newPage();
  const seen = watchPage(page);
  await use(new ProofSheet(page), page);
  expect(seen).toEqual([]);
  await context.close();
}

/** WCAG 2.2 at level AA, as far as axe can tell. */
async function expectAccessible(page: Page): Promise<void> {
  const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
  const { violations } = await new AxeBuilder({ page }).withTags(tags).analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
}

async function expectNothingBesideThePage(page: Page): Promise<void> {
  const beside = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(beside).toBe(0);
}

for (const javaScriptEnabled of [true, false]) {
  test(`a customer looks, asks for a change and says yes ${javaScriptEnabled ? 'on a phone' : 'without scripts'}`, async ({
    browser,
  }) => {
    const { jobId, link } = own.side.sendFirst();
    await withPhone(
      browser,
      async (sheet, page) => {
        await test.step('sees what is to be done and both sides of the size most are ordered of', async () => {
          await sheet.open(link);
          await expect(page.getByRole('heading', { level: 1 })).toHaveText('Autumn relay shirts, first look');
          await expect(page.getByText('Saturday, October 2, 2027 at 4:00 PM Eastern Time')).toBeVisible();
          await expect(sheet.picture('Front')).toHaveCount(1);
          await expect(sheet.picture('Front')).toHaveAttribute(
            'alt',
            'Front of the Relay tee in Navy, size Youth M. ' +
              'Crest, full front: 7 1/2 in wide, 2 1/2 in below the collar, in the middle.',
          );
          await expect(sheet.picture('Back')).toHaveAttribute('alt', /size Youth M\. Nothing is printed here\.$/);
          await expect(page.getByRole('row', { name: 'In all 12' })).toBeVisible();
          await sheet.picture('Front').scrollIntoViewIfNeeded();
          if (javaScriptEnabled)
            await expect
              .poll(() => sheet.picture('Front').evaluate((image) => (image as HTMLImageElement).naturalWidth))
              .toBeGreaterThan(500);
        });

        await test.step('sees every size on the line at one scale, with how to compare', async () => {
          await expect(sheet.line('Front')).toHaveAttribute('alt', /Youth M and M\. Crest, full front\.$/);
          // A side that nothing is printed on is not hung up.
          await expect(sheet.line('Back')).toHaveCount(0);
          await expect(page.getByText('lay a shirt you own flat and measure straight across')).toBeVisible();
        });

        await test.step('turns both sides to another size', async () => {
          await sheet.chooseSize('M');
          await expect(sheet.size('M')).toBeChecked();
          await expect(sheet.picture('Front')).toHaveAttribute(
            'alt',
            /size M\. Crest, full front: 10 in wide, 3 in below/,
          );
          await expect(sheet.picture('Back')).toHaveAttribute('alt', /size M\./);
          await expect(sheet.size('M')).toHaveAccessibleName('M, 20 in across the chest');
        });

        await test.step('finds nothing ticked, and a name of spaces refused with the rest still there', async () => {
          await expect(sheet.ticks).toHaveCount(4);
          for (const tick of await sheet.ticks.all()) await expect(tick).not.toBeChecked();
          await sheet.sayYes('   ');
          await expect(sheet.refusal).toContainText('Type your full name');
          for (const tick of await sheet.ticks.all()) await expect(tick).toBeChecked();
        });

        await test.step('is asked which it is when a change was written and yes pressed', async () => {
          await sheet.openChange();
          await sheet.changeWords.fill('A touch bigger.\nAnd lower.');
          await sheet.sayYes('Wren Okafor');
          await expect(sheet.refusal).toContainText('You wrote down a change and pressed “Yes, make these”');
          await expect(sheet.changeWords).toHaveValue('A touch bigger.\nAnd lower.');
          await expect(sheet.fullName).toHaveValue('Wren Okafor');
        });

        await test.step('sends the change, and reads it back with what happens next', async () => {
          await sheet.sendChangeButton.click();
          await expect(sheet.answer).toContainText('You asked for a change to Rev 1');
          await expect(sheet.answer).toContainText('A touch bigger.');
          await expect(page.getByText('Otterbank Press has the change you asked for.')).toBeVisible();
        });

        await test.step('says yes after all, and nothing more can be answered', async () => {
          await sheet.sayYes('Wren Okafor');
          await expect(sheet.answer).toContainText('You said yes to Rev 1');
          await expect(sheet.answer).toContainText(/Rev 1, seal [0-9A-F]{4}-[0-9A-F]{4}/);
          await expect(sheet.answer).toContainText('Prints are placed by hand');
          await expect(sheet.yesButton).toHaveCount(0);
          await expect(page.getByRole('link', { name: 'Call +1 555 0142' })).toHaveAttribute('href', 'tel:+15550142');
        });
      },
      { javaScriptEnabled },
    );
    const ticks = ['spelling', 'counts', 'colours', 'placement'];
    expect(own.side.look(jobId)[0]?.answers).toEqual([
      { word: 'change', how: 'link', ticks, typedName: 'Wren Okafor', words: 'A touch bigger.\nAnd lower.' },
      { word: 'yes', how: 'link', ticks, typedName: 'Wren Okafor', words: '' },
    ]);
  });
}

test('a newer look is shown to whoever answers the replaced one, with nothing typed lost', async ({ browser }) => {
  const { jobId, link } = own.side.sendFirst();
  await withPhone(browser, async (sheet, page) => {
    await sheet.open(link);
    await sheet.tickAll();
    await sheet.fullName.fill('Wren Okafor');
    own.side.sendAnother(jobId);
    await sheet.yesButton.click();
    await expect(sheet.refusal).toContainText('A newer look came out while your page was open');
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Autumn relay shirts, second look');
    await expect(sheet.fullName).toHaveValue('Wren Okafor');
    // Those ticks were about another look.
    for (const tick of await sheet.ticks.all()) await expect(tick).not.toBeChecked();
    await expectAccessible(page);

    await sheet.open(link, 1);
    await expect(page.getByText('This is Rev 1. It was replaced by Rev 2.')).toBeVisible();
    await expect(sheet.yesButton).toHaveCount(0);
    await expectAccessible(page);
    await page.getByRole('link', { name: 'See Rev 2' }).click();
    await expect(sheet.yesButton).toBeVisible();
  });
  expect(own.side.look(jobId).flatMap(({ answers }) => answers)).toEqual([]);
});

test('looking changes nothing; that the page was in sight is noted once', async ({ browser, request }) => {
  const { jobId, link } = own.side.sendFirst();
  expect((await request.get(link)).status()).toBe(200);
  expect((await request.head(link)).status()).toBe(200);
  expect(own.side.look(jobId)[0]?.visits).toBe(0);
  await withPhone(browser, async (sheet, page) => {
    const noted = page.waitForResponse((response) => response.url().endsWith('/opened'));
    await sheet.open(link);
    expect((await noted).status()).toBe(204);
    const again = page.waitForResponse((response) => response.url().endsWith('/opened'));
    await page.reload();
    expect((await again).status()).toBe(204);
  });
  expect(own.side.look(jobId)[0]?.visits).toBe(1);
});

test('a form sent twice is one answer; from another site it is none', async ({ browser, request }) => {
  const { jobId, link } = own.side.sendFirst();
  await withPhone(browser, async (sheet, page) => {
    await sheet.open(link);
    const fields = await page.evaluate(() =>
      [...new FormData(document.querySelector('form') ?? undefined)].map(([name, value]) => [name, String(value)]),
    );
    const form = { ...Object.fromEntries(fields), word: 'change', words: 'Lower, please.' };
    const post = (headers: Record<string, string>) =>
      request.post(`${link}/answer`, { form, headers, maxRedirects: 0 }).then((response) => response.status());
    expect(await post({ 'Sec-Fetch-Site': 'cross-site' })).toBe(403);
    expect(await post({ Origin: 'https://elsewhere.example.org' })).toBe(403);
    expect(own.side.look(jobId)[0]?.answers).toHaveLength(0);
    expect(await Promise.all([post({ Origin: own.server.url }), post({ 'Sec-Fetch-Site': 'same-origin' })])).toEqual([
      303, 303,
    ]);
  });
  expect(own.side.look(jobId)[0]?.answers).toHaveLength(1);
});

test('a wrong, a revoked and an empty link look the same; what was taken back is gone', async ({
  browser,
  request,
}) => {
  const { jobId, link } = own.side.sendFirst();
  const words = 'This link does not work';
  await withPhone(browser, async (sheet, page) => {
    await sheet.open(link);
    await sheet.openChange();
    await sheet.changeWords.fill('Could the bird look left?');
    own.side.takeBack(jobId);
    await sheet.sendChangeButton.click();
    await expect(sheet.refusal).toContainText('The shop took that look back');
    await expect(sheet.refusal).toContainText('Could the bird look left?');
    await expectAccessible(page);

    for (const address of [link, `${link}?rev=7`, `${link}x`, `${own.server.url}/proof/none`]) {
      expect((await page.goto(address))?.status()).toBe(404);
      await expect(page.getByRole('heading', { level: 1 })).toHaveText(words);
      await expect(page).toHaveTitle(words);
    }
    await expectAccessible(page);
  });
  const other = own.side.sendFirst();
  own.side.revokeLink(other.jobId);
  const revoked = await request.get(other.link);
  expect([revoked.status(), await revoked.text()]).toEqual([404, expect.stringContaining(words)]);
  expect((await request.post(`${other.link}/opened`, { form: { revision: 'x' } })).status()).toBe(404);
});

test('pictures are for whoever has the link, and may be kept by them', async ({ browser, request }) => {
  const [mine, other] = [own.side.sendFirst(), own.side.sendFirst()];
  let address = '';
  await withPhone(browser, async (sheet) => {
    await sheet.open(mine.link);
    address = (await sheet.picture('Front').getAttribute('src')) ?? '';
  });
  const picture = await request.get(own.server.url + address);
  expect([picture.status(), picture.headers()['content-type'], picture.headers()['cache-control']]).toEqual([
    200,
    'image/webp',
    'private, max-age=31536000, immutable',
  ]);
  const throughAnother = address.replace(new URL(mine.link).pathname, new URL(other.link).pathname);
  expect((await request.get(own.server.url + throughAnother)).status()).toBe(404);
});

test('a yes that the shop noted down is shown as that', async ({ browser }) => {
  const { jobId, link } = own.side.sendFirst();
  own.side.noteYes(jobId);
  await withPhone(browser, async (sheet, page) => {
    await sheet.open(link);
    await expect(sheet.answer).toContainText('Otterbank Press noted your yes to Rev 1, given by phone');
    await expect(sheet.answer).toContainText('Is that not what you said?');
    await expectAccessible(page);
  });
});

test('the page can be answered by keys alone, and has nothing axe finds fault with', async ({ browser }) => {
  const { link } = own.side.sendFirst();
  for (const viewport of [phone.viewport, { width: 1440, height: 900 }]) {
    await withPhone(
      browser,
      async (sheet, page) => {
        await sheet.open(link);
        await expectAccessible(page);
      },
      { viewport },
    );
  }
  await withPhone(browser, async (sheet, page) => {
    await sheet.open(link);
    await sheet.size('Youth M').focus();
    await page.keyboard.press('ArrowRight');
    await expect(sheet.picture('Front')).toHaveAttribute('alt', /size M\./);
    await sheet.ticks.first().focus();
    for (const _tick of await sheet.ticks.all()) {
      await page.keyboard.press('Space');
      await page.keyboard.press('Tab');
    }
    await page.keyboard.type('Wren Okafor');
    await page.keyboard.press('Tab');
    await expect(sheet.yesButton).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(sheet.answer).toContainText('You said yes to Rev 1');
    await expectAccessible(page);
  });
});

test('the line scrolls in a box of its own, and takes few pictures to show', async ({ browser }) => {
  const { link } = own.side.sendInEverySize();
  await withPhone(browser, async (sheet, page) => {
    const pictures: string[] = [];
    page.on('request', (request) => {
      if (request.url().includes('/picture/')) pictures.push(request.url());
    });
    await sheet.open(link);
    await sheet.line('Front').scrollIntoViewIfNeeded();
    await expect
      .poll(() => sheet.line('Front').evaluate((image) => (image as HTMLImageElement).naturalWidth))
      .toBeGreaterThan(2_000);
    await expectNothingBesideThePage(page);
    await expect(sheet.size('Youth XS')).not.toBeInViewport();
    await sheet.chooseSize('3XL');
    await expect(sheet.size('3XL')).toBeInViewport();
    await expect(sheet.picture('Front')).toHaveAttribute('alt', /size 3XL\./);
    await expectNothingBesideThePage(page);
    // The line, and the two sides of the size first shown and of the one chosen.
    expect(new Set(pictures).size).toBeLessThanOrEqual(5);
  });
});

// WCAG 2.2: 1.4.10 (320 CSS px wide) and 1.4.4 (text at 200 %).
test('nothing stands beside the page on a narrow phone or with large text', async ({ browser }) => {
  const { link } = own.side.sendFirst();
  await withPhone(
    browser,
    async (sheet, page) => {
      await sheet.open(link);
      await expectNothingBesideThePage(page);
      await page.setViewportSize({ width: 390, height: 844 });
      await page.addStyleTag({ content: 'html { font-size: 200% }' });
      await expectNothingBesideThePage(page);
      await sheet.openChange();
      await expect(sheet.sendChangeButton).toBeVisible();
    },
    // Only so that the test can enlarge the text.
    { viewport: { width: 320, height: 640 }, bypassCSP: true },
  );
});

test('whoever tries too many wrong links is turned away, and a good link still opens', async ({ request }) => {
  const guarded = await startServer();
  const { link } = new ShopSide(guarded).sendFirst();
  const wrong = () => request.get(`${guarded.url}/proof/${'A'.repeat(48)}`).then((response) => response.status());
  const statuses: number[] = [];
  for (let tries = 0; tries < 21; tries += 1) statuses.push(await wrong());
  expect(statuses).toEqual([...Array<number>(20).fill(404), 429]);
  expect((await request.get(link)).status()).toBe(200);
  await guarded.remove();
});
