import type { Locator, Page } from 'playwright/test';
import { outline, painted, shown, slider, stages, tab, tally } from './at-hand.ts';
import { expect, test } from './studio.ts';

const hasFocus = (there: Locator): Promise<boolean> =>
  there.evaluate((element) => element === document.activeElement);

/** Walks on with Tab until a thing has the focus, as someone without a mouse would. */
const walkTo = async (page: Page, there: Locator): Promise<void> => {
  for (let i = 0; i < 80; i++) {
    if ((await there.count()) > 0 && (await hasFocus(there))) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`80 presses of Tab do not lead to ${there}`);
};

test('every stage is reached, ease changed and the pattern downloaded without a mouse', async ({
  studio,
}) => {
  await walkTo(studio, tab(studio, 'Cap'));
  await studio.keyboard.press('Home');
  await shown(studio, 'Head');
  for (const stage of stages.slice(1)) {
    await studio.keyboard.press('ArrowRight');
    await shown(studio, stage);
    await expect(tab(studio, stage)).toBeFocused();
  }
  await studio.keyboard.press('Home');
  await studio.keyboard.press('ArrowRight');
  await shown(studio, 'Cap');

  const before = await outline(studio);
  await walkTo(studio, slider(studio, 'Ease'));
  await studio.keyboard.press('PageUp');
  // Five steps of 2 mm from 1/2 in: 2.27 cm of ease on 54.61 cm of head.
  await expect(tally(studio, /^Inside/)).toHaveText('Inside 56.9 cm');
  expect(await outline(studio)).not.toBe(before);

  // Back over its figure and over the choice of style.
  for (let i = 0; i < 3; i++) await studio.keyboard.press('Shift+Tab');
  await expect(tab(studio, 'Cap')).toBeFocused();
  await studio.keyboard.press('ArrowRight');
  await studio.keyboard.press('ArrowRight');
  await shown(studio, 'Paper');
  const button = studio.getByRole('button', { name: 'Download pattern PDF' });
  await expect(button).toBeEnabled();
  await walkTo(studio, button);
  const coming = studio.waitForEvent('download');
  await studio.keyboard.press('Enter');
  expect((await coming).suggestedFilename()).toMatch(/\.pdf$/);
  await expect(studio.getByRole('status').filter({ hasText: 'Print it at 100 %' })).toBeVisible();
  await expect(button).toBeFocused();
});

test('what has the focus can be seen to have it, all the way round the page', async ({ studio }) => {
  const seen = new Set<string>();
  for (let i = 0; i < 120; i++) {
    await studio.keyboard.press('Tab');
    const [name, ring] = await studio.evaluate(() => {
      const here = document.activeElement;
      if (!(here instanceof HTMLElement) || here === document.body) return ['', true] as const;
      const name = `${here.tagName} ${here.id || here.getAttribute('aria-label') || here.textContent || ''}`;
      // The ring may be drawn on the element or on what stands round it.
      const rings = [here, here.parentElement, here.nextElementSibling].some((element) => {
        if (!(element instanceof HTMLElement)) return false;
        const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(element);
        return (outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2) || boxShadow !== 'none';
      });
      return [name, rings] as const;
    });
    expect(ring, name).toBe(true);
    if (name === '' && seen.size > 0) break;
    seen.add(name);
  }
  expect(seen.size).toBeGreaterThan(40);
});

test('the table is moved, zoomed and read from the keyboard', async ({ studio }) => {
  const surface = studio.getByRole('application', { name: 'Pattern pieces' });
  await walkTo(studio, surface);
  const frames = async (): Promise<number> =>
    Number(await studio.getByRole('region', { name: 'The table' }).getAttribute('data-painted'));
  for (const key of ['ArrowLeft', '+', '0']) {
    await painted(studio);
    const before = await frames();
    await studio.keyboard.press(key);
    await expect.poll(frames, { message: key }).toBeGreaterThan(before);
  }
  await studio.keyboard.press('Tab');
  const first = studio.getByRole('list', { name: 'Pieces on the table' }).getByRole('button').first();
  await expect(first).toBeFocused();
  await studio.keyboard.press('Enter');
  await expect(first).toHaveAttribute('aria-pressed', 'true');
});
