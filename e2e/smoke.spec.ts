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
