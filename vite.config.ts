import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

/** What jsPDF would load to draw web pages and SVG, which no pattern needs. */
const absent = fileURLToPath(new URL('./src/print/pdf/absent.ts', import.meta.url));

export default defineConfig({
  base: './',
  plugins: [react()],
  resolve: { alias: { html2canvas: absent, canvg: absent, dompurify: absent } },
  build: { target: 'es2022', modulePreload: { polyfill: false } },
  worker: { format: 'es' },
  test: {
    include: ['test/**/*.test.ts'],
    benchmark: { include: ['test/**/*.bench.ts'] },
  },
});
