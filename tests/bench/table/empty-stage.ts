import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { BrowserContext, Page } from '@playwright/test';

/** What is dragged on the empty stage, CSS pixels. */
export const RECTANGLE = { x: 400, y: 300, width: 120, height: 144 } as const;

/** The floor a drag at the table is held against: a stage of the window's size with nothing on it but a rectangle. */
export async function emptyStage(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.setContent('<!doctype html><body style="margin:0"><div id="stage"></div>');
  const konva = dirname(createRequire(import.meta.url).resolve('konva/package.json'));
  await page.addScriptTag({ content: readFileSync(join(konva, 'konva.min.js'), 'utf8') });
  await page.evaluate((box) => {
    const { Konva } = window as unknown as { Konva: typeof import('konva').default };
    const stage = new Konva.Stage({ container: 'stage', width: innerWidth, height: innerHeight });
    const layer = new Konva.Layer();
    layer.add(new Konva.Rect({ ...box, fill: '#20344F', draggable: true }));
    stage.add(layer);
  }, RECTANGLE);
  return page;
}
