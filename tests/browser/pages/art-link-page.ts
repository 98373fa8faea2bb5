import type { Locator, Page } from '@playwright/test';

/** Where a customer hands in pictures, opened with a link. */
export class ArtLinkPage {
  constructor(readonly page: Page) {}

  async open(link: string): Promise<void> {
    await this.page.goto(link);
  }

  /** A file that was made up, chosen on the device. */
  async choose(file: { name: string; mimeType: string; buffer: Buffer } | string): Promise<void> {
    await this.page.getByLabel(/^Choose (a|another) picture$/).setInputFiles(file);
  }

  /** Needed only where no scripts run. */
  async handOver(): Promise<void> {
    await this.page.getByRole('button', { name: 'Hand it over' }).click();
  }

  /** A picture that was sent, with what was seen in it. */
  sent(name: string): Locator {
    return this.page.getByRole('article').filter({ has: this.page.getByRole('heading', { name, exact: true }) });
  }
}
