import type { Locator, Page } from 'playwright/test';
import { goTo, lengthIn, outline, stages, table, tally, unitSwitch } from './at-hand.ts';
import { expect, test } from './studio.ts';

const fields = (page: Page): Locator => page.getByRole('tabpanel').locator('input.figures');

const valuesOf = (page: Page): Promise<readonly string[]> =>
  fields(page).evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value));

test('switching the unit turns every figure at once and leaves the cap as it is', async ({ studio }) => {
  const before = await outline(studio);
  const inCm = await valuesOf(studio);
  expect(inCm.filter((value) => value.endsWith('cm')).length).toBeGreaterThan(10);
  await unitSwitch(studio, 'in').click();
  await expect(tally(studio, /^Inside/)).toHaveText('Inside 22 in');
  const inInches = await valuesOf(studio);
  expect(inInches).toHaveLength(inCm.length);
  for (const [i, cm] of inCm.entries()) {
    const inch = inInches[i] ?? '';
    if (!cm.endsWith('cm')) {
      expect(inch).toBe(cm);
      continue;
    }
    expect(inch).toMatch(/ in$/);
    // Half a millimetre, and half a sixteenth of an inch, are lost in the writing.
    expect(Math.abs(lengthIn(inch) - lengthIn(cm))).toBeLessThan(0.5 + 25.4 / 32 + 0.01);
  }
  expect(await outline(studio)).toBe(before);
  await unitSwitch(studio, 'cm').click();
  await expect.poll(() => valuesOf(studio)).toEqual(inCm);
});

test('in inches no stage, no piece and no number of the tally speaks of centimetres', async ({ studio }) => {
  await unitSwitch(studio, 'in').click();
  const cm = /\d\scm\b/;
  for (const stage of stages) {
    await goTo(studio, stage);
    const panel = studio.getByRole('tabpanel');
    await expect(panel).toHaveText(/\S/);
    // What was understood of a head girth is said in both units, and hat sizes are what they are.
    const said = ((await panel.textContent()) ?? '').replace(/= [\d.]+\scm · [\d\s/]+\sin/, '');
    expect(said, stage).not.toMatch(cm);
    for (const value of await valuesOf(studio)) expect(value, stage).not.toMatch(cm);
  }
  await expect(studio.getByRole('region', { name: 'The tally' })).toContainText('22 in');
  await expect(studio.getByRole('region', { name: 'The tally' })).not.toContainText(cm);
  await expect(table(studio).getByRole('list')).toContainText(/\d in/);
  await expect(table(studio).getByRole('list')).not.toContainText(cm);
  await goTo(studio, 'Cap');
  await tally(studio, /^Show the arithmetic/).click();
  const panel = studio.getByRole('complementary', { name: 'The arithmetic' });
  await panel.getByLabel('Piece').selectOption('Side band');
  await panel.getByText('Draw it by hand').click();
  // A quarter of a ring of 13 3/4 and 16 1/4 in over 0.4 rad (common practice): half its chord is 16 1/4 · sin 0.2.
  await expect(panel).toContainText('a box, 3 1/4 in broad and 2 3/4 in high');
  await expect(panel.getByRole('row', { name: /^corner/ }).nth(1)).toHaveText('corner2 3/40');
  await expect(panel).not.toContainText(cm);
});

test('home paper follows the unit', async ({ studio }) => {
  await goTo(studio, 'Paper');
  const paper = studio.getByLabel('Paper size');
  await expect(paper).toHaveValue('a4');
  await unitSwitch(studio, 'in').click();
  await expect(paper).toHaveValue('letter');
  await paper.selectOption('a3');
  await unitSwitch(studio, 'cm').click();
  await expect(paper).toHaveValue('a3');
});
