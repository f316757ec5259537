import type { Locator, Page } from 'playwright/test';
import { drag, lengthIn, outline, slider, tab, tally, typedField, unitSwitch } from './at-hand.ts';
import { expect, test } from './studio.ts';

/** The three lengths of "21.50 cm + 1.90 cm = 23.40 cm" in hundredths of a centimetre. */
const sumOf = async (panel: Locator): Promise<readonly number[]> => {
  await expect(panel).toContainText(' = ');
  const [, ...parts] =
    /([\d.]+)\scm \+ ([\d.]+)\scm = ([\d.]+)\scm/.exec((await panel.textContent()) ?? '') ?? [];
  return parts.map((part) => Math.round(Number(part) * 100));
};

const drags = [
  {
    name: 'Ease',
    right: 90,
    figure: /^Inside/,
    before: 55.88,
    detail: 'Finished inside girth',
    other: 54.61,
  },
  { name: 'Crown fullness', right: 70, figure: /^Crown/, before: 66.04, detail: 'Crown girth', other: 55.88 },
] as const;

/** The number of a slider where it is shown in the place of its field. */
const shownNumber = (page: Page, name: string): Locator =>
  page.locator('.set', { has: typedField(page, name) }).locator('.shown');

test('the number beside a slider follows the hand, its fraction set as one, and an open reckoning when it rests', async ({
  studio,
}) => {
  await unitSwitch(studio, 'in').click();
  await tally(studio, /^Inside/).click();
  const panel = studio.getByRole('complementary', { name: 'Finished inside girth' });
  await expect(panel).toContainText('21.500 in + 0.500 in = 22.000 in');
  const thumb = slider(studio, 'Ease');
  await drag(studio, thumb, 35, 2);
  const said = (await thumb.getAttribute('aria-valuetext'))!;
  const fraction = /\d+\/\d+/.exec(said)![0];
  await expect(shownNumber(studio, 'Ease')).toHaveText(said);
  await expect(shownNumber(studio, 'Ease').locator('.fraction')).toHaveText(fraction);
  await expect(panel).toContainText(`21.500 in + ${(lengthIn(said) / 25.4).toFixed(3)} in = `);
  await studio.mouse.up();
  await expect(typedField(studio, 'Ease')).toHaveValue(said);
});

for (const { name, right, figure, before, detail, other } of drags) {
  test(`dragging ${name} reshapes the pieces all the way, as one step, by exactly what was dragged`, async ({
    studio,
  }) => {
    const first = await outline(studio);
    const thumb = slider(studio, name);
    const was = await typedField(studio, name).inputValue();
    const seen = await drag(studio, thumb, right);
    // Every stretch of the way looks different, and all before the mouse is let go.
    expect(new Set([first, ...seen]).size).toBe(seen.length + 1);
    const now = await tally(studio, figure).textContent();
    expect(lengthIn(now)).toBeGreaterThan(before * 10 + 3);
    const said = (await thumb.getAttribute('aria-valuetext'))!;
    await expect(shownNumber(studio, name)).toHaveText(said);
    await studio.mouse.up();
    await expect(typedField(studio, name)).toHaveValue(said);
    const last = await outline(studio);
    await expect(tally(studio, figure)).toHaveText(now!);

    // What is added is what the field says; a drag comes to rest on whole millimetres.
    await tally(studio, figure).click();
    const panel = studio.getByRole('complementary', { name: detail });
    const [head, added, sum] = await sumOf(panel);
    expect(head).toBe(Math.round(other * 100));
    expect(added! % 10).toBe(0);
    expect(sum).toBe(head! + added!);
    await expect(typedField(studio, name)).toHaveValue(`${(added! / 100).toFixed(1)} cm`);

    const undo = studio.getByRole('button', { name: 'Undo' });
    const redo = studio.getByRole('button', { name: 'Redo' });
    await undo.click();
    await expect(typedField(studio, name)).toHaveValue(was);
    expect(await outline(studio)).toBe(first);
    await expect(undo).toBeDisabled();
    await expect(undo).toBeFocused();
    await redo.click();
    expect(await outline(studio)).toBe(last);
    await expect(redo).toBeDisabled();
  });
}

test('an arrow key moves a slider by 2 mm, or by an eighth of an inch', async ({ studio }) => {
  const ease = slider(studio, 'Ease');
  const field = typedField(studio, 'Ease');
  await field.fill('1.6 cm');
  await ease.press('ArrowRight');
  await expect(field).toHaveValue('1.8 cm');
  await expect(tally(studio, /^Inside/)).toHaveText('Inside 56.4 cm');
  await ease.press('ArrowLeft');
  await ease.press('ArrowDown');
  await expect(field).toHaveValue('1.4 cm');
  await unitSwitch(studio, 'in').click();
  await field.fill('1/2');
  await ease.press('ArrowUp');
  await expect(field).toHaveValue('5/8 in');
  await expect(tally(studio, /^Inside/)).toHaveText('Inside 22 1/8 in');
  await ease.press('ArrowLeft');
  await ease.press('ArrowLeft');
  await expect(field).toHaveValue('3/8 in');
  await ease.press('Home');
  await expect(tally(studio, /^Inside/)).toHaveText('Inside 21 1/2 in');
});

test('a double click brings back the usual value', async ({ studio }) => {
  const first = await outline(studio);
  await typedField(studio, 'Crown fullness').fill('15');
  expect(await outline(studio)).not.toBe(first);
  await slider(studio, 'Crown fullness').dblclick();
  // Common practice: the crown is 4 in fuller than the opening.
  await expect(typedField(studio, 'Crown fullness')).toHaveValue('10.2 cm');
  await expect(tally(studio, /^Crown/)).toHaveText('Crown 66.0 cm');
  expect(await outline(studio)).toBe(first);
});

test('undo and redo work from the keyboard', async ({ studio }) => {
  const field = typedField(studio, 'Visor depth');
  await slider(studio, 'Visor depth').press('ArrowRight');
  await slider(studio, 'Ease').press('ArrowRight');
  await expect(field).toHaveValue('5.7 cm');
  await expect(typedField(studio, 'Ease')).toHaveValue('1.5 cm');
  await studio.keyboard.press('Control+z');
  await expect(typedField(studio, 'Ease')).toHaveValue('1.3 cm');
  await expect(field).toHaveValue('5.7 cm');
  await studio.keyboard.press('Control+z');
  await expect(field).toHaveValue('5.5 cm');
  await studio.keyboard.press('Control+Shift+z');
  await expect(field).toHaveValue('5.7 cm');
  await studio.keyboard.press('Control+y');
  await expect(typedField(studio, 'Ease')).toHaveValue('1.5 cm');
  await expect(studio.getByRole('button', { name: 'Redo' })).toBeDisabled();
});

test('a thumb lies where its value is once it is let go, also when a step is taken back meanwhile', async ({
  studio,
}) => {
  const thumb = slider(studio, 'Ease');
  await drag(studio, thumb, 60, 2);
  expect(Number(await thumb.inputValue())).toBeGreaterThan(13);
  await studio.keyboard.press('Control+z');
  await expect(typedField(studio, 'Ease')).toHaveValue('1.3 cm');
  await studio.mouse.up();
  await expect(thumb).toHaveValue('12.7');
});

test('what the browser keeps for itself moves no thumb and walks to no stage', async ({ studio }) => {
  const ease = slider(studio, 'Ease');
  await ease.press('Alt+ArrowLeft');
  await ease.press('ArrowRight');
  await expect(typedField(studio, 'Ease')).toHaveValue('1.5 cm');
  await expect(ease).toHaveValue('14.7');
  await tab(studio, 'Cap').press('Alt+ArrowRight');
  await tab(studio, 'Cap').press('Control+End');
  await tab(studio, 'Cap').press('ArrowLeft');
  await expect(tab(studio, 'Head')).toBeFocused();
});
