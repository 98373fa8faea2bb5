import AxeBuilder from '@axe-core/playwright';
import type { Browser, Page } from '@playwright/test';
import { ownShop } from './fixtures/own-shop';
import { expect, test, watchPage } from './fixtures/shop';
import { LayoutTable } from './pages/layout-table';
import { PaperHand } from './pages/paper-hand';

const WIDE = { viewport: { width: 1440, height: 900 } } as const;

const own = ownShop();
let signedIn: Awaited<ReturnType<Awaited<ReturnType<Browser['newContext']>>['storageState']>>;

test.beforeAll(async ({ browser }) => {
  const page = await browser.newPage();
  await own.signIn(page);
  signedIn = await page.context().storageState();
  await page.close();
});

async function laidOut(browser: Browser, jobId: string): Promise<{ page: Page; table: LayoutTable; hand: PaperHand }> {
  const context = await browser.newContext({ ...WIDE, storageState: signedIn });
  const page = await context.newPage();
  await page.goto(`${own.server.url}/jobs/${jobId}/table`);
  const table = new LayoutTable(page);
  await table.showSize('M');
  return { page, table, hand: new PaperHand(page) };
}

test('a reading is typed on the tape itself: a fraction, another unit, a step more', async ({ browser }) => {
  const { page, table } = await laidOut(browser, own.side.layOut().jobId);
  const width = table.reading('Width', 'Crest');
  await width.click();
  await page.keyboard.type('3 1/2');
  await page.keyboard.press('Enter');
  await expect(width).toHaveValue('3 1/2 in');
  // The reading that was set stays chosen: the next one is typed over it.
  await page.keyboard.type('+1/8');
  await page.keyboard.press('Enter');
  await expect(width).toHaveValue('3 5/8 in');
  const drop = table.reading('Drop', 'Crest');
  await drop.click();
  await page.keyboard.type('9cm');
  await page.keyboard.press('Enter');
  // 9 cm / 2.54 cm = 3.543… in: 3 1/2 to the nearest 1/8 (NIST SP 811, 1 in = 2.54 cm).
  await expect(drop).toHaveValue('3 1/2 in');
  await page.context().close();
});

test('a print is turned by its handle, with the pointer and with keys, and the turn is one step to undo', async ({
  browser,
}) => {
  const { page, table, hand } = await laidOut(browser, own.side.layOut().jobId);
  const handle = hand.turnHandle('Crest');
  await hand.turnAQuarter('Crest');
  await expect(handle).toHaveAttribute('aria-valuenow', '90');
  await table.undo();
  await expect(handle).toHaveAttribute('aria-valuenow', '0');
  await handle.focus();
  await page.keyboard.press('ArrowRight');
  await expect(handle).toHaveAttribute('aria-valuetext', '1°');
  await page.keyboard.press('Shift+ArrowRight');
  await expect(handle).toHaveAttribute('aria-valuetext', '15°');
  await page.keyboard.press('Shift+ArrowLeft');
  await page.keyboard.press('ArrowLeft');
  await expect(handle).toHaveAttribute('aria-valuetext', '-1°');
  await page.context().close();
});

test('a print in hand shows its height and the nearest seam, and is caught at its usual drop', async ({ browser }) => {
  const { page, table, hand } = await laidOut(browser, own.side.layOut().jobId);
  const seen = watchPage(page);
  // The picture is square: as tall as it is wide.
  await hand.drag(0, 40);
  await expect(page.getByText('10 in tall', { exact: true })).toBeVisible();
  await expect(page.getByText(/ in to the (armhole|side seam|collar seam)$/)).toBeVisible();
  await hand.letGo();
  await expect(page.getByText('10 in tall', { exact: true })).toBeHidden();
  await expect(table.reading('Drop', 'Crest')).not.toHaveValue('3 in');
  // Four pixels short of where it was: near enough for its usual drop to catch it.
  await hand.drag(0, -36);
  await hand.letGo();
  await expect(table.reading('Drop', 'Crest')).toHaveValue('3 in');
  expect(seen).toEqual([]);
  await page.context().close();
});

test('what does not fit is marked at the print, and its mark says what its slip says', async ({ browser }) => {
  const { page, table, hand } = await laidOut(browser, own.side.layOut().jobId);
  await table.type('Width', 'Crest', '18');
  const mark = hand.marks('Crest').first();
  await mark.focus();
  const said = (await mark.getAttribute('aria-label')) ?? '';
  expect(said).toMatch(/^Crest: it /);
  await expect(mark.getByText(said.replace('Crest: ', ''))).toBeVisible();
  const { violations } = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag22aa']).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)).toEqual(
    [],
  );
  await page.context().close();
});

test('the paper is seen in real size once a card was laid against the screen, and that is remembered here', async ({
  browser,
}) => {
  const { page, table } = await laidOut(browser, own.side.layOut().jobId);
  const real = page.getByRole('button', { name: /^Real size/ });
  await table.press('1');
  const dialog = page.getByRole('dialog', { name: 'Real size on this screen' });
  const slider = dialog.getByRole('slider', { name: 'Size of the outline' });
  await slider.fill('4');
  // ISO/IEC 7810, ID-1: 85.60 mm wide; 4 px to the mm is 342.4 px.
  const card = await dialog.getByText('your card').boundingBox();
  expect(card?.width).toBeCloseTo(342.4, 0);
  await dialog.getByRole('button', { name: 'It is as large as my card' }).click();
  await expect(real).toHaveAttribute('aria-pressed', 'true');
  await table.press('0');
  await expect(real).toHaveAttribute('aria-pressed', 'false');
  await page.reload();
  await table.paper.waitFor();
  await table.press('1');
  await expect(real).toHaveAttribute('aria-pressed', 'true');
  await expect(dialog).toBeHidden();
  await page.context().close();
});

test('from a sleeve both faces are named; from a face the other one is turned over to', async ({ browser }) => {
  const { page } = await laidOut(browser, own.side.layOut().jobId);
  const sides = page.getByRole('group', { name: 'Side' });
  await expect(sides.getByRole('button', { name: 'Turn it over' })).toHaveCount(1);
  await sides.getByRole('button', { name: /left sleeve/i }).click();
  await expect(sides.getByRole('button', { name: 'Turn it over' })).toHaveCount(0);
  await expect(sides.getByRole('button', { name: 'Front' })).toBeVisible();
  await expect(sides.getByRole('button', { name: 'Back' })).toBeVisible();
  await page.context().close();
});
