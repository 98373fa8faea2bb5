import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { cookiesOf, openShopApart, runApart } from './fixtures/apart';
import type { RunningServer } from './fixtures/server';
import { expect, journey as test, watchPage } from './fixtures/shop';
import { JobPage } from './pages/job-page';
import { LayoutTable } from './pages/layout-table';

test.describe.configure({ timeout: 180_000 });
test.use({ viewport: { width: 1440, height: 900 } });

/** A shop just opened, its owner signed in, on the page of its one job. */
async function openJob(page: Page, shop: RunningServer): Promise<JobPage & { address: string }> {
  const maker = openShopApart(shop);
  await page.context().addCookies(cookiesOf(maker, shop.url));
  const address = `/jobs/${maker.jobId}`;
  await page.goto(address);
  await page.getByRole('heading', { level: 1, name: 'Autumn relay shirts' }).waitFor();
  return Object.assign(new JobPage(page), { address });
}

test('garments of several kinds are added, counted and laid out', async ({ page, shop }) => {
  const job = await openJob(page, shop);
  const table = new LayoutTable(page);

  await test.step('the list offers every kind, and the form shows the front of what is chosen', async () => {
    const form = await job.newGarment();
    await form.getByLabel('What it is').selectOption({ label: 'Zip hood · S to 5XL' });
    await expect(form.getByRole('img', { name: 'Front of the Zip hood, size XL' })).toBeVisible();
    await expect(form.getByText('Generic chart, from common practice')).toBeVisible();
    await expect(form.getByLabel('Name', { exact: true })).toHaveValue('Zip hood');
    await form.getByLabel('Name', { exact: true }).fill('Coach hood');
    await form.getByLabel('What it is').selectOption({ label: 'Tote · Small to Large' });
    await expect(form.getByRole('img', { name: 'Front of the Zip hood, size Regular' })).toHaveCount(0);
    await expect(form.getByRole('img', { name: 'Front of the Tote, size Regular' })).toBeVisible();
    await expect(form.getByLabel('Name', { exact: true })).toHaveValue('Coach hood');
    await expect(form.getByRole('group', { name: 'Also under this garment' })).toHaveCount(0);
    await form.getByLabel('What it is').selectOption({ label: 'Raglan · S to 3XL' });
    await expect(form.getByLabel('Sleeves and collar')).toBeVisible();
    const found = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze();
    expect(found.violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  });

  await test.step('a raglan in two cloths', async () => {
    await job.addGarment({ style: 'Raglan · S to 3XL', name: 'Crew raglan', cloth: 'Natural', second: 'Navy' });
    await expect(job.garment('Crew raglan')).toContainText('Natural with Navy sleeves and collar');
    await job.enterCounts({ 'Adult sizes': { M: 3 } }, 'Crew raglan');
  });

  await test.step('a zip hood for adults and youths', async () => {
    await job.addGarment({
      style: 'Zip hood · S to 5XL',
      also: ['Youth sizes, XS to XL (generic chart)'],
      name: 'Zip hood',
      cloth: 'Forest green',
    });
    await job.enterCounts({ 'Youth sizes': { L: 2 }, 'Adult sizes': { S: 1 } }, 'Zip hood');
    await expect(job.garment('Zip hood')).toContainText('3 in all');
  });

  await test.step('a tote, whose sizes are nobody’s age', async () => {
    await job.addGarment({ style: 'Tote · Small to Large', name: 'Tote', cloth: 'Natural' });
    await job.enterCounts({ Sizes: { Regular: 10 } }, 'Tote');
    await expect(job.garment('Tote')).toContainText('10 in all');
  });

  await test.step('each is drawn on the layout table', async () => {
    await page.getByRole('link', { name: 'Layout table' }).click();
    await expect(table.paper).toBeVisible();
    for (const [garment, side] of [
      ['Crew raglan, Natural with Navy sleeves and collar', 'Left sleeve'],
      ['Zip hood, Forest green', 'Left sleeve'],
      ['Tote, Natural', 'Front'],
    ] as const) {
      await table.chooseGarment(garment);
      await expect(page.getByRole('button', { name: side, exact: true })).toBeVisible();
    }
    await expect(page.getByRole('button', { name: 'Left sleeve', exact: true })).toHaveCount(0);
  });
});

test('youth sizes come under a printed tee with the print on them, and go again while none is ordered', async ({
  page,
  shop,
}) => {
  const job = await openJob(page, shop);
  const table = new LayoutTable(page);
  await job.addGarment({ style: 'Crew tee · S to 5XL', name: 'Relay tee', cloth: 'Navy' });
  await job.addArt('prisma/demo/heron-crest.png');
  await expect(page.getByText('sharp to 9.5 in')).toBeVisible();
  await page.getByRole('link', { name: /^(Layout table|Place the art)$/ }).click();
  await table.layOn('heron-crest.png', 'Full front');
  await table.type('Width', 'heron-crest', '9 1/2');
  await expect(table.saved).toBeVisible();

  await page.goto(job.address);
  await job.openChanges('Relay tee', 'Sizes and charts');
  await job.addSizes('Relay tee', 'Youth sizes, XS to XL (generic chart)');
  await expect(job.garment('Relay tee').getByRole('group', { name: 'Youth sizes' })).toBeVisible();
  await job.enterCounts({ 'Youth sizes': { M: 2 }, 'Adult sizes': { M: 4 } }, 'Relay tee');
  await page.getByRole('link', { name: /^(Layout table|Place the art)$/ }).click();
  await table.showSize('Youth M');
  // Common practice, no source: a full front starts 7 1/2 in wide on a youth garment, 2 1/2 in below the collar.
  await expect(table.reading('Width', 'heron-crest')).toHaveValue('7 1/2 in');
  await expect(table.reading('Drop', 'heron-crest')).toHaveValue('2 1/2 in');
  await table.showSize('M');
  await expect(table.reading('Width', 'heron-crest')).toHaveValue('9 1/2 in');

  await page.goto(job.address);
  await job.openChanges('Relay tee', 'Sizes and charts');
  await expect(job.garment('Relay tee').getByRole('button', { name: 'Take off youth sizes' })).toHaveCount(0);
  await job.enterCounts({ 'Youth sizes': { M: 0 } }, 'Relay tee');
  await job.garment('Relay tee').getByRole('button', { name: 'Take off youth sizes' }).click();
  await expect(job.garment('Relay tee').getByRole('group', { name: 'Youth sizes' })).toHaveCount(0);
});

test('the shop’s own blanks come first, in their own colours, and a changed chart is taken when the maker says so', async ({
  page,
  shop,
}) => {
  const job = await openJob(page, shop);
  runApart(shop, 'blank-process', 'add');
  await page.reload();

  await test.step('a blank without sizes is refused with the way to mend it', async () => {
    const form = await job.newGarment();
    await expect(form.getByLabel('What it is').locator('optgroup').first()).toHaveAttribute('label', 'Your blanks');
    await form.getByLabel('What it is').selectOption({ label: 'Empty tee · no sizes yet' });
    await form.getByLabel('Name', { exact: true }).fill('Nothing yet');
    await form.getByRole('button', { name: 'Add the garment' }).click();
    await expect(form.getByText('Empty tee has no sizes yet: add its chart under Blanks first.')).toBeVisible();
    await expect(form.getByRole('link', { name: 'Open the blank.' })).toHaveAttribute('href', /^\/blanks\/./);
    await expect(form.getByLabel('Name', { exact: true })).toHaveValue('Nothing yet');
  });

  await test.step('its colours are those it comes in', async () => {
    await job.addGarment({ style: 'Harbour tee · S to 5XL', name: 'Harbour shirt', cloth: 'Sand' });
    await expect(job.garment('Harbour shirt')).toContainText('Sand');
    await expect(job.garment('Harbour shirt')).toContainText('Blend');
    await job.enterCounts({ 'Adult sizes': { L: 4 } }, 'Harbour shirt');
  });

  await test.step('the chart it was drawn from stays until the maker takes the new one', async () => {
    runApart(shop, 'blank-process', 'widen');
    await page.reload();
    await job.openChanges('Harbour shirt', 'Sizes and charts');
    const garment = job.garment('Harbour shirt');
    await expect(garment.getByText('L: Chest 22 in → 23 in')).toBeVisible();
    await garment.getByRole('button', { name: 'Take the chart as it is now' }).click();
    await expect(garment.getByText('Your chart of this blank has changed since:')).toHaveCount(0);
    await expect(garment.getByRole('row', { name: /^Chest/ })).toContainText('23');
    await expect(garment).toContainText('4 in all');
  });
});

test('a garment is added without scripts', async ({ browser, shop }) => {
  const context = await browser.newContext({ javaScriptEnabled: false, baseURL: shop.url });
  const page = await context.newPage();
  const seen = watchPage(page);
  const job = await openJob(page, shop);
  const form = await job.newGarment();
  await form.getByLabel('What it is').selectOption({ label: 'Raglan · S to 3XL' });
  await form.getByRole('button', { name: 'Show its sizes and colours' }).click();
  await expect(form.getByLabel('Name', { exact: true })).toHaveValue('Raglan');
  await form.getByRole('checkbox', { name: /^Youth sizes/ }).check();
  await form.getByLabel('Sleeves and collar').selectOption({ label: 'Red' });
  await form.getByLabel('Name', { exact: true }).fill('Plain raglan');
  await form.getByRole('button', { name: 'Add the garment' }).click();
  await expect(job.garment('Plain raglan')).toContainText('White with Red sleeves and collar');
  await expect(job.garment('Plain raglan').getByRole('group', { name: 'Youth sizes' })).toBeVisible();
  expect(seen).toEqual([]);
  await context.close();
});
