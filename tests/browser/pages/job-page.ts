import type { Locator, Page } from '@playwright/test';

export type NewJobWords = {
  readonly customer: string;
  readonly email: string;
  readonly occasion: string;
  /** Wall clock, `YYYY-MM-DDTHH:mm`. */
  readonly neededBy: string;
  readonly notes: string;
};

export type NewGarmentWords = {
  /** As the list of styles has it: `Crew tee · S to 5XL`. */
  readonly style: string;
  /** More sizes to hang under it: `Youth sizes, XS to XL`. */
  readonly also?: readonly string[];
  readonly name: string;
  readonly cloth: string;
  readonly second?: string;
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
    await this.addGarment({ style: 'Crew tee · S to 5XL', also: ['Youth sizes, XS to XL'], name, cloth });
  }

  /** The form of a new garment, opened. */
  async newGarment(): Promise<Locator> {
    const form = this.page.locator('#add-garment');
    const submit = form.getByRole('button', { name: 'Add the garment' });
    if (!(await submit.isVisible())) await form.getByText('Add a garment', { exact: true }).click();
    return form;
  }

  async addGarment({ style, also = [], name, cloth, second }: NewGarmentWords): Promise<void> {
    const form = await this.newGarment();
    await form.getByLabel('What it is').selectOption({ label: style });
    for (const sizes of also) await form.getByRole('checkbox', { name: sizes }).check();
    await form.getByLabel('Name', { exact: true }).fill(name);
    await form.getByRole('radio', { name: cloth, exact: true }).check();
    if (second) await form.getByLabel('Sleeves and collar').selectOption({ label: second });
    await form.getByRole('button', { name: 'Add the garment' }).click();
    await this.garment(name).waitFor();
  }

  /** The card of a garment of the job. */
  garment(name: string): Locator {
    return this.page.getByRole('article', { name, exact: true });
  }

  /** Opens what can be changed about a garment. */
  async openChanges(name: string, what: 'Name and colour' | 'Sizes and charts' | 'Remove'): Promise<void> {
    await this.garment(name).getByText(what, { exact: true }).click();
  }

  /** Hangs more sizes under a garment. */
  async addSizes(name: string, sizes: string): Promise<void> {
    const garment = this.garment(name);
    await garment.getByLabel('Add sizes').selectOption({ label: sizes });
    await garment.getByRole('button', { name: 'Add these sizes' }).click();
  }

  /** Types counts by band and size, such as `{ 'Youth sizes': { M: 4 } }`, and keeps them. */
  async enterCounts(counts: Record<string, Record<string, number>>, garment?: string): Promise<void> {
    const page = garment === undefined ? this.page : this.garment(garment);
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
