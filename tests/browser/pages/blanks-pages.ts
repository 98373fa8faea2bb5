import type { Locator, Page } from '@playwright/test';

/** The shop's list of blanks, a new blank, and a blank's own page. */
export class BlanksPages {
  constructor(readonly page: Page) {}

  async openList(): Promise<void> {
    await this.page.getByRole('navigation', { name: 'Bench' }).getByRole('link', { name: 'Blanks' }).click();
    await this.page.getByRole('heading', { level: 1, name: 'Blanks' }).waitFor();
  }

  async beginNew(): Promise<void> {
    await this.page.getByRole('link', { name: /^(New blank|Begin from a starter chart)$/ }).click();
    await this.page.getByRole('heading', { level: 1, name: 'New blank' }).waitFor();
  }

  async describe(blank: { name: string; kind: string; cutFor: string; fabric: string }): Promise<void> {
    const { page } = this;
    await page.getByLabel('Name', { exact: true }).fill(blank.name);
    await page.getByLabel('Fabric').fill(blank.fabric);
    await page.getByLabel('Kind').selectOption({ label: blank.kind });
    await page.getByRole('radio', { name: blank.cutFor }).check();
  }

  /** Opens the place for a supplier's chart, where it is not open, and pastes one. */
  async pasteChart(text: string): Promise<void> {
    const area = this.page.getByLabel('Your supplier’s chart');
    if (!(await area.isVisible())) await this.page.getByText('Paste or load a chart').click();
    await area.fill(text);
  }

  async loadChart(file: { name: string; mimeType: string; buffer: Buffer }): Promise<void> {
    const field = this.page.getByLabel('Or load a CSV file');
    if (!(await field.isVisible())) await this.page.getByText('Paste or load a chart').click();
    await field.setInputFiles(file);
  }

  /** What was understood of the pasted chart. */
  get understood(): Locator {
    return this.page.getByRole('status').filter({ hasText: 'What was understood' });
  }

  async putIntoTable(): Promise<void> {
    await this.page.getByRole('button', { name: 'Put it into the table' }).click();
  }

  /** The field of one measure of one size: `Youth M`, `Chest`. */
  measure(size: string, measure: string): Locator {
    return this.page.getByLabel(`${size}, ${measure}`, { exact: true });
  }

  cost(size: string): Locator {
    return this.measure(size, 'cost');
  }

  async showMoreMeasures(): Promise<void> {
    await this.page.getByRole('button', { name: /^Show \d+ more measures$/ }).click();
  }

  async putOnList(): Promise<void> {
    await this.page.getByRole('button', { name: 'Put it on the list' }).click();
  }

  async keepChart(): Promise<void> {
    await this.page.getByRole('button', { name: 'Keep the chart' }).click();
  }

  /** What is wrong, above a form. */
  get problems(): Locator {
    return this.page.getByRole('main').getByRole('alert');
  }

  /** All that the chart's fields show, row by row. */
  async chartTexts(): Promise<string[][]> {
    const rows = await this.page.getByRole('region', { name: 'Size chart, one row a size' }).getByRole('row').all();
    const texts = rows.slice(1).map(async (row) => {
      const fields = await row.getByRole('textbox').all();
      return Promise.all(fields.map((field) => field.inputValue()));
    });
    return Promise.all(texts);
  }

  async saveCsv(): Promise<Buffer> {
    const waiting = this.page.waitForEvent('download');
    await this.page.getByRole('link', { name: 'Save as CSV' }).click();
    const stream = await (await waiting).createReadStream();
    const parts: Buffer[] = [];
    for await (const part of stream) parts.push(part as Buffer);
    return Buffer.concat(parts);
  }

  async addUsualColours(...names: string[]): Promise<void> {
    for (const name of names) await this.page.getByRole('button', { name: `Add ${name}`, exact: true }).click();
    await this.page.getByRole('button', { name: 'Keep the colours' }).click();
    await this.page.getByText('Colours kept.').waitFor();
  }

  /** Types a count of one size and colour. */
  async count(size: string, colour: string, count: string): Promise<void> {
    await this.measure(size, colour).fill(count);
  }

  async keepCounts(): Promise<void> {
    await this.page.getByRole('button', { name: 'Keep the counts' }).click();
  }

  listed(name: string): Locator {
    return this.page.getByRole('listitem').filter({ has: this.page.getByRole('heading', { name, exact: true }) });
  }
}
