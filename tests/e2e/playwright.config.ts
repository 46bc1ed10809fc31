import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { E2E_ADDRESS, E2E_PORT } from './support/address.ts';
import { launchOptions } from './support/launch.ts';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '..', '..');

/** Hands and ears that keep time with the bench's own clock: beside other tests they would be too slow for it. */
const BY_THE_CLOCK = /\/(?:announcements|evidence|firstMinutes|hands|mirrorJob|resume)\.spec\.ts$/;

// Serves what `vite build` left in dist; it builds nothing. Times are for two cores and a graphics card made of software.
export default defineConfig({
  testDir: here,
  projects: [
    { name: 'by-the-clock', testMatch: BY_THE_CLOCK },
    { name: 'side-by-side', testMatch: '**/*.spec.ts', testIgnore: BY_THE_CLOCK },
  ],
  outputDir: join(root, 'test-results'),
  workers: 1,
  fullyParallel: false,
  retries: 0,
  forbidOnly: true,
  timeout: 120_000,
  expect: { timeout: 15_000 },
  reporter: 'list',
  use: {
    browserName: 'chromium',
    launchOptions: launchOptions(),
    baseURL: E2E_ADDRESS,
    viewport: { width: 1280, height: 800 },
    deviceScaleFactor: 1,
    locale: 'en-US',
    serviceWorkers: 'block',
    actionTimeout: 20_000,
    navigationTimeout: 30_000,
    screenshot: 'only-on-failure',
    trace: 'off',
  },
  webServer: {
    command: `node node_modules/vite/bin/vite.js preview --host 127.0.0.1 --port ${E2E_PORT} --strictPort`,
    cwd: root,
    url: E2E_ADDRESS,
    reuseExistingServer: false,
    timeout: 60_000,
    stdout: 'ignore',
    stderr: 'pipe',
  },
});
