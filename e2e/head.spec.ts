import { goTo, outline, tally, unitSwitch } from './at-hand.ts';
import { expect, test } from './studio.ts';

test.beforeEach(async ({ studio }) => {
  await goTo(studio, 'Head');
});

const ways = [
  { unit: 'in', typed: '21 1/2', shown: '= 54.6 cm · 21 1/2 in', inside: '22 in' },
  { unit: 'in', typed: '22¼"', shown: '= 56.5 cm · 22 1/4 in', inside: '22 3/4 in' },
  { unit: 'in', typed: '54.6cm', shown: '= 54.6 cm · 21 1/2 in', inside: '22 in' },
  { unit: 'cm', typed: '57,3', shown: '= 57.3 cm · 22 9/16 in', inside: '58.6 cm' },
  { unit: 'cm', typed: '54,6', shown: '= 54.6 cm · 21 1/2 in', inside: '55.9 cm' },
  { unit: 'cm', typed: '22.6 in', shown: '= 57.4 cm · 22 5/8 in', inside: '58.7 cm' },
] as const;

test('a head girth is understood as people type it, and what was understood is said', async ({ studio }) => {
  const girth = studio.getByRole('textbox', { name: 'Head girth' });
  for (const { unit, typed, shown, inside } of ways) {
    // From a head that none of these is, so that each has to be understood anew.
    await girth.fill('60 cm');
    await expect(tally(studio, /^Inside/)).toHaveText(/^Inside (61\.3 cm|24 1\/8 in)$/);
    await unitSwitch(studio, unit).click();
    await girth.fill(typed);
    await expect(studio.getByText(shown, { exact: true }), typed).toBeVisible();
    await expect(girth).toHaveValue(typed);
    await expect(tally(studio, /^Inside/), typed).toHaveText(`Inside ${inside}`);
  }
});

test('a text that is no length stays as it is with a word beside it, and the cap stays', async ({
  studio,
}) => {
  const girth = studio.getByRole('textbox', { name: 'Head girth' });
  const before = await outline(studio);
  const understood = studio.getByText('= 54.6 cm · 21 1/2 in');
  const verdict = studio.getByText(/^Within what adults measure/);
  await expect(understood.or(verdict)).toHaveCount(2);
  await girth.fill('about 55');
  await expect(studio.getByText('“about 55” cannot be read')).toBeVisible();
  // Nothing speaks of the girth from before meanwhile.
  await expect(understood.or(verdict)).toHaveCount(0);
  await expect(girth).toHaveAttribute('aria-invalid', 'true');
  await girth.blur();
  await expect(girth).toHaveValue('about 55');
  await expect(tally(studio, /^Inside/)).toHaveText('Inside 55.9 cm');
  expect(await outline(studio)).toBe(before);
  await girth.fill('55');
  await expect(studio.getByText('cannot be read')).toBeHidden();
  await expect(girth).not.toHaveAttribute('aria-invalid');
  await expect(tally(studio, /^Inside/)).toHaveText('Inside 56.3 cm');
});

test('a girth typed in the other unit is offered as what was meant, and the focus goes to its field', async ({
  studio,
}) => {
  const girth = studio.getByRole('textbox', { name: 'Head girth' });
  await unitSwitch(studio, 'in').click();
  await girth.fill('57');
  await studio.getByRole('button', { name: 'Use 22 7/16 in' }).click();
  await expect(girth).toHaveValue('22 7/16 in');
  await expect(girth).toBeFocused();
});

test('a hat size fills in the girth, and a girth the hat size', async ({ studio }) => {
  const girth = studio.getByRole('textbox', { name: 'Head girth' });
  const size = (system: string) => studio.getByRole('combobox', { name: `Hat size, ${system}` });
  // Hatters' tables, common practice: 58 cm is EU 58, UK 7 1/8, US 7 1/4.
  await size('EU').selectOption('58');
  await expect(girth).toHaveValue('58.0 cm');
  await expect(size('UK')).toHaveValue('7 1/8');
  await expect(size('US')).toHaveValue('7 1/4');
  await expect(tally(studio, /^Inside/)).toHaveText('Inside 59.3 cm');
  await girth.fill('56');
  await expect(size('EU')).toHaveValue('56');
  await expect(size('US')).toHaveValue('7');
});

test('up to three readings are taken together, and their spread is said', async ({ studio }) => {
  await studio.getByRole('textbox', { name: 'Head girth' }).fill('54.6');
  await studio.getByRole('textbox', { name: 'Second reading' }).fill('55.0');
  await expect(tally(studio, /^Inside/)).toHaveText('Inside 56.1 cm');
  await studio.getByRole('textbox', { name: 'Third reading' }).fill('55.4');
  await expect(studio.getByText('Taken together 55.0 cm; the readings lie 0.8 cm apart.')).toBeVisible();
  await expect(tally(studio, /^Inside/)).toHaveText('Inside 56.3 cm');
  await expect(studio.getByRole('textbox', { name: /reading/ })).toHaveCount(2);
  // An emptied reading is taken off again.
  await studio.getByRole('textbox', { name: 'Third reading' }).fill('');
  await studio.getByRole('textbox', { name: 'Third reading' }).blur();
  await expect(tally(studio, /^Inside/)).toHaveText('Inside 56.1 cm');
});
