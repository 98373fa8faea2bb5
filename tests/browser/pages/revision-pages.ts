import type { Page } from '@playwright/test';

/** Sending a revision, its own page on the bench, and its specification. */
export class RevisionPages {
  constructor(readonly page: Page) {}

  async send(note: string): Promise<void> {
    const { page } = this;
    await page.getByLabel(/^A note to/).fill(note);
    await page.getByRole('button', { name: /^Send Rev/ }).click();
    await page.getByRole('heading', { name: 'Reach the customer' }).waitFor();
  }

  get sendButton() {
    return this.page.getByRole('button', { name: /^Send Rev/ });
  }

  /** What the send page says of a print that cannot be pressed as it lies, and the field to say why it is meant so. */
  stopped(print: string) {
    return this.page.getByRole('group', { name: print });
  }

  /** What else there is to look at before sending. */
  get lookAtThis() {
    return this.page.getByRole('status').filter({ hasText: 'Look at this before you send' });
  }

  get refusal() {
    return this.page.getByRole('alert').filter({ hasText: /Please look at this|Nothing was sent/ });
  }

  /** The address of the customer's page, as the bench shows it to be copied. */
  async customerLink(): Promise<string> {
    return this.page
      .getByLabel(/^Link for/)
      .first()
      .inputValue();
  }

  get fullSeal() {
    return this.page.getByText(/^[0-9a-f]{64}$/);
  }

  async downloadSealedBytes(): Promise<string> {
    return this.download(/sealed bytes/);
  }

  async downloadPicture(): Promise<string> {
    return this.download('Download the picture');
  }

  /** Saves what a link gives and returns where it lies. */
  async download(name: string | RegExp): Promise<string> {
    const [file] = await Promise.all([
      this.page.waitForEvent('download'),
      this.page.getByRole('link', { name }).first().click(),
    ]);
    return file.path();
  }

  async recordYes(by: { how: string; name: string }): Promise<void> {
    const { page } = this;
    await page.getByText('Record an answer', { exact: true }).click();
    await page.getByLabel('Yes, make these').check();
    await page.getByLabel(by.how).check();
    await page.getByLabel('Who said it').fill(by.name);
    await page.getByRole('button', { name: 'Record it' }).click();
  }

  async openSpecification(): Promise<void> {
    await this.page
      .getByRole('link', { name: /specification/i })
      .first()
      .click();
    await this.page.getByText('Before you press').waitFor();
  }
}
