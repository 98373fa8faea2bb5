import type { Page } from '@playwright/test';

/** What a new owner types at the first visit. */
export type NewShop = {
  readonly code: string;
  readonly shopName: string;
  readonly unit: 'Inches' | 'Centimetres';
  readonly timeZone: string;
  readonly currency: string;
  readonly ownerName: string;
  readonly email: string;
  readonly password: string;
};

/** The pages before the bench: setting up the shop, and signing in. */
export class Door {
  constructor(readonly page: Page) {}

  async visit(): Promise<void> {
    await this.page.goto('/');
  }

  async setUp(shop: NewShop): Promise<void> {
    const { page } = this;
    await page.getByLabel('One-time code').fill(shop.code);
    await page.getByLabel('Shop name').fill(shop.shopName);
    await page.getByLabel(shop.unit).check();
    await page.getByLabel('Time zone').selectOption(shop.timeZone);
    await page.getByLabel('Currency').selectOption(shop.currency);
    await page.getByLabel('Your name').fill(shop.ownerName);
    await page.getByLabel('E-mail').fill(shop.email);
    await page.getByLabel('Password', { exact: true }).fill(shop.password);
    await page.getByRole('button', { name: 'Open the shop' }).click();
  }

  async signIn(email: string, password: string): Promise<void> {
    const { page } = this;
    await page.getByLabel('E-mail').fill(email);
    await page.getByLabel('Password', { exact: true }).fill(password);
    await page.getByRole('button', { name: 'Sign in' }).click();
  }
}
