import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  countsOfCheck,
  countsOfPlaywright,
  countsOfVitest,
  summaryOf,
  totalOf,
} from '@/lib/server/commands/counts.mjs';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'yokemark-reports-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

function report(content: unknown): string {
  const path = join(folder, 'report.json');
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}

describe('what a run of the checks counts for', () => {
  it('is one for a check that holds or does not', () => {
    expect([countsOfCheck(0), countsOfCheck(2)]).toEqual([
      { passed: 1, failed: 0, skipped: 0 },
      { passed: 0, failed: 1, skipped: 0 },
    ]);
  });

  it('is what the runner reports', () => {
    const vitest = { numPassedTests: 7, numFailedTests: 2, numPendingTests: 1, numTodoTests: 1 };
    expect(countsOfVitest(report(vitest), 1)).toEqual({ passed: 7, failed: 2, skipped: 2 });
    const playwright = { stats: { expected: 3, unexpected: 1, flaky: 1, skipped: 1 } };
    expect(countsOfPlaywright(report(playwright), 1)).toEqual({ passed: 3, failed: 2, skipped: 1 });
  });

  it('is a failure when the runner ran nothing, though it says all is well', () => {
    expect(countsOfVitest(report({ numPassedTests: 0, numFailedTests: 0 }), 0).failed).toBe(1);
    expect(countsOfPlaywright(report({ stats: { expected: 0 } }), 0).failed).toBe(1);
  });

  it('is a failure when the runner crashed, whatever had passed before', () => {
    expect(countsOfVitest(report({ numPassedTests: 5, numFailedTests: 0 }), 1)).toMatchObject({ passed: 5, failed: 1 });
    expect(countsOfVitest(join(folder, 'missing.json'), 0).failed).toBe(1);
    expect(countsOfPlaywright(report('{"stats": {"exp'), 0).failed).toBe(1);
  });

  it('adds up, and says what was skipped only when something was', () => {
    const all = [
      { passed: 3, failed: 0, skipped: 0 },
      { passed: 4, failed: 1, skipped: 2 },
    ];
    expect(summaryOf(totalOf(all, { skipsFail: false }))).toBe('7 passed, 1 failed, 2 skipped');
    expect(summaryOf(totalOf(all, { skipsFail: true }))).toBe('7 passed, 3 failed');
  });
});
