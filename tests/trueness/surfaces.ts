import { type Browser, chromium, type Page } from '@playwright/test';
import { build } from 'esbuild';
import { chromiumArguments, findChromium } from '../browser/fixtures/chromium';
import type { SurfaceFindings, SurfaceRequest } from './surfaces-page';

/** A browser that shows scenes as the page and as the layout table do, and measures them there. */
export type Surfaces = {
  readonly measure: (request: SurfaceRequest) => Promise<SurfaceFindings>;
  readonly close: () => Promise<void>;
};

/** Bundles the two surfaces, opens Chromium and loads them. */
export async function openSurfaces(): Promise<Surfaces> {
  const script = await bundledPage();
  const browser: Browser = await chromium.launch({ executablePath: findChromium(), args: chromiumArguments });
  const page: Page = await browser.newPage({ viewport: { width: 1280, height: 1000 } });
  const problems: string[] = [];
  page.on('pageerror', (error) => problems.push(error.message));
  await page.setContent(
    '<!doctype html><style>body { margin: 0 } svg { display: block; width: 100% }</style><div id="page"></div><div id="table"></div>',
  );
  await page.addScriptTag({ content: script });
  return {
    measure: async (request) => {
      const found = await page.evaluate((asked) => window.measureSurfaces(asked), request);
      if (problems.length > 0) throw new Error(problems.join('\n'));
      return found;
    },
    close: () => browser.close(),
  };
}

async function bundledPage(): Promise<string> {
  const result = await build({
    entryPoints: ['tests/trueness/surfaces-page.tsx'],
    bundle: true,
    write: false,
    platform: 'browser',
    format: 'iife',
    target: 'es2022',
    jsx: 'automatic',
    define: { 'process.env.NODE_ENV': '"production"' },
    tsconfig: 'tsconfig.json',
    logLevel: 'silent',
  });
  const [file] = result.outputFiles;
  if (!file) throw new Error('nothing was bundled');
  return file.text;
}
