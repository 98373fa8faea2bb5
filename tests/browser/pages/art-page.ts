import type { Locator, Page } from '@playwright/test';

/** The page of one picture: what is wrong with it, its mends, before and after, keeping. */
export class ArtPage {
  constructor(readonly page: Page) {}

  /** The way to the page of a picture, on the job's page: `Look and mend: crest.png`. */
  linkTo(picture: string): Locator {
    return this.page.getByRole('link', { name: new RegExp(`: ${picture.replaceAll('.', '\\.')}$`) });
  }

  /** From the job's page. */
  async open(picture: string): Promise<void> {
    await this.linkTo(picture).click();
    await this.page.getByRole('heading', { level: 1, name: picture }).waitFor();
  }

  get findings(): Locator {
    return this.page.getByRole('list', { name: 'On the shirt' }).getByRole('listitem');
  }

  /** What was done, the original first. */
  get steps(): Locator {
    return this.page.getByRole('list', { name: 'Steps' }).getByRole('listitem');
  }

  /** Before and after on a cloth: two pictures side by side. */
  pairOn(cloth: string): Locator {
    return this.page.getByRole('group', { name: `Before and after on ${cloth}` });
  }

  /** Takes up a mend from the list of all mends. */
  async begin(mend: string): Promise<void> {
    await this.page.getByRole('region', { name: 'Mend it' }).getByRole('button', { name: mend, exact: true }).click();
    await this.page.getByRole('region', { name: mend }).waitFor();
  }

  /** Everything is worked out that is to be seen. */
  async untilWorkedOut(): Promise<void> {
    await this.page.getByText(/^Working on all/).waitFor({ state: 'hidden' });
  }

  async take(words = 'Take this step'): Promise<void> {
    await this.page.getByRole('button', { name: words }).click();
  }

  edge(name: 'Left' | 'Upper' | 'Right' | 'Lower'): Locator {
    return this.page.getByRole('slider', { name: `${name} edge of the box` });
  }

  /** A number of the box in hand. */
  field(name: 'Left' | 'Top' | 'Width' | 'Height'): Locator {
    return this.page.getByLabel(`${name}, px`);
  }

  /** How much of what a locator shows is of one colour, `#RRGGBB`, 0 to 1. */
  async shareOf(hex: string, shown: Locator): Promise<number> {
    const png = (await shown.screenshot()).toString('base64');
    return this.page.evaluate(
      async ({ png, hex }) => {
        const image = new Image();
        image.src = `data:image/png;base64,${png}`;
        await image.decode();
        const canvas = document.createElement('canvas');
        Object.assign(canvas, { width: image.width, height: image.height });
        const drawing = canvas.getContext('2d');
        if (!drawing) throw new Error('nothing to draw on');
        drawing.drawImage(image, 0, 0);
        const { data } = drawing.getImageData(0, 0, image.width, image.height);
        const wanted = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
        let count = 0;
        for (let at = 0; at < data.length; at += 4) {
          if (wanted.every((value, channel) => Math.abs(value - (data[at + channel] ?? 0)) <= 2)) count += 1;
        }
        return count / (data.length / 4);
      },
      { png, hex },
    );
  }
}
