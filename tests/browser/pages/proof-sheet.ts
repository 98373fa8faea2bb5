import type { Locator, Page } from '@playwright/test';

/** The four things that are ticked before a yes, in the order they stand. */
const TICKS = [/spelled right$/, /how many of each/, /colours are right/, /in the right place$/];

/** The customer's page for a revision. */
export class ProofSheet {
  constructor(readonly page: Page) {}

  /** Opens a link; with a number, an earlier look by its address. */
  async open(link: string, number?: number): Promise<void> {
    await this.page.goto(number === undefined ? link : `${link}?rev=${number}`);
  }

  /** The picture of a side that is shown large: the one of the size that is chosen. */
  picture(side: string): Locator {
    return this.page.getByRole('img', { name: new RegExp(`^${side} of the .*, size `) });
  }

  /** The line: one side of every size, hung side by side. */
  line(side: string): Locator {
    return this.page.getByRole('img', { name: new RegExp(`^${side} of the .*, all sizes side by side`) });
  }

  /** A size on the line, by how it is said: with how wide it lies. */
  size(size: string): Locator {
    return this.page.getByRole('radio', { name: new RegExp(`^${size}, `) });
  }

  /** Chooses a size as a thumb does, by its words. */
  async chooseSize(size: string): Promise<void> {
    await this.page
      .locator('label')
      .filter({ has: this.page.getByText(size, { exact: true }) })
      .click();
  }

  get ticks(): Locator {
    return this.page.getByRole('checkbox');
  }

  get fullName(): Locator {
    return this.page.getByLabel('Your full name');
  }

  get changeWords(): Locator {
    return this.page.getByLabel('What should be different?');
  }

  get yesButton(): Locator {
    return this.page.getByRole('button', { name: 'Yes, make these' });
  }

  get sendChangeButton(): Locator {
    return this.page.getByRole('button', { name: 'Send the change' });
  }

  /** What came of the last answer, when it was not taken. */
  get refusal(): Locator {
    return this.page.getByRole('alert').filter({ hasText: 'Your answer was not sent yet' });
  }

  /** The answer that stands. */
  get answer(): Locator {
    return this.page.locator('#answer');
  }

  async tickAll(): Promise<void> {
    for (const name of TICKS) await this.page.getByLabel(name).check();
  }

  /** Opens the place to write a change, unless it is open. */
  async openChange(): Promise<void> {
    if (!(await this.changeWords.isVisible())) await this.page.getByText('Change something first').click();
  }

  async sayYes(fullName: string): Promise<void> {
    await this.tickAll();
    await this.fullName.fill(fullName);
    await this.yesButton.click();
  }

  async askForChange(words: string, fullName = ''): Promise<void> {
    await this.fullName.fill(fullName);
    await this.openChange();
    await this.changeWords.fill(words);
    await this.sendChangeButton.click();
  }
}
