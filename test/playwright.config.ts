import { defineConfig } from '@playwright/test';
import { findChromium } from './chromium/find-chromium.mjs';

/** People at work in a browser, against the product as `npm start` runs it. */
export default defineConfig({
  testDir: 'e2e',
  globalSetup: './e2e/product/start-product.ts',
  // Two lanes, each with a product and a demo of its own; within a lane journeys follow each other.
  workers: 2,
  fullyParallel: false,
  retries: 0,
  forbidOnly: true,
  timeout: 90_000,
  expect: { timeout: 10_000 },
  outputDir: '../test-results',
  use: {
    viewport: { width: 1280, height: 900 },
    screenshot: 'only-on-failure',
    launchOptions: {
      executablePath: process.env['CHROMIUM_PATH'] ?? findChromium() ?? 'chromium',
      args: [
        '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
        '--disable-component-update', '--disable-sync',
      ],
    },
  },
});
