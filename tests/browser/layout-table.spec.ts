import AxeBuilder from '@axe-core/playwright';
import type { Browser, Page } from '@playwright/test';
import jsqr from 'jsqr';
import sharp from 'sharp';
import { ownShop } from './fixtures/own-shop';
import { expect, phone, test, watchPage } from './fixtures/shop';
import { LayoutTable } from './pages/layout-table';

const WIDE = { viewport: { width: 1440, height: 900 } } as const;

const own = ownShop();
let signedIn: Awaited<ReturnType<Awaited<ReturnType<Browser['newContext']>>['storageState']>>;

test.beforeAll(async ({ browser }) => {
  const page = await browser.newPage();
  await own.signIn(page);
  signedIn = await page.context().storageState();
  await page.close();
});

type Options = Parameters<Browser['newContext']>[0];

/** A browser of somebody who is signed in. */
function makerAt(browser: Browser, options: Options = WIDE) {
  return browser.newContext({ ...options, storageState: signedIn });
}

async function tableOn(page: Page, jobId: string): Promise<LayoutTable> {
  await page.goto(`${own.server.url}/jobs/${jobId}/table`);
  const table = new LayoutTable(page);
  await table.paper.waitFor();
  // The size most are ordered in comes first: two sizes are ordered alike here.
  await table.showSize('M');
  return table;
}

async function seriousFaults(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag22aa']).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
}

test('every command is listed with its key, found by typing, and says why it cannot run', async ({ browser }) => {
  const { jobId } = own.side.layOut();
  const context = await makerAt(browser);
  const page = await context.newPage();
  const seen = watchPage(page);
  const table = await tableOn(page, jobId);
  await table.listCommands();
  expect(await seriousFaults(page)).toEqual([]);
  await expect(table.command('Turn 15° clockwise')).toContainText('T');
  await expect(table.command('Lay higher')).toHaveAttribute('aria-disabled', 'true');
  await expect(table.command('Lay higher')).toContainText('It lies on top already.');
  // Pressed all the same, it does nothing, and typing goes on.
  await table.command('Lay higher').click({ force: true });
  await expect(table.commandList).toBeVisible();
  await page.keyboard.type('step wid');
  await expect(table.commandList.getByRole('option')).toHaveCount(1);
  await page.keyboard.press('Enter');
  await expect(table.commandList).toBeHidden();
  // Common practice, no source: a full front is 10 in wide, and the trade's step is 1/8 in.
  await expect(table.reading('Width', 'Crest')).toHaveValue('10 1/8 in');
  await expect(table.paper).toBeFocused();
  await table.listCommands();
  await page.keyboard.press('Escape');
  await expect(table.commandList).toBeHidden();
  await expect(table.paper).toBeFocused();
  expect(seen).toEqual([]);
  await context.close();
});

test('prints are doubled, ordered, pinned and hidden by key and on their slips, and all of it is said', async ({
  browser,
}) => {
  const { jobId } = own.side.layOut();
  const context = await makerAt(browser);
  const page = await context.newPage();
  const table = await tableOn(page, jobId);

  await test.step('a second one lies on top, and goes below', async () => {
    await table.press('d');
    await expect(table.said.filter({ hasText: 'Crest 2 added.' })).toHaveCount(1);
    await expect(table.pile.nth(0)).toContainText('Crest 2');
    await table.press('PageDown');
    await expect(table.said.filter({ hasText: 'Crest 2: 2 of 2 from the top.' })).toHaveCount(1);
    await table.press('PageDown');
    await expect(table.said.filter({ hasText: 'It lies at the bottom already.' })).toHaveCount(1);
    await table.slip('Crest 2').getByRole('button', { name: 'Lay it higher' }).click();
    await expect(table.said.filter({ hasText: 'Crest 2: 1 of 2 from the top.' })).toHaveCount(1);
  });

  await test.step('a pinned one stays where it is', async () => {
    await table.slip('Crest 2').getByRole('button', { name: 'Pin against moving' }).click();
    const before = await table.reading('Drop', 'Crest 2').inputValue();
    await table.press('ArrowDown');
    await expect(table.said.filter({ hasText: 'This print is pinned. Unpin it first.' })).toHaveCount(1);
    await expect(table.reading('Drop', 'Crest 2')).toHaveValue(before);
    await table.press('p');
    await table.press('ArrowDown');
    await expect(table.reading('Drop', 'Crest 2')).not.toHaveValue(before);
  });

  await test.step('a hidden one is off the paper, still on its slip, and no part of what is sent changes', async () => {
    await table.press(',');
    await expect(table.said.filter({ hasText: 'Crest in hand.' })).toHaveCount(1);
    await page.getByRole('button', { name: 'Hide Crest 2 while working' }).click();
    await expect(table.said.filter({ hasText: 'Crest 2 hidden on the paper.' })).toHaveCount(1);
    await expect(table.pile).toHaveCount(2);
    await table.press('Shift+H');
    await expect(page.getByRole('button', { name: 'Hide Crest 2 while working' })).toHaveAttribute(
      'aria-pressed',
      'false',
    );
  });

  expect(await seriousFaults(page)).toEqual([]);
  await context.close();
});

test('what was done can still be undone after the page was loaded again', async ({ browser }) => {
  const { jobId } = own.side.layOut();
  const context = await makerAt(browser);
  const page = await context.newPage();
  const table = await tableOn(page, jobId);
  await table.type('Width', 'Crest', '8');
  await table.type('Drop', 'Crest', '4');
  await expect(table.saved).toBeVisible();
  await page.reload();
  await expect(table.reading('Drop', 'Crest')).toHaveValue('4 in');
  await table.undo();
  await table.undo();
  await expect(table.reading('Width', 'Crest')).toHaveValue('10 in');
  await table.redo();
  await expect(table.reading('Width', 'Crest')).toHaveValue('8 in');
  await context.close();
});

test('two windows on one job: the second is told, sees both copies and what differs, and loses neither', async ({
  browser,
}) => {
  const { jobId } = own.side.layOut();
  const context = await makerAt(browser);
  const first = await tableOn(await context.newPage(), jobId);
  const second = await tableOn(await context.newPage(), jobId);
  await first.type('Width', 'Crest', '8');
  await expect(first.saved).toBeVisible();
  await second.type('Drop', 'Crest', '5');
  await expect(second.bothCopies).toBeVisible();
  await expect(second.bothCopies.getByRole('img', { name: 'Mine, here' })).toBeVisible();
  await expect(second.bothCopies.getByRole('img', { name: 'Theirs, saved' })).toBeVisible();
  await expect(second.bothCopies.getByRole('listitem')).toHaveText(
    /^Crest, S–5XL: mine 10 in wide, 5 in below the collar; theirs 8 in wide, 3 in below the collar\.$/,
  );
  expect(await seriousFaults(second.page)).toEqual([]);
  await second.page.keyboard.press('Escape');
  await second.bothCopies.getByRole('button', { name: 'Load theirs' }).click();
  await expect(second.reading('Width', 'Crest')).toHaveValue('8 in');
  await second.undo();
  await expect(second.reading('Drop', 'Crest')).toHaveValue('5 in');
  await context.close();
});

test('a picture handed over on the phone appears on the open table by itself', async ({ browser }) => {
  const { jobId } = own.side.layOut();
  const context = await makerAt(browser);
  const page = await context.newPage();
  const table = await tableOn(page, jobId);
  const address = await table.showPhoneCode();
  const code = await sharp(await table.phoneCode.getByRole('img', { name: /QR/ }).screenshot())
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  // Read by another library than the one that drew it.
  const read = jsqr(new Uint8ClampedArray(code.data), code.info.width, code.info.height);
  expect(read?.data).toBe(address);

  for (const javaScriptEnabled of [true, false]) {
    const inHand = await browser.newContext({ ...phone, javaScriptEnabled });
    const upload = await inHand.newPage();
    const seen = watchPage(upload);
    const response = await upload.goto(address);
    expect(response?.headers()['cache-control']).toBe('no-store');
    await expect(upload.getByText('For Autumn relay shirts')).toBeVisible();
    await upload.getByLabel('Choose a picture').setInputFiles({
      name: javaScriptEnabled ? 'small.png' : 'white.jpg',
      mimeType: javaScriptEnabled ? 'image/png' : 'image/jpeg',
      buffer: await dot(javaScriptEnabled ? 'png' : 'jpeg'),
    });
    if (!javaScriptEnabled) await upload.getByRole('button', { name: 'Hand it over' }).click();
    await expect(upload.getByText(/^✓ (small\.png|white\.jpg) is with the job now\.$/)).toBeVisible();
    if (javaScriptEnabled) expect(await seriousFaults(upload)).toEqual([]);
    expect(seen).toEqual([]);
    await inHand.close();
  }
  await expect(table.phoneCode.getByText('small.png is here.')).toBeVisible();
  await expect(table.phoneCode.getByText('white.jpg is here.')).toBeVisible();
  await table.phoneCode.getByRole('button', { name: 'Close' }).click();
  await table.layOn('small.png', 'Left chest');
  await expect(table.reading('Width', 'small')).toBeVisible();
  await context.close();
});

test('an address that is made up opens nothing, and says what to do', async ({ browser }) => {
  const page = await browser.newPage();
  await page.goto(`${own.server.url}/phone/${'A'.repeat(52)}`);
  await expect(page.getByRole('heading', { name: 'This page is not here' })).toBeVisible();
  const sent = await page.request.post(`${own.server.url}/api/art/phone/${'A'.repeat(52)}?name=x.png`, { data: 'x' });
  expect([sent.status(), await sent.json()]).toEqual([403, { ok: false, reason: 'wrong' }]);
  await page.close();
});

test('on a phone: a picture from its roll, a place, a width, and on to sending, never sideways', async ({
  browser,
}) => {
  const { jobId } = own.side.layOut();
  const context = await makerAt(browser, phone);
  const page = await context.newPage();
  const seen = watchPage(page);
  const table = await tableOn(page, jobId);
  const isWithin = () => page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth);
  expect(await isWithin()).toBe(true);

  await table.openSlips();
  await page.getByLabel(/Add a picture from this phone/).setInputFiles({
    name: 'oars.png',
    mimeType: 'image/png',
    buffer: await dot('png'),
  });
  const add = page.getByRole('region', { name: 'Add a picture' });
  await add.getByRole('radio', { name: 'oars.png' }).waitFor();
  await add.getByLabel('Location').selectOption({ label: 'Left chest' });
  await add.getByRole('button', { name: 'Lay it on' }).click();
  const slip = table.slip('oars');
  await slip.getByLabel('Width', { exact: true }).fill('3');
  await slip.getByLabel('Width', { exact: true }).press('Enter');
  await expect(page.getByRole('button', { name: /^oars 3 in wide/ })).toBeVisible();
  // The print is still to be seen above the sheet, and what is pressed is a finger's width.
  await expect(table.reading('Width', 'oars')).toBeInViewport();
  for (const control of await slip.getByRole('button').all())
    expect((await control.boundingBox())?.height ?? 0).toBeGreaterThanOrEqual(44);
  expect(await isWithin()).toBe(true);
  expect(await seriousFaults(page)).toEqual([]);
  await expect(table.saved).toBeVisible();
  await table.toSending();
  await page.waitForURL('**/send');
  expect(await isWithin()).toBe(true);
  expect(seen).toEqual([]);
  await context.close();
});

/** A picture nobody has sent before: a red square with a clear edge, or on white. */
function dot(format: 'png' | 'jpeg'): Promise<Buffer> {
  const background = format === 'png' ? { r: 0, g: 0, b: 0, alpha: 0 } : { r: 255, g: 255, b: 255, alpha: 1 };
  const ink = { create: { width: 900, height: 700, channels: 4 as const, background: '#B0302A' } };
  return sharp({ create: { width: 1_200, height: 1_000, channels: 4, background } })
    .composite([{ input: ink, left: 150, top: 150 }])
    .toFormat(format)
    .toBuffer();
}
