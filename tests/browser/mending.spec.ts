import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { ownShop } from './fixtures/own-shop';
import { expect, phone, test, watchPage } from './fixtures/shop';
import { ArtPage } from './pages/art-page';
import { JobPage } from './pages/job-page';
import { LayoutTable } from './pages/layout-table';

// The crest of the demo, drawn by ourselves, saved as a JPEG on white: 1800 × 2070 px, its backing #FFFFFF.
const ON_WHITE = 'heron-crest-on-white.jpg';
const WHITE = '#FFFFFF';

const own = ownShop();

/** How many pixels drawn on the paper are white; what lies over the paper does not count. */
function whiteOn(table: LayoutTable): Promise<number> {
  return table.paper.locator('canvas').evaluateAll((canvases) => {
    let count = 0;
    for (const canvas of canvases) {
      if (!(canvas instanceof HTMLCanvasElement) || canvas.width === 0) continue;
      const drawn = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
      for (let at = 0; at < drawn.length; at += 4) {
        if (drawn[at] === 255 && drawn[at + 1] === 255 && drawn[at + 2] === 255 && drawn[at + 3] === 255) count += 1;
      }
    }
    return count;
  });
}

async function seriousFaults(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag22aa']).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
}

test('a logo on white is found out, its backing knocked out, kept, and used on the print', async ({ page }) => {
  const { jobId } = own.side.layOut();
  const art = new ArtPage(page);
  const table = new LayoutTable(page);
  let whiteOnTable = 0;

  await test.step('it is uploaded and laid on the back, box and all', async () => {
    await own.signIn(page);
    await page.goto(`${own.server.url}/jobs/${jobId}`);
    await new JobPage(page).addArt(`prisma/demo/${ON_WHITE}`);
    await expect(art.linkTo(ON_WHITE)).toContainText('Look and mend');
    await page.goto(`${own.server.url}/jobs/${jobId}/table`);
    await table.layOn(ON_WHITE, 'Full back');
    await expect(table.saved).toBeVisible();
    await expect.poll(() => whiteOn(table)).toBeGreaterThan(2_000);
    whiteOnTable = await whiteOn(table);
  });

  await test.step('the box is found, with its colour, and offered to be knocked out', async () => {
    await page.goto(`${own.server.url}/jobs/${jobId}`);
    await art.open(ON_WHITE);
    const box = art.findings.filter({ hasText: 'A box behind it' });
    await expect(box).toContainText(WHITE);
    expect(await seriousFaults(page)).toEqual([]);
    await box.getByRole('button', { name: 'Knock out the backing' }).click();
  });

  await test.step('before and after are seen side by side on navy', async () => {
    await art.untilWorkedOut();
    const [before, after] = [art.pairOn('Navy').locator('svg').first(), art.pairOn('Navy').locator('svg').last()];
    await expect.poll(() => art.shareOf(WHITE, after)).toBeLessThan(0.01);
    expect(await art.shareOf(WHITE, before)).toBeGreaterThan(0.1);
    await art.take();
    await expect(art.steps.nth(1)).toContainText(`Backing ${WHITE} knocked out`);
    await expect(art.findings.filter({ hasText: 'A box behind it' })).toHaveCount(0);
  });

  await test.step('it is kept and the print carries it; the original stays', async () => {
    await page.getByRole('button', { name: 'Keep it and use it on the print' }).click();
    await expect(page.getByText('Kept as a picture of its own, and laid on the print')).toBeVisible();
    await expect(page.getByText('Full back on Relay tee: carries this picture')).toBeVisible();
    await expect(page.getByRole('link', { name: 'As it came' })).toBeVisible();
    await page.goto(`${own.server.url}/jobs/${jobId}/table`);
    await page.getByRole('button', { name: 'Turn it over' }).click();
    await expect.poll(() => whiteOn(table)).toBeLessThan(whiteOnTable / 4);
  });
});

test('a picture is cropped by keys and by numbers, and the step is undone and done again', async ({ page }) => {
  const { jobId } = own.side.layOut();
  const art = new ArtPage(page);
  await own.signIn(page);
  await page.goto(`${own.server.url}/jobs/${jobId}`);
  await art.open('crest.png');
  await art.begin('Crop it');
  const wide = Number(await art.field('Width').inputValue());
  await art.edge('Left').focus();
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('ArrowRight');
  await expect(art.field('Left')).toHaveValue('11');
  await expect(art.field('Width')).toHaveValue(String(wide - 11));
  await art.edge('Lower').focus();
  await page.keyboard.press('ArrowUp');
  await art.field('Width').fill('40');
  await expect(art.edge('Right')).toHaveAttribute('aria-valuenow', '51');
  const tall = Number(await art.field('Height').inputValue());
  expect(await seriousFaults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Crop to the box' }).press('Enter');
  await expect(art.steps.nth(1)).toContainText(`Cropped to 40 × ${tall} px`);
  await art.untilWorkedOut();
  await expect(page.getByText(/^Ink \d+ × \d+ px/)).toContainText('Ink 40 ×');
  await page.keyboard.press('Control+z');
  await expect(art.steps).toHaveCount(1);
  await expect(page.getByText(/^Ink \d+ × \d+ px/)).not.toContainText('Ink 40 ×');
  await page.getByRole('button', { name: 'Redo', exact: true }).click();
  await expect(art.steps).toHaveCount(2);
});

test('on a phone the picture stays in sight above the mend in hand', async ({ browser }) => {
  const { jobId } = own.side.layOut();
  const context = await browser.newContext(phone);
  const page = await context.newPage();
  const seen = watchPage(page);
  const art = new ArtPage(page);
  await own.signIn(page);
  await page.goto(`${own.server.url}/jobs/${jobId}`);
  await art.open('crest.png');
  await art.begin('Harden the edge');
  await expect(page.getByRole('slider', { name: 'Solid from' })).toBeInViewport();
  await expect(page.locator('svg:has(> title)').first()).toBeInViewport();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(phone.viewport.width);
  expect(await seriousFaults(page)).toEqual([]);
  expect(seen).toEqual([]);
  await context.close();
});
