import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { cookiesOf, openShopApart } from './fixtures/apart';
import type { RunningServer } from './fixtures/server';
import { expect, phone, test as shared, watchPage } from './fixtures/shop';
import { JobPage } from './pages/job-page';
import { PeoplePage } from './pages/people-page';

/** In a worker of its own, so that its shop is one that nobody has set up yet. */
const test = shared.extend<object, { shop: RunningServer; maker: ReturnType<typeof openShopApart> }>({
  shop: [async ({ shop }, use) => use(shop), { scope: 'worker' }],
  maker: [async ({ shop }, use) => use(openShopApart(shop)), { scope: 'worker' }],
});

test.describe.configure({ mode: 'serial', timeout: 120_000 });
test.beforeEach(async ({ context, shop, maker }) => context.addCookies(cookiesOf(maker, shop.url)));

async function hasNoBarrier(page: Page): Promise<void> {
  const found = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze();
  expect(found.violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
}

test('a list is written by the keyboard, pasted with a look first, settled, and taken back', async ({
  page,
  maker,
}) => {
  const job = new JobPage(page);
  const people = new PeoplePage(page);
  await page.goto(`/jobs/${maker.jobId}`);
  await job.addTee('Relay tee', 'Navy');
  await people.open(maker.jobId);

  await test.step('two people are written, cell by cell', async () => {
    await people.type(people.cell('Name'), 'Mia Ode', '7', 'ym');
    await expect(people.cell('Size', 1)).toHaveValue('Youth M');
    await people.type(people.cell('Name'), 'Bo Carr', '7', 'M');
    await expect(people.saved).toBeVisible();
    await expect(people.found('The same number as line 1.')).toBeVisible();
    await expect(people.cell('Number', 2)).toHaveAccessibleDescription(/The same number as line 1/);
  });

  await test.step('what is found is mended, or meant so', async () => {
    await page.getByRole('button', { name: 'Adult M', exact: true }).click();
    await expect(people.cell('Size', 2)).toHaveValue('Adult M');
    await page.getByRole('button', { name: 'Meant so…' }).first().click();
    await page.getByLabel('Why it is meant so').fill('They take turns');
    await page.keyboard.press('Enter');
    await expect(people.found('Meant so: They take turns')).toHaveCount(2);
    await expect(people.toSettle).toContainText('Nothing to settle');
    await hasNoBarrier(page);
  });

  await test.step('a message shows what it was understood as before it counts, and goes in one', async () => {
    await people.look('Ada Pike 4 youth S, Uncle Jo 2XL 22');
    await expect(page.getByRole('cell', { name: 'Uncle Jo' })).toBeVisible();
    await expect(people.cell('Name', 3)).toHaveCount(0);
    await page.getByRole('button', { name: 'Add 2 people' }).click();
    await expect(people.cell('Size', 4)).toHaveValue('2XL');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(people.cell('Name', 3)).toHaveCount(0);
    await page.getByRole('button', { name: 'Redo' }).click();
    await expect(people.cell('Name', 4)).toHaveValue('Uncle Jo');
  });

  await test.step('a block goes into the cells it is pasted on', async () => {
    await people.paste(people.cell('Number', 3), '12\tYL\n24\t3XL\n');
    await expect(people.cell('Number', 4)).toHaveValue('24');
    await expect(people.cell('Size', 3)).toHaveValue('Youth L');
    await expect(people.saved).toBeVisible();
  });

  await test.step('everything is there again, and the job counts what the list comes to', async () => {
    await page.reload();
    await expect(people.cell('Size', 4)).toHaveValue('3XL');
    await page.goto(`/jobs/${maker.jobId}`);
    await expect(job.garment('Relay tee')).toContainText('4 in all');
    await expect(page.getByRole('region', { name: 'People' })).toContainText('4 people on the list.');
  });
});

test('two windows do not overwrite each other', async ({ page, context, maker }) => {
  const here = new PeoplePage(page);
  await here.open(maker.jobId);
  const other = await context.newPage();
  const seen = watchPage(other);
  const there = new PeoplePage(other);
  await there.open(maker.jobId);
  await there.type(there.cell('Number', 1), '15');
  await expect(there.saved).toBeVisible();
  await here.type(here.cell('Number', 1), '51');
  const notice = page.getByRole('status').filter({ hasText: 'Somebody was faster' });
  await expect(notice).toContainText('Number, line 1: it says “15” now. You wrote “51”.');
  await expect(here.cell('Number', 1)).toHaveValue('15');
  await notice.getByRole('button', { name: 'Write “51”' }).click();
  await expect(here.saved).toBeVisible();
  await there.type(there.cell('Name', 1), 'Mía Ode');
  await expect(there.cell('Number', 1)).toHaveValue('51');
  expect(seen).toEqual([]);
});

test.describe('on a phone', () => {
  test.use(phone);

  test('a line is a card, and nothing runs off the side', async ({ page, maker }) => {
    const people = new PeoplePage(page);
    await people.open(maker.jobId);
    await people.cell('Name', 2).fill('Bo Carrick');
    await people.cell('Size', 2).fill('the usual');
    await people.cell('Name', 2).focus();
    await expect(people.found('No size can be read from “the usual”.')).toBeVisible();
    const [wide, window] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
    expect(wide).toBeLessThanOrEqual(window ?? 0);
    const box = await people.cell('Size', 2).boundingBox();
    expect(box?.width).toBeGreaterThan(200);
    await hasNoBarrier(page);
  });
});
