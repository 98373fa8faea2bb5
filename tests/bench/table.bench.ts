import { type BrowserContext, chromium, type Page } from '@playwright/test';
import { chromiumArguments, findChromium } from '../browser/fixtures/chromium';
import { startServer } from '../browser/fixtures/server';
import { OWNER, ShopSide } from '../browser/fixtures/shop-side';
import { Door } from '../browser/pages/door';
import { LayoutTable } from '../browser/pages/layout-table';
import { median, medianOfRatios, printResult } from './measure';
import { emptyStage, RECTANGLE } from './table/empty-stage';
import { draggedFrames, type Frames } from './table/frames';
import { scriptKilobytes } from './table/script-bytes';
import { twelvePrints } from './table/twelve-prints';

// How smoothly a print is dragged at the layout table: one of twelve prints of 4500 × 5400 px on the front of a hood, with
// all its sizes on the line, against an empty Konva stage on which a rectangle is dragged the same way, the two taking
// turns in one browser. Then how long such a job takes to open in a browser that was never there, until a print can be
// taken hold of and every picture shows, and how much JavaScript each page loads.

const ROUNDS = 5;
const FRAMES = 240;
const OPENINGS = 3;
const WINDOW = { viewport: { width: 1440, height: 900 }, locale: 'en-US', timezoneId: 'America/New_York' } as const;

const server = await startServer();
Object.assign(process.env, {
  DATABASE_URL: server.databaseUrl,
  FILES_DIR: server.filesDir,
  SECRETS_FILE: server.secretsFile,
  MAIL_DIR: server.mailDir,
});
const { jobId, link } = new ShopSide(server).sendFirst();
const twelve = await twelvePrints();
const browser = await chromium.launch({ executablePath: findChromium(), args: chromiumArguments });

/** Who is signed in, without anything that was loaded on the way. */
async function signedIn(): Promise<Awaited<ReturnType<BrowserContext['storageState']>>> {
  const context = await browser.newContext(WINDOW);
  const page = await context.newPage();
  await page.goto(`${server.url}/sign-in`);
  await new Door(page).signIn(OWNER.email, OWNER.password);
  await page.waitForURL('**/jobs');
  const state = await context.storageState();
  await context.close();
  return state;
}

/** Opens the job and waits until a print is in hand and every picture was fetched; how long that took, ms. */
async function opened(page: Page): Promise<number> {
  const pictures = new Set<string>();
  page.on('requestfinished', (request) => {
    if (request.url().includes('/proxy.webp')) pictures.add(request.url());
  });
  const began = performance.now();
  await page.goto(`${server.url}/jobs/${twelve.jobId}/table`);
  const table = new LayoutTable(page);
  await table.paper.waitFor();
  await table.reading('Width', twelve.top).or(page.locator('[data-corner]').first()).first().waitFor();
  while (pictures.size < 12) await page.waitForEvent('requestfinished');
  return performance.now() - began;
}

/** The middle of the print in hand: between the corners it is sized by. */
async function middleInHand(page: Page): Promise<{ x: number; y: number }> {
  const boxes = await Promise.all((await page.locator('[data-corner]').all()).map((corner) => corner.boundingBox()));
  const middles = boxes.map((box) => ({
    x: (box?.x ?? 0) + (box?.width ?? 0) / 2,
    y: (box?.y ?? 0) + (box?.height ?? 0) / 2,
  }));
  if (middles.length !== 4) throw new Error(`a frame of ${middles.length} corners`);
  return {
    x: middles.reduce((sum, { x }) => sum + x, 0) / 4,
    y: middles.reduce((sum, { y }) => sum + y, 0) / 4,
  };
}

const medianOf = (all: readonly Frames[], pick: (frames: Frames) => number) => median(all.map(pick));

try {
  const storageState = await signedIn();
  const fresh = () => browser.newContext({ ...WINDOW, storageState });
  const openings: number[] = [];
  for (let time = 0; time < OPENINGS; time += 1) {
    const context = await fresh();
    openings.push(await opened(await context.newPage()));
    await context.close();
  }

  const context = await fresh();
  const [table, empty] = [await context.newPage(), await emptyStage(context)];
  await opened(table);
  const dragged: Frames[] = [];
  const floor: Frames[] = [];
  const dragPrint = async () => {
    const frames = await draggedFrames(table, '[role="application"]', {
      ...(await middleInHand(table)),
      radiusPx: 120,
      frames: FRAMES,
    });
    dragged.push(frames);
    return frames.p95Ms;
  };
  const dragRectangle = async () => {
    const { x, y, width, height } = await empty.evaluate((first) => {
      const { Konva } = window as unknown as { Konva: typeof import('konva').default };
      return Konva.stages[0]?.findOne('Rect')?.getClientRect() ?? first;
    }, RECTANGLE);
    const at = { x: x + width / 2, y: y + height / 2 };
    const frames = await draggedFrames(empty, 'canvas', { ...at, radiusPx: 120, frames: FRAMES });
    floor.push(frames);
    return frames.p95Ms;
  };
  const { ratio } = await medianOfRatios(dragPrint, dragRectangle, { rounds: ROUNDS });

  const routes = {
    '/jobs': '/jobs',
    '/jobs/[jobId]': `/jobs/${jobId}`,
    '/jobs/[jobId]/table': `/jobs/${jobId}/table`,
    '/jobs/[jobId]/send': `/jobs/${jobId}/send`,
    '/blanks': '/blanks',
    '/proof/[token]': new URL(link).pathname,
  };
  const scripts: Record<string, number> = {};
  for (const [route, address] of Object.entries(routes)) {
    const first = await fresh();
    scripts[route] = await scriptKilobytes(first, `${server.url}${address}`);
    await first.close();
  }

  printResult('table', {
    p95_ratio: ratio,
    dropped_share: medianOf(dragged.slice(1), ({ droppedShare }) => droppedShare),
    median_ms: medianOf(dragged.slice(1), ({ medianMs }) => medianMs),
    p95_ms: medianOf(dragged.slice(1), ({ p95Ms }) => p95Ms),
    empty_median_ms: medianOf(floor.slice(1), ({ medianMs }) => medianMs),
    empty_p95_ms: medianOf(floor.slice(1), ({ p95Ms }) => p95Ms),
    empty_dropped_share: medianOf(floor.slice(1), ({ droppedShare }) => droppedShare),
    usable_ms: median(openings),
    js_gzip_kb: scripts,
  });
} finally {
  await browser.close();
  await server.remove();
}
