// npm test              every check
// npm test -- lint unit only the named ones

import { requireNode } from './node-version.mjs';

requireNode();

const { ensureInstalled } = await import('./install.mjs');
await ensureInstalled();

const { mkdirSync, rmSync } = await import('node:fs');
const { countsOfCheck, countsOfPlaywright, countsOfVitest, summaryOf, totalOf } = await import('./counts.mjs');
const { makeRouteTypes } = await import('./route-types.mjs');
const { packageScript, runNode } = await import('./run.mjs');

const reports = '.built/reports';

/** @param {string[]} args */
const check = async (args) => countsOfCheck(await runNode(args));

/** @param {string} project */
async function vitest(project) {
  const report = `${reports}/${project}.json`;
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  return countsOfVitest(report, await runNode([packageScript('vitest'), 'run', '--project', project, ...reporters]));
}

let pagesAreBuilt = true;

async function build() {
  const counts = await check(['lib/server/commands/build.mjs']);
  pagesAreBuilt = counts.failed === 0;
  return counts;
}

async function playwright() {
  if (!pagesAreBuilt) {
    console.error('Not run: there are no pages to look at.');
    return countsOfCheck(1);
  }
  const report = `${reports}/browser.json`;
  const args = [packageScript('@playwright/test', 'playwright'), 'test', '--reporter=list,json'];
  return countsOfPlaywright(report, await runNode(args, { env: { PLAYWRIGHT_JSON_OUTPUT_FILE: report } }));
}

const imported = ['app', 'components', 'lib', 'tests', 'proxy.ts', 'next.config.ts'];

/** @type {Record<string, () => Promise<import('./counts.mjs').Counts>>} */
const steps = {
  lint: () => check([packageScript('@biomejs/biome', 'biome'), 'check', '--error-on-warnings', '.']),
  types: async () => {
    const routes = await makeRouteTypes();
    return routes === 0 ? check([packageScript('typescript', 'tsc'), '--noEmit']) : countsOfCheck(routes);
  },
  imports: () => {
    const script = packageScript('dependency-cruiser', 'depcruise');
    return check([script, '--config', '.dependency-cruiser.mjs', ...imported]);
  },
  unit: () => vitest('unit'),
  build,
  integration: () => vitest('integration'),
  browser: playwright,
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(name in steps));
if (unknown.length > 0) {
  console.error(`There is no check named ${unknown.join(', ')}. There are: ${Object.keys(steps).join(', ')}.`);
  process.exit(1);
}

rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });

const results = [];
for (const [name, run] of Object.entries(steps)) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  console.log(`\n── ${name}`);
  const began = Date.now();
  const counts = await run();
  results.push({ name, counts, seconds: Math.round((Date.now() - began) / 1000) });
}

const skipsFail = process.env.SKIPPED_FAILS === '1';
console.log('\n── in all');
for (const { name, counts, seconds } of results) console.log(`${name}: ${summaryOf(counts)} (${seconds} s)`);
const total = totalOf(
  results.map(({ counts }) => counts),
  { skipsFail },
);
if (skipsFail && results.some(({ counts }) => counts.skipped > 0))
  console.log('What was skipped counts as failed here.');
console.log(summaryOf(total));
process.exit(total.failed === 0 ? 0 : 1);
