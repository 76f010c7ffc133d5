// Browser tests against the service as a person starts it: npm start, on a port and a data folder of its own.
import os from 'node:os';
import path from 'node:path';
import { defineConfig } from '@playwright/test';
import { findChromium } from './scripts/test/chromium.mjs';

const port = Number(process.env.PAWL_E2E_PORT ?? 3917);
const root = process.getuid?.() === 0;

// Fresh for the run, made by the start itself. The workers read this file again: the first reader fixes the name.
process.env.PAWL_E2E_DATA ??= path.join(os.tmpdir(), `pawl-e2e-${process.pid}-${Date.now()}`);

const chromium = findChromium();
const report = process.env.PLAYWRIGHT_JSON_OUTPUT_NAME;

export default defineConfig({
  testDir: 'e2e',
  outputDir: 'test-results/e2e',
  fullyParallel: false,
  workers: 1,
  retries: 0,
  forbidOnly: true,
  timeout: 60_000,
  reporter: report ? [['list'], ['json', { outputFile: report }]] : [['list']],
  use: {
    baseURL: `http://127.0.0.1:${port}`,
    // Pictures of every step of pages as long as these would take as long as the stories.
    trace: { mode: 'retain-on-failure', snapshots: false, screenshots: false },
    screenshot: 'only-on-failure',
    launchOptions: {
      ...(chromium ? { executablePath: chromium } : {}),
      args: root ? ['--no-sandbox'] : [],
    },
  },
  webServer: {
    command: 'npm start',
    url: `http://127.0.0.1:${port}/api/health`,
    timeout: 240_000,
    reuseExistingServer: false,
    env: { PORT: String(port), PAWL_DATA: process.env.PAWL_E2E_DATA, DATABASE_URL: '' },
    gracefulShutdown: { signal: 'SIGTERM', timeout: 15_000 },
  },
  globalTeardown: './e2e/setup/remove-data.ts',
});
