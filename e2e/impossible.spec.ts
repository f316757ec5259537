import { goTo, lengthIn, outline, slider, tab, tally, typedField } from './at-hand.ts';
import { expect, test } from './studio.ts';

test('a crown too full for its side band is said, the last cap stays, and the nearest value mends it', async ({
  studio,
}) => {
  const height = slider(studio, 'Side band height');
  const fullness = slider(studio, 'Crown fullness');
  await height.press('Home');
  await expect(typedField(studio, 'Side band height')).toHaveValue('3.0 cm');
  await expect(tally(studio, /seams meet/)).toHaveText(/^(\d+) of \1 seams meet$/);
  const low = await outline(studio);
  const crown = await tally(studio, /^Crown/).textContent();

  await fullness.press('End');
  const word = studio.getByText(/cannot reach out that far/);
  await expect(word).toBeVisible();
  await expect(fullness).toHaveAttribute('aria-invalid', 'true');
  await expect(typedField(studio, 'Crown fullness')).toHaveValue('32.0 cm');
  // It stands right under its control: below this slider, above the next.
  const [over, at, under] = await Promise.all([
    fullness.boundingBox(),
    word.boundingBox(),
    height.boundingBox(),
  ]);
  expect(at!.y).toBeGreaterThan(over!.y);
  expect(at!.y + at!.height).toBeLessThan(under!.y);
  expect(await outline(studio)).toBe(low);
  await expect(tally(studio, /^Crown/)).toHaveText(crown!);
  await expect(studio.getByText('The table shows the last cap that can be sewn.')).toBeVisible();

  const mend = word.getByRole('button', { name: /^Use / });
  const nearest = lengthIn(await mend.textContent());
  // A ring that grows by 2π times its height lies flat: less than that can be sewn, and not needlessly less. The
  // lining, a few millimetres lower, gives out first.
  expect(nearest).toBeLessThan(2 * Math.PI * 30);
  expect(nearest).toBeGreaterThan(2 * Math.PI * 26);
  await mend.click();
  await expect(word).toBeHidden();
  await expect(fullness).not.toHaveAttribute('aria-invalid');
  expect(await outline(studio)).not.toBe(low);
  const full = lengthIn(await tally(studio, /^Crown/).textContent());
  expect(Math.abs(full - 558.8 - nearest)).toBeLessThan(0.51);
  await expect(tally(studio, /seams meet/)).toHaveText(/^(\d+) of \1 seams meet$/);
});

test('a visor longer than half the head is refused in the same way', async ({ studio }) => {
  const first = await outline(studio);
  await typedField(studio, 'Visor inner edge').fill('30');
  const word = studio.getByText(/more than half-way round the head/);
  await expect(word).toBeVisible();
  expect(await outline(studio)).toBe(first);
  await word.getByRole('button').click();
  await expect(word).toBeHidden();
  // Half of 22 in is 27.9 cm.
  await expect(typedField(studio, 'Visor inner edge')).toHaveValue('27.9 cm');
  expect(await outline(studio)).not.toBe(first);
});

test('a stage that fails leaves the rest of the page, and the others can be gone to', async ({
  studio,
  complaints,
}) => {
  await studio.evaluate(() => {
    const make = document.createElement;
    document.createElement = ((kind: string, ...more: []) => {
      if (kind === 'table') throw new Error('no table today');
      return make.call(document, kind, ...more);
    }) as typeof make;
  });
  await tab(studio, 'Cloth').click();
  await expect(studio.getByRole('alert')).toContainText('Something here has failed.');
  await expect(studio.getByRole('button', { name: 'Reload the page' })).toBeVisible();
  await goTo(studio, 'Cap');
  await expect(typedField(studio, 'Ease')).toBeVisible();
  expect(await outline(studio)).not.toBe('');
  expect(complaints.splice(0).join()).toContain('no table today');
});

test('where what stands round the stages fails, a word and a way on stand in its place', async ({
  page,
  complaints,
}) => {
  await page.addInitScript(() => {
    const make = document.createElementNS;
    document.createElementNS = ((space: string, kind: string, ...more: []) => {
      if (kind === 'svg') throw new Error('no svg today');
      return make.call(document, space, kind, ...more);
    }) as typeof make;
  });
  await page.goto('./');
  await expect(page.getByRole('alert')).toContainText('Capwright has failed. Your caps are kept');
  await expect(page.getByRole('button', { name: 'Reload the page' })).toBeVisible();
  expect(complaints.splice(0).join()).toContain('no svg today');
});
