import type { Page } from 'playwright/test';
import { goTo, outline, slider, stages, tab, typedField, unitSwitch } from './at-hand.ts';
import { mapOf } from './printed.ts';
import { expect, test } from './studio.ts';

/** Everything that can be read on all five stages, and where the table and the tally stand. */
const everything = async (page: Page): Promise<readonly string[]> => {
  const read: string[] = [];
  for (const stage of stages) {
    await goTo(page, stage);
    const folded = page.getByRole('tabpanel').locator('details:not([open], .style-pick)');
    await folded.evaluateAll((all) => {
      for (const details of all) details.setAttribute('open', '');
    });
    if (stage === 'Cloth') await laidOut(page);
    if (stage === 'Paper') await mapOf(page);
    read.push(await page.getByRole('tabpanel').ariaSnapshot());
  }
  await expect(page.getByRole('button', { name: /^\d+ sheets$/ })).toBeVisible();
  read.push(await page.getByRole('region', { name: 'The tally' }).ariaSnapshot());
  read.push(await page.getByRole('banner').getByRole('textbox').inputValue());
  return [...read, await outline(page)];
};

/** Waits until the cloth is laid and what to buy is reckoned. */
const laidOut = async (page: Page): Promise<void> => {
  await expect(page.getByText(/^Takes/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Copy the list' })).toBeVisible();
};

test('a reload changes nothing, not even a half-typed text that cannot be read', async ({ studio }) => {
  test.slow();
  await unitSwitch(studio, 'in').click();
  await studio.getByRole('textbox', { name: 'Name of the cap' }).fill('Sunday cap – Кепка');
  await slider(studio, 'Ease').press('ArrowRight');
  await typedField(studio, 'Crown fullness').fill('5 1/4 in');
  await goTo(studio, 'Paper');
  await studio.getByLabel('Paper size').selectOption('legal');
  await studio.getByRole('checkbox', { name: 'Halves on the fold' }).check();
  await goTo(studio, 'Head');
  await studio.getByRole('textbox', { name: 'Whose head' }).fill('Euphonium');
  await studio.getByRole('textbox', { name: 'Head girth' }).fill('23,5');
  await studio.getByRole('textbox', { name: 'Second reading' }).fill('23 1/');
  await expect(studio.getByText('Type a length such as 21 1/2')).toBeVisible();
  const before = await everything(studio);
  await goTo(studio, 'Head');
  await studio.getByRole('textbox', { name: 'Whose head' }).fill('Bass drum');
  // At once: nothing may wait for a rest that does not come.
  await studio.reload();
  await expect(tab(studio, 'Head')).toHaveAttribute('aria-selected', 'true');
  await expect(studio.getByRole('textbox', { name: 'Whose head' })).toHaveValue('Bass drum');
  await expect(studio.getByRole('textbox', { name: 'Head girth' })).toHaveValue('23,5');
  await expect(studio.getByRole('textbox', { name: 'Second reading' })).toHaveValue('23 1/');
  await expect(studio.getByText('Type a length such as 21 1/2')).toBeVisible();
  await studio.getByRole('textbox', { name: 'Whose head' }).fill('Euphonium');
  expect(await everything(studio)).toEqual(before);
});

test('a wish that cannot be sewn is still there after a reload, and so is the last cap that can', async ({
  studio,
}) => {
  await slider(studio, 'Side band height').press('Home');
  await slider(studio, 'Crown fullness').press('End');
  await expect(studio.getByText(/cannot reach out that far/)).toBeVisible();
  const last = await outline(studio);
  await studio.reload();
  await expect(studio.getByText(/cannot reach out that far/)).toBeVisible();
  await expect(typedField(studio, 'Crown fullness')).toHaveValue('32.0 cm');
  expect(await outline(studio)).toBe(last);
});

test('what this browser keeps, damaged, does not keep the app from starting', async ({ studio }) => {
  await studio.goto('about:blank');
  await studio.addInitScript(() => {
    if (location.protocol !== 'about:')
      localStorage.setItem('capwright', '{"state":{"wish":{"cap":42}},"ver');
  });
  await studio.goto('./');
  await expect(studio.getByRole('status').filter({ hasText: 'could not be read' })).toBeVisible();
  await expect(typedField(studio, 'Ease')).toHaveValue('1.3 cm');
});
