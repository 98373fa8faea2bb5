import AxeBuilder from '@axe-core/playwright';
import { starterChart } from '@/lib/domain/garment/starter-charts';
import type { Point } from '@/lib/domain/geometry/point';
import { blankFromStyle, styleOfChart } from '@/lib/domain/layout/blank-from-style';
import { flatOf } from '@/lib/domain/layout/scene';
import { takePhotograph } from '../photographs/taken-photograph';
import { cookiesOf, openShopApart } from './fixtures/apart';
import { expect, phone, journey as test, watchPage } from './fixtures/shop';
import { BlanksPages } from './pages/blanks-pages';
import { JobPage } from './pages/job-page';
import { LayoutTable } from './pages/layout-table';
import { PhotographsPages } from './pages/photographs-pages';
import { RevisionPages } from './pages/revision-pages';

test.describe.configure({ timeout: 180_000 });
test.use({ viewport: { width: 1440, height: 900 } });

/** The front of the middle size of the starter chart of crew tees, and a photograph of it, a little turned. */
async function photographOfTee() {
  const chart = starterChart('crew-tee-adult');
  const made = chart && blankFromStyle(styleOfChart(chart, { name: 'Crew tee', fabric: '' }), { blankId: 'tee' });
  const size = made?.ok ? made.blank.sizes.find(({ label }) => label === 'M') : undefined;
  if (!(made?.ok && size)) throw new Error('no size M');
  const flat = flatOf('crewTee', size, 'front');
  const taken = await takePhotograph(flat, {
    widthPx: 1_500,
    heightPx: 1_800,
    pxPerMm: 1.7,
    turnDeg: 4,
    markAt: { x: -100, y: 600 },
  });
  const { collarSeamCentre, hemCentre, underarm } = flat.points;
  if (!(collarSeamCentre && hemCentre && underarm)) throw new Error('no places');
  const half = (size.measuresUm.chestWidth ?? 0) / 2_000;
  const at = (point: Point) => {
    const { x, y } = taken.inPicture(point);
    return { x: Math.round(x), y: Math.round(y) };
  };
  return {
    jpeg: taken.jpeg,
    collar: at(collarSeamCentre),
    hem: at(hemCentre),
    left: at({ x: -half, y: underarm.y + 25.4 }),
    right: at({ x: half, y: underarm.y + 25.4 }),
  };
}

test('a blank is photographed, set to scale, and shown to the customer on cloth', async ({ page, browser, shop }) => {
  const maker = openShopApart(shop);
  await page.context().addCookies(cookiesOf(maker, shop.url));
  const blanks = new BlanksPages(page);
  const photographs = new PhotographsPages(page);
  const tee = await photographOfTee();

  await test.step('a photograph needs a size and a colour, and a file that is a picture', async () => {
    await page.goto('/blanks/new');
    await blanks.describe({ name: 'Boathouse tee', kind: 'Crew tee', cutFor: 'Adults', fabric: 'Cotton' });
    await page.getByRole('button', { name: 'Use the starter chart' }).click();
    await blanks.putOnList();
    await page.getByRole('heading', { level: 1, name: 'Boathouse tee' }).waitFor();
    await photographs.open();
    await expect(page.getByText('Give this blank a size chart and colours first.')).toBeVisible();
    await page.getByRole('link', { name: 'Back to the blank' }).click();
    await blanks.addUsualColours('Navy');
    await photographs.open();
    await photographs.choose({ side: 'Front', size: 'M', colour: 'Navy' });
    await photographs.upload(Buffer.from('Dear printer'));
    await expect(page.getByRole('main').getByRole('alert')).toContainText('This file is not a picture.');
    await photographs.upload(tee.jpeg);
    await photographs.untilSetting();
  });

  await test.step('the two points are set by dragging, clicking and keys, and say what they mean', async () => {
    await photographs.drag('A', tee.collar);
    await photographs.mark('B').focus();
    await photographs.click(tee.hem);
    // A pixel of the screen is more than one of the photograph: the keys do the rest.
    for (const [letter, to] of [
      ['A', tee.collar],
      ['B', tee.hem],
    ] as const) {
      for (const [which, key, back, wanted] of [
        ['Across', 'ArrowRight', 'ArrowLeft', to.x],
        ['Down', 'ArrowDown', 'ArrowUp', to.y],
      ] as const) {
        const off = wanted - Number(await photographs.field(letter, which).inputValue());
        expect(Math.abs(off), `${letter} ${which}`).toBeLessThanOrEqual(4);
        await photographs.mark(letter).focus();
        for (let step = 0; step < Math.abs(off); step += 1) await page.keyboard.press(off > 0 ? key : back);
        await expect(photographs.field(letter, which)).toHaveValue(String(wanted));
      }
    }
    await page.keyboard.press('Shift+ArrowDown');
    await expect(photographs.field('B', 'Down')).toHaveValue(String(tee.hem.y + 10));
    await page.keyboard.press('Shift+ArrowUp');
    await expect(
      page.getByText(/On the flat, size M: .* from A to B\. 43 px to the inch, turned by 4°\./),
    ).toBeVisible();
  });

  await test.step('points that cannot be meant are refused in one sentence, and nothing is kept of them', async () => {
    await photographs.field('B', 'Down').fill(String(tee.collar.y + 40));
    await expect(page.getByText('A and B are too near one another')).toBeVisible();
    await photographs.keep();
    await expect(page.getByRole('main').getByRole('alert')).toContainText('A and B are too near one another');
    await expect(photographs.field('B', 'Down')).toHaveValue(String(tee.collar.y + 40));
    await photographs.field('B', 'Down').fill(String(tee.hem.y));
  });

  await test.step('a third measure shows how far the photograph is from the chart', async () => {
    await page.getByRole('button', { name: 'Check the chest width' }).click();
    for (const [letter, to] of [
      ['C', tee.left],
      ['D', tee.right],
    ] as const) {
      await photographs.field(letter, 'Across').fill(String(to.x));
      await photographs.field(letter, 'Down').fill(String(to.y));
    }
    await expect(page.getByText('Chest width in the photograph 20 in, chart 20 in.')).toBeVisible();
    await expect(page.getByText('They agree to 1/8 in.')).toBeVisible();
    await photographs.field('D', 'Across').fill(String(tee.right.x + 43));
    await expect(page.getByText('1 in wider in the photograph, more than the cut varies (3/4 in).')).toBeVisible();
    await photographs.field('D', 'Across').fill(String(tee.right.x));
    const found = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze();
    expect(found.violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
    await photographs.keep();
    await expect(page.getByText('Kept. The photograph is set to scale.')).toBeVisible();
    await page.reload();
    await expect(photographs.field('D', 'Across')).toHaveValue(String(tee.right.x));
    await page.getByRole('link', { name: 'All photographs' }).click();
    await expect(page.getByText(/Set to scale by .* in: collar seam, centre → hem, centre\./)).toBeVisible();
  });

  const link = await test.step('a garment made from the blank takes it up, and the revision is sent', async () => {
    const job = new JobPage(page);
    await page.goto(`/jobs/${maker.jobId}`);
    const form = await job.newGarment();
    await form.getByLabel('What it is').selectOption({ label: 'Boathouse tee · S to 5XL' });
    await form.getByLabel('Name', { exact: true }).fill('Relay tee');
    await form.getByRole('radio', { name: 'Navy', exact: true }).check();
    await form.getByRole('button', { name: 'Add the garment' }).click();
    await job.garment('Relay tee').getByText('On a photograph', { exact: true }).click();
    await expect(page.getByText('The customer can look at the shop’s photograph, too: Front, M.')).toBeVisible();
    await expect(page.getByRole('button', { name: 'Take the photographs as they are now' })).toHaveCount(0);
    await page.getByRole('button', { name: 'Show the drawing alone' }).click();
    await page.getByRole('button', { name: 'Show on the shop’s photograph' }).click();
    await page.getByRole('button', { name: 'Show the drawing alone' }).waitFor();
    await job.enterCounts({ 'Adult sizes': { M: 6, L: 2 } });
    await job.addArt('prisma/demo/heron-crest.png');
    await expect(page.getByText(/^sharp to/)).toBeVisible();
    await job.openTable();
    const table = new LayoutTable(page);
    await table.layOn('heron-crest.png', 'Full front');
    await expect(table.saved).toBeVisible();
    await table.toSending();
    const revisions = new RevisionPages(page);
    await revisions.send('Please look it over.');
    return revisions.customerLink();
  });

  await test.step('the customer looks at the drawing first and at the photograph without scripts', async () => {
    const context = await browser.newContext({ ...phone, javaScriptEnabled: false });
    const customer = await context.newPage();
    const seen = watchPage(customer);
    await customer.goto(link);
    const drawn = customer.getByRole('img', { name: /^Front of the Relay tee in Navy, size M/ });
    const photograph = customer.getByRole('img', { name: /^On the shop’s photograph\. Front/ });
    await expect(drawn).toBeVisible();
    await expect(photograph).toBeHidden();
    await customer.getByRole('radio', { name: 'Photograph' }).check();
    await expect(drawn).toBeHidden();
    await expect(photograph).toBeVisible();
    await expect(
      customer.getByText('A photograph of the shop’s own garment; sizes and distances are those of the drawing.'),
    ).toBeVisible();
    const size = () => photograph.evaluate((image) => (image instanceof HTMLImageElement ? image.naturalWidth : 0));
    await expect.poll(size).toBe(1_100);
    await expect(customer.getByRole('radio', { name: 'Photograph' })).toHaveCount(1);
    expect(await customer.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    expect(seen).toEqual([]);
    await context.close();
  });
});
