import type { Page } from '@playwright/test';

export type NewJobWords = {
  readonly customer: string;
  readonly email: string;
  readonly occasion: string;
  /** Wall clock, `YYYY-MM-DDTHH:mm`. */
  readonly neededBy: string;
  readonly notes: string;
};

/** A job on the bench, from making it to sending it. */
export class JobPage {
  constructor(readonly page: Page) {}

  get nextStep() {
    return this.page.getByRole('main');
  }

  async make(job: NewJobWords): Promise<void> {
    const { page } = this;
    await page.getByRole('link', { name: 'New job' }).first().click();
    await page.getByLabel('Customer', { exact: true }).fill(job.customer);
    await page.getByLabel('E-mail').fill(job.email);
    await page.getByLabel('Occasion').fill(job.occasion);
    await page.getByLabel('Needed by').fill(job.neededBy);
    await page.getByLabel('Notes').fill(job.notes);
    await page.getByRole('button', { name: 'Make the job' }).click();
    await page.getByRole('heading', { level: 1, name: job.occasion }).waitFor();
  }

  async addTee(name: string, cloth: string): Promise<void> {
    const { page } = this;
    const form = page.locator('#add-garment');
    const submit = form.getByRole('button', { name: 'Add the garment' });
    if (!(await submit.isVisible())) await form.getByText('Add a garment', { exact: true }).click();
    await form.getByLabel('Name', { exact: true }).fill(name);
    await form.getByRole('checkbox', { name: /^Adult/ }).check();
    await form.getByRole('checkbox', { name: /^Youth/ }).check();
    await form.getByRole('radio', { name: cloth, exact: true }).check();
    await submit.click();
    await page.getByRole('heading', { name, exact: true }).waitFor();
  }

  /** Types counts by band and size, such as `{ 'Youth sizes': { M: 4 } }`, and keeps them. */
  async enterCounts(counts: Record<string, Record<string, number>>): Promise<void> {
    const { page } = this;
    for (const [band, sizes] of Object.entries(counts)) {
      const group = page.getByRole('group', { name: band });
      for (const [size, count] of Object.entries(sizes))
        await group.getByLabel(size, { exact: true }).fill(String(count));
    }
    await page.getByRole('button', { name: 'Keep the counts' }).click();
    await page.getByText('Counts are kept.').waitFor();
  }

  async addArt(path: string): Promise<void> {
    await this.page.getByLabel(/^Add (more )?art$/).setInputFiles(path);
  }

  /** The way to the table is the job's first button while placing art is what comes next. */
  async openTable(): Promise<void> {
    await this.page.getByRole('link', { name: /^(Layout table|Place the art)$/ }).click();
  }
}
