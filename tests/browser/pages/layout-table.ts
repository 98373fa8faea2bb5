import type { Page } from '@playwright/test';

/** The table where prints are placed. Readings are typed on the tape, in the shop's unit. */
export class LayoutTable {
  constructor(readonly page: Page) {}

  /** The field on the tape: width, drop or across of the print in hand. */
  reading(which: 'Width' | 'Height' | 'Drop' | 'Across', print: string) {
    return this.page.getByLabel(`${which} of ${print}`).first();
  }

  get saved() {
    return this.page.getByText(/^saved \d/);
  }

  async layOn(picture: string, location: string): Promise<void> {
    const { page } = this;
    const add = page.getByRole('region', { name: 'Add a picture' });
    await add.getByRole('radio', { name: picture }).check();
    await add.getByLabel('Location').selectOption({ label: location });
    await add.getByRole('button', { name: 'Lay it on' }).click();
  }

  async type(which: 'Width' | 'Height' | 'Drop' | 'Across', print: string, value: string): Promise<void> {
    const field = this.reading(which, print);
    await field.fill(value);
    await field.press('Enter');
  }

  async showSize(size: string): Promise<void> {
    await this.page.getByRole('button', { name: new RegExp(`^Show ${size}(,|$)`) }).click();
  }

  /** Moves the print in hand with an arrow key, the paper having the focus. */
  async nudge(key: 'ArrowUp' | 'ArrowDown' | 'ArrowLeft' | 'ArrowRight'): Promise<void> {
    await this.paper.focus();
    await this.page.keyboard.press(key);
  }

  get paper() {
    return this.page.getByRole('application');
  }

  async undo(): Promise<void> {
    await this.page.getByRole('button', { name: /^Undo/ }).click();
  }

  async redo(): Promise<void> {
    await this.page.getByRole('button', { name: /^Redo/ }).click();
  }

  async toSending(): Promise<void> {
    await this.page.getByRole('link', { name: /^Send Rev/ }).click();
  }
}
