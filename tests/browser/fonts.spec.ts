import AxeBuilder from '@axe-core/playwright';
import { ownShop } from './fixtures/own-shop';
import { expect, test } from './fixtures/shop';
import { OWNER } from './fixtures/shop-side';
import { Door } from './pages/door';
import { FontsPage } from './pages/fonts-page';

const OWN = 'node_modules/@expo-google-fonts/rubik/300Light_Italic/Rubik_300Light_Italic.ttf';

const own = ownShop();

test('a font of the shop’s own is handed over, shown set in itself, and taken off the list', async ({ page }) => {
  await page.goto(`${own.server.url}/sign-in`);
  await new Door(page).signIn(OWNER.email, OWNER.password);
  const fonts = new FontsPage(page);
  await fonts.open();
  await expect(fonts.shipped('Graduate').getByRole('img', { name: /set in Graduate/ })).toBeVisible();
  expect((await page.request.get(await licenceAddress(fonts))).status()).toBe(200);

  // A picture that was renamed: what counts is in the file (PNG Third Edition, 5.2 PNG signature).
  const renamed = { name: 'crest.ttf', mimeType: 'font/ttf', buffer: Buffer.from('\x89PNG\r\n\x1a\n', 'latin1') };
  await fonts.add(renamed);
  await expect(fonts.refusal).toContainText('crest.ttf is a picture');

  await fonts.add(OWN);
  await expect(fonts.came).toContainText('Rubik Light Italic is here');
  await expect(fonts.own('Rubik').getByRole('img', { name: /set in Rubik/ })).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

  await fonts.stopOffering('Rubik');
  await expect(fonts.own('Rubik')).toHaveCount(0);
});

async function licenceAddress(fonts: FontsPage): Promise<string> {
  const link = fonts.shipped('Graduate').getByRole('link', { name: 'Licence of Graduate' });
  return `${own.server.url}${await link.getAttribute('href')}`;
}
