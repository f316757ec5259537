import { defineConfig } from 'playwright/test';
import tests from '../playwright.config.ts';

/** Measurements of the built app: one at a time, each in a browser's new context, and no verdict but the table at the end. */
export default defineConfig({
  ...tests,
  testDir: import.meta.dirname,
  testMatch: '*.bench.ts',
  workers: 1,
  fullyParallel: false,
  reporter: [['./table.ts']],
  use: { ...tests.use, reuseContext: false },
});
