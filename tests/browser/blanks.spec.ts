import AxeBuilder from '@axe-core/playwright';
import type { BrowserContext } from '@playwright/test';
import type { RunningServer } from './fixtures/server';
import { expect, phone, test as shared } from './fixtures/shop';
import { BlanksPages } from './pages/blanks-pages';
import { Door } from './pages/door';

// A supplier's sheet as a spreadsheet hands it over, with one cell that somebody wrote a remark into.
const PASTED = [
  ['', 'XS', 'S', 'M', 'L'],
  ['Body length', '20 1/2', '22', '23 1/2', '25'],
  ['1/2 chest', '16', '17', '18', '19'],
  ['Sleeve length', '6', '6 3/8', 'see note', '7 1/8'],
]
  .map((cells) => cells.join('\t'))
  .join('\n');

/** In a worker of its own, so that its shop is one that nobody has set up yet. */
const test = shared.extend<object, { shop: RunningServer }>({
  shop: [async ({ shop }, use) => use(shop), { scope: 'worker' }],
});

/** The owner's session: signing in anew for each test would soon be one try too many. */
let session: Awaited<ReturnType<BrowserContext['cookies']>> | undefined;

test.beforeEach(async ({ page, context, shop }) => {
  if (session) {
    await context.addCookies(session);
    await page.goto('/jobs');
    return;
  }
  const door = new Door(page);
  await door.visit();
  await door.setUp({
    code: shop.setUpCode(),
    shopName: 'Otterbank Press',
    unit: 'Inches',
    timeZone: 'America/New_York',
    currency: 'USD',
    ownerName: 'Robin Teal',
    email: 'robin@otterbank.example.org',
    password: 'heron wading at dusk',
  });
  await page.getByRole('navigation', { name: 'Bench' }).waitFor();
  session = await context.cookies();
});

test.describe('the shop’s blanks', () => {
  test('come from a pasted chart with a bad cell, are mended, saved, loaded again and counted', async ({ page }) => {
    const blanks = new BlanksPages(page);
    await blanks.openList();
    await blanks.beginNew();
    await blanks.describe({ name: 'Regatta tee', kind: 'Crew tee', cutFor: 'Youth', fabric: 'Cotton' });
    await blanks.pasteChart(PASTED);
    await expect(blanks.understood).toContainText('4 sizes in inches: XS, S, M, L.');
    await expect(blanks.understood).toContainText('M, Sleeve (row 4, column 4): “see note” is not a length.');
    await blanks.putIntoTable();

    // Nothing of the rest is lost, and what stood in the bad cell stands in its place.
    await expect(blanks.measure('Youth L', 'Sleeve')).toHaveValue('7 1/8');
    await expect(blanks.measure('Youth M', 'Sleeve')).toHaveValue('see note');
    await blanks.putOnList();
    await expect(blanks.problems).toContainText(
      'Youth M: sleeve length “see note” is not a length. Type it like 27 1/2.',
    );
    await blanks.measure('Youth M', 'Sleeve').fill('6 3/4');
    await blanks.putOnList();
    await expect(page.getByRole('heading', { level: 1, name: 'Regatta tee' })).toBeVisible();
    await expect(page.getByRole('img', { name: 'Front of the Regatta tee, size Youth M' })).toBeVisible();

    await blanks.showMoreMeasures();
    await expect(blanks.measure('Youth M', 'Neck')).toHaveAttribute('placeholder', /^≈ /);
    await blanks.measure('Youth M', 'Neck').fill('9');
    await blanks.measure('Youth M', 'Shoulders').fill('8 1/2');
    await blanks.keepChart();
    await expect(blanks.problems).toContainText(
      'Youth M: neck width 9 in is wider than the shoulders, 8 1/2 in. Measure again, or leave one out.',
    );
    await expect(blanks.problems.getByRole('link')).toHaveCount(1);
    await blanks.measure('Youth M', 'Neck').fill('');
    await blanks.measure('Youth M', 'Shoulders').fill('40 cm');
    await blanks.cost('Youth M').fill('3.80');
    await blanks.keepChart();
    await expect(page.getByText('Chart kept.')).toBeVisible();
    await page.reload();
    const kept = await blanks.chartTexts();
    expect(kept[2]).toEqual(['M', '23 1/2', '18', '6 3/4', '15 3/4', '3.80']);

    const csv = await blanks.saveCsv();
    await blanks.loadChart({ name: 'Regatta tee.csv', mimeType: 'text/csv', buffer: csv });
    await expect(blanks.understood).toContainText('4 sizes');
    await blanks.putIntoTable();
    expect(await blanks.chartTexts()).toEqual(kept);
    await blanks.keepChart();
    await expect(page.getByText('Chart kept.')).toBeVisible();
    expect(await blanks.saveCsv()).toEqual(csv);

    await blanks.addUsualColours('Navy', 'Natural');
    await blanks.count('Youth M', 'Navy', '12');
    await blanks.count('Youth L', 'Natural', 'a few');
    await blanks.keepCounts();
    await expect(blanks.problems).toContainText('Youth L, Natural: type a whole number');
    await expect(blanks.measure('Youth M', 'Navy')).toHaveValue('12');
    await blanks.count('Youth L', 'Natural', '3');
    await blanks.keepCounts();
    await expect(page.getByText('Counts kept.')).toBeVisible();
    await blanks.openList();
    await expect(blanks.listed('Regatta tee')).toContainText('15 on hand');
    await expect(blanks.listed('Regatta tee')).not.toContainText('generic chart');
  });

  test('begin from a starter chart, marked as generic until the maker says otherwise', async ({ page }) => {
    const blanks = new BlanksPages(page);
    await page.goto('/blanks/new');
    await blanks.describe({ name: 'Boathouse hood', kind: 'Pullover hood', cutFor: 'Adults', fabric: 'Blend' });
    await page.getByRole('button', { name: 'Use the starter chart' }).click();
    await expect(page.getByText('This chart is generic, from common practice')).toBeVisible();
    await blanks.putOnList();
    await page.getByRole('heading', { level: 1, name: 'Boathouse hood' }).waitFor();
    await expect(page.getByText('This chart is generic, from common practice')).toBeVisible();
    await blanks.openList();
    await expect(blanks.listed('Boathouse hood')).toContainText('generic chart');
    await blanks.listed('Boathouse hood').getByRole('link').click();
    await page.getByRole('checkbox', { name: 'These are my supplier’s measures' }).click();
    await blanks.keepChart();
    await expect(page.getByText('Chart kept.')).toBeVisible();
    await blanks.openList();
    await expect(blanks.listed('Boathouse hood')).not.toContainText('generic chart');
  });

  test('tell a second window what became of them, and keep what was typed there', async ({ page, context }) => {
    const blanks = new BlanksPages(page);
    await page.goto('/blanks/new');
    await blanks.describe({ name: 'Two windows', kind: 'Tote', cutFor: 'Adults', fabric: 'Cotton' });
    await page.getByRole('button', { name: 'Use the starter chart' }).click();
    await blanks.putOnList();
    await page.getByRole('heading', { level: 1, name: 'Two windows' }).waitFor();
    const other = await context.newPage();
    await other.goto(page.url());
    await other.getByLabel('Fabric').fill('Canvas');
    await other.getByRole('button', { name: 'Keep these' }).click();
    await other.getByText('Kept.', { exact: false }).first().waitFor();
    await page.getByLabel('Supplier note').fill('Ask for the heavy one.');
    await page.getByRole('button', { name: 'Keep these' }).click();
    await expect(blanks.problems).toContainText('changed in another window');
    await expect(page.getByLabel('Supplier note')).toHaveValue('Ask for the heavy one.');
    await page.getByRole('button', { name: 'Keep these' }).click();
    await expect(page.getByText('✓ Kept.')).toBeVisible();
  });

  test('are copied, put away and brought back', async ({ page }) => {
    const blanks = new BlanksPages(page);
    await page.goto('/blanks/new');
    await blanks.describe({ name: 'Spare tee', kind: 'Tank', cutFor: 'Adults', fabric: 'Cotton' });
    await page.getByRole('button', { name: 'Use the starter chart' }).click();
    await blanks.putOnList();
    await page.getByRole('heading', { level: 1, name: 'Spare tee' }).waitFor();
    await page.getByRole('button', { name: 'Duplicate' }).click();
    await page.getByRole('heading', { level: 1, name: 'Spare tee, copy' }).waitFor();
    await page.getByRole('button', { name: 'Put it away' }).click();
    await page.getByRole('heading', { level: 1, name: 'Blanks' }).waitFor();
    await expect(blanks.listed('Spare tee, copy')).toBeHidden();
    await page.getByText(/blank put away/).click();
    await blanks.listed('Spare tee, copy').getByRole('link').click();
    await page.getByRole('button', { name: 'Bring it back' }).click();
    await expect(page.getByRole('button', { name: 'Bring it back' })).toBeHidden();
    await blanks.openList();
    await expect(blanks.listed('Spare tee, copy')).toBeVisible();
  });

  test('can be read and used on a phone, and break no accessibility rule', async ({ page }) => {
    const blanks = new BlanksPages(page);
    await page.setViewportSize(phone.viewport);
    await page.goto('/blanks/new');
    await blanks.describe({ name: 'Pocket-sized', kind: 'Raglan', cutFor: 'Youth', fabric: 'Cotton' });
    await page.getByRole('button', { name: 'Use the starter chart' }).click();
    await blanks.putOnList();
    await page.getByRole('heading', { level: 1, name: 'Pocket-sized' }).waitFor();
    await blanks.addUsualColours('White');
    await page.getByRole('checkbox', { name: 'Sleeves and collar in another colour' }).check();
    await page.getByLabel('Sleeves and collar of White, name').fill('Navy');
    await page.getByRole('button', { name: 'Keep the colours' }).click();
    await expect(page.getByText('Colours kept.')).toBeVisible();
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width).toBeLessThanOrEqual(phone.viewport.width);
    const found = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze();
    expect(found.violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  });

  test('give their chart to nobody who is not signed in', async ({ page, shop }) => {
    await page.goto('/blanks');
    const address = `${shop.url}/api/blanks/gone/chart.csv`;
    expect((await page.request.get(address)).status()).toBe(404);
    expect((await fetch(address)).status).toBe(401);
  });
});
