import { join } from 'node:path';
import { defineConfig } from 'playwright/test';
import { BROWSER_VARIABLE, findBrowser, launchArgs } from './set-up/browser.ts';

const root = join(import.meta.dirname, '..');
const results = join(root, 'test-results');

const executablePath = findBrowser();
// Each worker reads this file again: it need not search again.
process.env[BROWSER_VARIABLE] = executablePath;

export default defineConfig({
  testDir: import.meta.dirname,
  outputDir: join(results, 'browser'),
  snapshotPathTemplate: '{testDir}/pictures/{arg}{ext}',
  reporter: [['list'], ['json', { outputFile: join(results, 'browser.json') }]],
  workers: 2,
  fullyParallel: true,
  forbidOnly: Boolean(process.env.CI),
  retries: 0,
  // A machine that has other work to do is no failure.
  timeout: 90_000,
  expect: { timeout: 15_000 },
  use: {
    // The server says below which port it was given.
    baseURL: `http://127.0.0.1:${process.env.STUDIO_PORT ?? ''}/`,
    launchOptions: { executablePath, args: launchArgs() },
    screenshot: 'only-on-failure',
    // A worker keeps its page and empties it for each test (smoke.spec.ts sees to that): a new process each time takes
    // twice as long to open the studio.
    reuseContext: true,
  },
  webServer: {
    command: 'npx vite preview --host 127.0.0.1 --port 0',
    cwd: root,
    env: { FORCE_COLOR: '0', NO_COLOR: '1' },
    wait: { stdout: /http:\/\/127\.0\.0\.1:(?<studio_port>\d+)/ },
  },
});
