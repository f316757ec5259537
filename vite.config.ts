import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';

/** What jsPDF would load to draw web pages and SVG, which no pattern needs. */
const absent = fileURLToPath(new URL('./src/print/pdf/absent.ts', import.meta.url));

/** Nothing from elsewhere, nothing to elsewhere, no code but the page's own. */
const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' data: blob:",
  "worker-src 'self'",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** The built page carries the policy; the page in development could not reload itself under it. */
const securityPolicy: Plugin = {
  name: 'security-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: policy },
      injectTo: 'head-prepend',
    },
  ],
};

export default defineConfig({
  base: './',
  plugins: [react(), securityPolicy],
  resolve: { alias: { html2canvas: absent, canvg: absent, dompurify: absent } },
  build: { target: 'es2022', modulePreload: { polyfill: false } },
  worker: { format: 'es' },
  test: {
    include: ['test/**/*.test.ts'],
    benchmark: {
      include: ['test/**/*.bench.ts'],
      includeSamples: true,
      reporters: ['./e2e/bench/unit-times.ts'],
    },
  },
});
