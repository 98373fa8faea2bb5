import type { Page } from '@playwright/test';

/** A hand on the paper: what is taken hold of with a pointer, and how the paper is seen. */
export class PaperHand {
  constructor(readonly page: Page) {}

  /** The handle a print is turned by. */
  turnHandle(print: string) {
    return this.page.getByRole('slider', { name: `Turn of ${print}` });
  }

  /** Marks of what there is to say of a print, where it lies. */
  marks(print: string) {
    return this.page.getByRole('application').getByRole('button', { name: new RegExp(`^${print}: `) });
  }

  /** Where the middle of the frame of the print in hand is, CSS pixels of the window. */
  async middle(): Promise<{ x: number; y: number }> {
    const corners = await this.page.locator('[data-corner]').all();
    const boxes = await Promise.all(corners.map((corner) => corner.boundingBox()));
    const sum = (of: (box: { x: number; y: number; width: number; height: number }) => number) =>
      boxes.reduce((all, box) => all + (box ? of(box) : Number.NaN), 0) / boxes.length;
    return { x: sum(({ x, width }) => x + width / 2), y: sum(({ y, height }) => y + height / 2) };
  }

  /** Takes the print in hand by its middle to so many pixels from there, and keeps hold of it. */
  async drag(byX: number, byY: number): Promise<void> {
    const { mouse } = this.page;
    const { x, y } = await this.middle();
    await mouse.move(x, y);
    await mouse.down();
    await mouse.move(x + byX / 2, y + byY / 2);
    await mouse.move(x + byX, y + byY);
  }

  async letGo(): Promise<void> {
    await this.page.mouse.up();
  }

  /** Takes the turning handle a quarter of the way round the middle of the print, and lets go. */
  async turnAQuarter(print: string): Promise<void> {
    const { mouse } = this.page;
    const box = await this.turnHandle(print).boundingBox();
    if (!box) throw new Error(`${print} has no handle to turn it by`);
    const middle = await this.middle();
    const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    const [armX, armY] = [from.x - middle.x, from.y - middle.y];
    await mouse.move(from.x, from.y);
    await mouse.down();
    await mouse.move(middle.x + (armX - armY) / Math.SQRT2, middle.y + (armX + armY) / Math.SQRT2);
    await mouse.move(middle.x - armY, middle.y + armX);
    await mouse.up();
  }
}
