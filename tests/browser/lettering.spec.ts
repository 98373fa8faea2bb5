import AxeBuilder from '@axe-core/playwright';
import { ownShop } from './fixtures/own-shop';
import { expect, test, watchPage } from './fixtures/shop';
import { LayoutTable } from './pages/layout-table';
import { LetteringSlips } from './pages/lettering-slips';

const own = ownShop();

test('a name and a number are set on the back, said and sized otherwise, and are there after the page is loaded again', async ({
  browser,
}) => {
  const { jobId } = own.side.layOut();
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await own.signIn(page);
  const seen = watchPage(page);
  await page.goto(`${own.server.url}/jobs/${jobId}/table`);
  const table = new LayoutTable(page);
  const lettering = new LetteringSlips(page);
  await table.showSize('M');

  await test.step('a name goes on the upper back, a number an inch under it', async () => {
    await lettering.setOn();
    // Starting heights, common practice, no source: names 2 in, numbers 8 in on an adult.
    await expect(lettering.letterHeight('Name, upper back')).toHaveValue('2 in');
    await lettering.setOn();
    await expect(lettering.letterHeight('Number, back number')).toHaveValue('8 in');
    // 3 1/2 in down, 2 in tall, 1 in under its foot.
    await expect(table.reading('Drop', 'Number, back number')).toHaveValue('6 1/2 in');
    // Both hang on the line in both sizes that are ordered.
    await expect(lettering.hung).toHaveCount(4);
  });

  await test.step('it is said, set and sized otherwise', async () => {
    const print = 'Number, back number';
    await lettering.say(print, 'Crew {number}');
    await lettering.setIn(print, 'Anton');
    await expect(lettering.slip(print).getByLabel('Font')).toHaveValue(/^[0-9a-f]{64}$/);
    await lettering.round(print, '2 mm');
    await expect(lettering.hung.last()).toHaveAttribute('stroke-width', '4');
    await lettering.round(print, 'wide');
    await expect(lettering.slip(print)).toContainText('Type a width from 0.1 to 10 mm, such as 2, or none.');
    await lettering.round(print, 'none');
    await lettering.letterHeight(print).fill('2');
    await lettering.letterHeight(print).press('Enter');
    await expect(lettering.slip(print).getByLabel('Letter height', { exact: true })).toHaveValue('2 in');
    await expect(lettering.slip(print)).toContainText('CREW 00 fits at 2 in.');
  });

  expect((await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag22aa']).analyze()).violations).toEqual([]);
  await expect(table.saved).toBeVisible();
  await page.reload();
  await expect(lettering.letterHeight('Number, back number')).toHaveValue('2 in');
  await expect(lettering.hung).toHaveCount(4);
  expect(seen).toEqual([]);
  await context.close();
});
