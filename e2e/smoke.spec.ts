import type { Page } from 'playwright/test';
import { expect, test } from './studio.ts';

test('the built page opens with its name, a quiet console and nothing asked of elsewhere', async ({
  studio,
}) => {
  await expect(studio).toHaveTitle(/Capwright/);
  await expect(studio.getByRole('main')).toBeVisible();
});

test('the built page carries a strict content security policy', async ({ studio }) => {
  const policy = await studio.locator('meta[http-equiv="Content-Security-Policy" i]').getAttribute('content');
  const rules = new Map((policy ?? '').split(';').map((rule) => [rule.trim().split(/\s+/)[0], rule.trim()]));
  expect(rules.get('default-src')).toMatch(/^default-src '(self|none)'$/);
  expect(policy).not.toMatch(/unsafe-eval|\*|https?:/);
  expect(rules.get('script-src') ?? rules.get('default-src')).not.toContain('unsafe-inline');
});

test('the policy keeps the page from sending anything to another place', async ({ studio, complaints }) => {
  const sent = await studio.evaluate(() =>
    fetch('http://elsewhere.invalid/').then(
      () => 'sent',
      () => 'refused',
    ),
  );
  expect(sent).toBe('refused');
  expect(complaints.join()).toContain('Content Security Policy');
  expect(complaints.join()).not.toContain('request:');
  complaints.length = 0;
});

test('the watch over the page hears a warning, an error and a request to elsewhere', async ({
  page,
  complaints,
}) => {
  await page.setContent('<title>A page without a policy</title>');
  await page.evaluate(async () => {
    console.warn('a warning');
    setTimeout(() => {
      throw new Error('a mishap');
    });
    await fetch('http://elsewhere.invalid/').catch(() => undefined);
  });
  await expect.poll(() => complaints.join()).toContain('a mishap');
  expect(complaints).toContain('warning: a warning');
  expect(complaints).toContain('request: http://elsewhere.invalid/');
  complaints.length = 0;
});

test.describe('two tests that share a page', () => {
  test.describe.configure({ mode: 'serial' });

  /** What a page finds in its browser. */
  const found = (page: Page) =>
    page.evaluate(async () => ({
      kept: localStorage.getItem('left behind'),
      cookies: document.cookie,
      databases: (await indexedDB.databases()).map(({ name }) => name),
      mayRead: (await navigator.permissions.query({ name: 'clipboard-read' as PermissionName })).state,
      marked: 'leftBehind' in window,
      width: innerWidth,
      calm: matchMedia('(prefers-reduced-motion: reduce)').matches,
      title: document.title,
    }));

  test('one leaves something wherever a browser keeps things', async ({ page, context, baseURL }) => {
    await context.addCookies([{ name: 'left', value: 'behind', url: baseURL! }]);
    await context.grantPermissions(['clipboard-read']);
    await page.addInitScript(() => Object.assign(window, { leftBehind: true }));
    await page.setViewportSize({ width: 500, height: 500 });
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await context.route('**/', (route) =>
      route.fulfill({ contentType: 'text/html', body: '<title>Left behind</title>' }),
    );
    await page.goto('./');
    await page.evaluate(() => {
      localStorage.setItem('left behind', 'yes');
      return new Promise((done) => {
        indexedDB.open('left behind').onsuccess = done;
      });
    });
    expect(await found(page)).toEqual({
      kept: 'yes',
      cookies: 'left=behind',
      databases: ['left behind'],
      mayRead: 'granted',
      marked: true,
      width: 500,
      calm: true,
      title: 'Left behind',
    });
  });

  test('the other finds nothing of it', async ({ studio }) => {
    const { width, mayRead, title, ...rest } = await found(studio);
    expect(rest).toEqual({ kept: null, cookies: '', databases: [], marked: false, calm: false });
    expect(mayRead).not.toBe('granted');
    expect(width).toBeGreaterThan(500);
    expect(title).toMatch(/Capwright/);
  });
});
