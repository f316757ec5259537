import { slider, tab, typedField, unitSwitch } from './at-hand.ts';
import { expect, test } from './studio.ts';

test.use({ forcedColors: 'active' });

test('a slider has its rule, a number is set once, and what is chosen still looks chosen', async ({
  studio: page,
}) => {
  const ruled = await slider(page, 'Ease').evaluate((track) => getComputedStyle(track).backgroundImage);
  expect(ruled).toContain('gradient');
  // In inches a text with its fraction lies over the field, whose own must not be seen through it.
  await unitSwitch(page, 'in').check();
  const field = typedField(page, 'Side band height');
  await expect(field).toHaveValue('2 1/2 in');
  const own = await field.evaluate((input) => getComputedStyle(input).webkitTextFillColor);
  expect(own).toBe('rgba(0, 0, 0, 0)');
  await unitSwitch(page, 'cm').check();
  const ground = (unit: 'cm' | 'in'): Promise<string> =>
    unitSwitch(page, unit).evaluate((radio) => getComputedStyle(radio.nextElementSibling!).backgroundColor);
  expect(await ground('cm')).not.toBe(await ground('in'));
  const underline = (stage: 'Cap' | 'Head'): Promise<string> =>
    tab(page, stage).evaluate((button) => getComputedStyle(button, '::after').backgroundColor);
  const canvas = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  expect(await underline('Cap')).not.toBe(canvas);
  expect(await underline('Cap')).not.toBe(await underline('Head'));
  const ink = (name: string): Promise<string> =>
    page.getByRole('button', { name, exact: true }).evaluate((button) => getComputedStyle(button).color);
  expect(await ink('Redo')).not.toBe(await ink('Shelf'));
});
