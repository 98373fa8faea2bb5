import type { Locator, Page } from '@playwright/test';

/** The list of a job's people, as it is written in. */
export class PeoplePage {
  constructor(readonly page: Page) {}

  async open(jobId: string): Promise<void> {
    await this.page.goto(`/jobs/${jobId}/people`);
    await this.page.getByRole('heading', { level: 1, name: 'People' }).waitFor();
  }

  /** A cell by its column and line; of the line that can be begun where none is named. */
  cell(column: string, line?: number): Locator {
    const name = line === undefined ? `${column}, new line` : `${column}, line ${line}`;
    return this.page.getByRole('textbox', { name, exact: true });
  }

  /** What is found on a line, as it is described by a cell of it. */
  found(text: string): Locator {
    return this.page.getByText(text);
  }

  get saved(): Locator {
    return this.page.getByRole('status').filter({ hasText: '✓ Saved' });
  }

  get toSettle(): Locator {
    return this.page.getByRole('region', { name: 'Tools of the list' }).locator('output');
  }

  /** Writes cells one after the other by the keyboard alone, from one on to the right. */
  async type(from: Locator, ...texts: string[]): Promise<void> {
    await from.focus();
    for (const [at, text] of texts.entries()) {
      if (at > 0) await this.page.keyboard.press('ArrowRight');
      await this.page.keyboard.type(text);
    }
    await this.page.keyboard.press('Enter');
  }

  /** Opens the look at a pasted list. */
  async look(text: string): Promise<void> {
    await this.page.getByRole('button', { name: 'Paste or load a list' }).click();
    await this.page.getByLabel('A list, as you got it').fill(text);
  }

  /** Pastes a block into a cell, as a spreadsheet hands it over. */
  async paste(into: Locator, text: string): Promise<void> {
    await into.focus();
    await into.evaluate((cell, block) => {
      const clipboardData = new DataTransfer();
      clipboardData.setData('text/plain', block);
      cell.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
    }, text);
  }
}
