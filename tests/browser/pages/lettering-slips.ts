import type { Page } from '@playwright/test';

/** Names, numbers and fixed words on the layout table. */
export class LetteringSlips {
  constructor(readonly page: Page) {}

  get adding() {
    return this.page.getByRole('region', { name: 'Add lettering' });
  }

  /** Sets what is offered: a name on the upper back first, then a number under it. */
  async setOn(): Promise<void> {
    await this.adding.getByRole('button', { name: 'Set it on' }).click();
  }

  /** The open slip of a lettering print. */
  slip(print: string) {
    return this.page.getByRole('region', { name: print, exact: true });
  }

  async say(print: string, words: string): Promise<void> {
    await this.slip(print).getByLabel('What it says').fill(words);
  }

  async setIn(print: string, font: string): Promise<void> {
    await this.slip(print).getByLabel('Font').selectOption({ label: font });
  }

  async round(print: string, width: string): Promise<void> {
    const field = this.slip(print).getByLabel('Line round the letters');
    await field.fill(width);
    await field.press('Enter');
  }

  /** How tall the letters are, on the tape beside them. */
  letterHeight(print: string) {
    return this.page.getByLabel(`Letter height of ${print}`);
  }

  /** Letters of any print as they hang on the line, as outlines. */
  get hung() {
    return this.page.getByRole('navigation').locator('path[data-print]');
  }
}
