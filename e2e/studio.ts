import { test as base, expect, type Page } from 'playwright/test';

/** What a graphics driver in software says of its own speed when a picture is taken of what it drew. */
const SLOW_GL = /GL Driver Message \(OpenGL, Performance/;

interface Studio {
  /** What the page said or asked for that it should not have: console messages, errors, requests to elsewhere. */
  readonly complaints: string[];
  /** The app, open on its first visit: nothing is stored yet. */
  readonly studio: Page;
}

/** A test of the built app. It fails when the console says anything, or a request leaves the origin. */
export const test = base.extend<Studio>({
  // biome-ignore lint/correctness/noEmptyPattern: the runner reads from the pattern which fixtures are needed.
  complaints: async ({}, use) => {
    await use([]);
  },

  page: async ({ page, complaints, baseURL }, use) => {
    const home = new URL(baseURL ?? '').origin;
    page.on('console', (said) => {
      if (!SLOW_GL.test(said.text())) complaints.push(`${said.type()}: ${said.text()}`);
    });
    page.on('pageerror', (error) => complaints.push(`error: ${error.message}`));
    page.context().on('request', (request) => {
      if (leaves(request.url(), home)) complaints.push(`request: ${request.url()}`);
    });
    page.on('websocket', (socket) => complaints.push(`socket: ${socket.url()}`));
    await use(page);
    // The runner takes back all else that a test changes.
    await page.context().clearPermissions();
    expect(complaints, 'console clean, nothing asked of elsewhere').toEqual([]);
  },

  studio: async ({ page }, use) => {
    await page.goto('./');
    await use(page);
  },
});

const leaves = (address: string, home: string): boolean => {
  const { protocol, origin } = new URL(address);
  return protocol !== 'data:' && protocol !== 'blob:' && origin !== home;
};

export { expect };
