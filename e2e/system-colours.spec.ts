import { slider, tab, unitSwitch } from './at-hand.ts';
import { expect, test } from './studio.ts';

test.use({ forcedColors: 'active' });

test('a slider has its rule, and what is chosen still looks chosen', async ({ studio: page }) => {
  const ruled = await slider(page, 'Ease').evaluate((track) => getComputedStyle(track).backgroundImage);
  expect(ruled).toContain('gradient');
  const ground = (unit: 'cm' | 'in'): Promise<string> =>
    unitSwitch(page, unit).evaluate((radio) => getComputedStyle(radio.nextElementSibling!).backgroundColor);
  expect(await ground('cm')).not.toBe(await ground('in'));
  const underline = (stage: 'Cap' | 'Head'): Promise<string> =>
    tab(page, stage).evaluate((button) => getComputedStyle(button, '::after').backgroundColor);
  const canvas = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  expect(await underline('Cap')).not.toBe(canvas);
  expect(await underline('Cap')).not.toBe(await underline('Head'));
});
