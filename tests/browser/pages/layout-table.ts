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

  /** Lays another garment on the table, by its name and cloth: `Tote, Natural`. */
  async chooseGarment(nameAndCloth: string): Promise<void> {
    await this.page.getByRole('combobox', { name: 'Garment', exact: true }).selectOption({ label: nameAndCloth });
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

  /** The open slip of a print, its name as the heading. */
  slip(print: string) {
    return this.page.getByRole('region', { name: print, exact: true });
  }

  /** Names of the prints of the side that is up, as the slips list them, the one on top first. */
  get pile() {
    return this.page.getByRole('list', { name: /what lies on top first$/ }).locator('> li');
  }

  /** What is read out to people who do not see the paper. */
  get said() {
    return this.page.getByRole('status');
  }

  async press(key: string): Promise<void> {
    await this.paper.focus();
    await this.page.keyboard.press(key);
  }

  get commandList() {
    return this.page.getByRole('dialog', { name: 'What you can do here' });
  }

  command(name: string) {
    return this.commandList.getByRole('option', { name: new RegExp(`^${name}`) });
  }

  async listCommands(): Promise<void> {
    await this.press('Shift+?');
    await this.commandList.waitFor();
  }

  /** Two copies of one layout, side by side. */
  get bothCopies() {
    return this.page.getByRole('dialog', { name: 'This layout was changed somewhere else' });
  }

  /** The code for the maker's phone. */
  get phoneCode() {
    return this.page.getByRole('dialog', { name: 'Add a picture with your phone' });
  }

  async showPhoneCode(): Promise<string> {
    await this.page.getByRole('button', { name: 'Add a picture with your phone' }).click();
    const address = await this.phoneCode.getByRole('link').getAttribute('href');
    if (!address) throw new Error('the code has no address');
    return address;
  }

  /** On a phone the slips are a sheet: opens it. */
  async openSlips(): Promise<void> {
    await this.page.getByRole('button', { name: /Slips$/ }).click();
  }
}
