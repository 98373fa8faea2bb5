import type { Locator, Page } from '@playwright/test';

type Place = { readonly x: number; readonly y: number };

/** The photographs of a blank, and setting one to scale. */
export class PhotographsPages {
  constructor(readonly page: Page) {}

  /** From the blank's own page. */
  async open(): Promise<void> {
    await this.page.getByRole('link', { name: 'Photographs', exact: true }).click();
    await this.page.getByRole('heading', { level: 1, name: 'Photographs' }).waitFor();
  }

  async choose(of: { side: string; size: string; colour: string }): Promise<void> {
    await this.page.getByLabel('Side').selectOption({ label: of.side });
    await this.page.getByLabel('Size').selectOption({ label: of.size });
    await this.page.getByLabel('Colour').selectOption({ label: of.colour });
  }

  async upload(buffer: Buffer, name = 'floor.jpg'): Promise<void> {
    await this.page.getByLabel('Take or choose a photograph').setInputFiles({ name, mimeType: 'image/jpeg', buffer });
  }

  async untilSetting(): Promise<void> {
    await this.page.getByRole('heading', { level: 1, name: 'Set the photograph to scale' }).waitFor();
    await this.mark('A').waitFor();
  }

  mark(letter: 'A' | 'B' | 'C' | 'D'): Locator {
    return this.page.getByRole('button', { name: new RegExp(`^${letter}, `) });
  }

  /** The number of pixels of a mark, across or down. */
  field(letter: 'A' | 'B' | 'C' | 'D', which: 'Across' | 'Down'): Locator {
    return this.page.getByRole('group', { name: new RegExp(`^${letter}: `) }).getByLabel(which);
  }

  /** Where a pixel of the photograph is on the screen. */
  async onScreen({ x, y }: Place): Promise<Place> {
    return this.page
      .locator('svg:has(> title)')
      .filter({ has: this.mark('A') })
      .evaluate(
        (svg, at) => {
          const toScreen = svg instanceof SVGSVGElement ? svg.getScreenCTM() : null;
          if (!toScreen) throw new Error('the photograph is not drawn');
          const place = new DOMPoint(at.x, at.y).matrixTransform(toScreen);
          return { x: place.x, y: place.y };
        },
        { x, y },
      );
  }

  /** Clicks a place of the photograph: the mark in hand goes there. */
  async click(at: Place): Promise<void> {
    const { x, y } = await this.onScreen(at);
    await this.page.mouse.click(x, y);
  }

  /** Takes a mark by its middle and drags it. */
  async drag(letter: 'A' | 'B' | 'C' | 'D', to: Place): Promise<void> {
    const from = await this.onScreen({
      x: Number(await this.field(letter, 'Across').inputValue()),
      y: Number(await this.field(letter, 'Down').inputValue()),
    });
    const end = await this.onScreen(to);
    await this.page.mouse.move(from.x, from.y);
    await this.page.mouse.down();
    await this.page.mouse.move((from.x + end.x) / 2, (from.y + end.y) / 2);
    await this.page.mouse.move(end.x, end.y);
    await this.page.mouse.up();
  }

  async keep(): Promise<void> {
    await this.page.getByRole('button', { name: 'Keep the points' }).click();
  }
}
