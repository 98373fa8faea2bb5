import { defineConfig } from '@playwright/test';
import { chromiumArguments, findChromium } from './tests/browser/fixtures/chromium';

export default defineConfig({
  testDir: 'tests/browser',
  globalSetup: './tests/browser/global-setup.ts',
  testMatch: '**/*.spec.ts',
  outputDir: 'test-results',
  fullyParallel: false,
  // A browser mostly waits for its server and a server for its browser: two pairs share two cores well.
  workers: 2,
  retries: 0,
  forbidOnly: true,
  timeout: 90_000,
  expect: { timeout: 15_000 },
  reporter: [['list']],
  use: {
    browserName: 'chromium',
    launchOptions: { executablePath: findChromium(), args: chromiumArguments },
    locale: 'en-US',
    timezoneId: 'America/New_York',
    viewport: { width: 1280, height: 800 },
    deviceScaleFactor: 1,
    colorScheme: 'light',
    actionTimeout: 20_000,
    trace: 'retain-on-failure',
    screenshot: 'only-on-failure',
  },
});
