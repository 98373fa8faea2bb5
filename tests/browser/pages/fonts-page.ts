import type { Locator, Page } from '@playwright/test';

/** The shop's fonts: its own, and those that come with the app. */
export class FontsPage {
  constructor(readonly page: Page) {}

  async open(): Promise<void> {
    await this.page.getByRole('navigation', { name: 'Bench' }).getByRole('link', { name: 'Fonts' }).click();
    await this.page.getByRole('heading', { level: 1, name: 'Fonts' }).waitFor();
  }

  get refusal(): Locator {
    return this.page.getByRole('main').getByRole('alert');
  }

  get came(): Locator {
    return this.page.getByRole('status').filter({ hasText: 'is here' });
  }

  own(family: string): Locator {
    return this.page.getByRole('list', { name: 'Your own fonts' }).getByRole('listitem').filter({ hasText: family });
  }

  shipped(family: string): Locator {
    return this.page
      .getByRole('list', { name: 'Fonts that are here from the start' })
      .getByRole('listitem')
      .filter({ has: this.page.getByRole('heading', { name: family }) });
  }

  async add(file: string | { name: string; mimeType: string; buffer: Buffer }): Promise<void> {
    await this.page.getByLabel('Add a font').setInputFiles(file);
  }

  async stopOffering(family: string): Promise<void> {
    await this.own(family).getByRole('button', { name: 'Stop offering' }).click();
  }
}
