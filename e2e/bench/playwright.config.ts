import { defineConfig } from 'playwright/test';
import tests from '../playwright.config.ts';

/** Measurements of the built app: one at a time, and no verdict but the table at the end. */
export default defineConfig({
  ...tests,
  testDir: import.meta.dirname,
  testMatch: '*.bench.ts',
  workers: 1,
  fullyParallel: false,
  reporter: [['./table.ts']],
});
