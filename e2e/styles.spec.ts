import type { Page } from 'playwright/test';
import { fetchStyles } from '../src/caps/registry.ts';
import { drag, goTo, outline, painted, slider, tally, typedField } from './at-hand.ts';
import { download, joined, mapOf, stitchLines } from './printed.ts';
import { expect, test } from './studio.ts';

const styles = await fetchStyles();

const openStyles = async (page: Page): Promise<void> => {
  await page.getByText(/^Style/).click();
  await expect(page.getByRole('radio', { name: styles[0]!.name })).toBeVisible();
};

const choose = async (page: Page, name: string): Promise<void> => {
  await openStyles(page);
  await page.getByRole('radio', { name }).check();
  await expect(page.getByText(`Style ${name}`)).toBeVisible();
};

/** How many seams meet, and of how many. */
const seams = async (page: Page): Promise<readonly number[]> => {
  const [, meeting, all] = /(\d+) of (\d+)/.exec((await tally(page, /seams meet/).textContent()) ?? '') ?? [];
  return [Number(meeting), Number(all)];
};

/** The demo's head, mm. */
const HEAD = 21.5 * 25.4;

for (const { name, parameters } of styles) {
  test(`a ${name.toLowerCase()} is chosen, changed and printed`, async ({ studio }) => {
    test.slow();
    if (name !== styles[0]!.name) await choose(studio, name);
    const dragged = Object.values(parameters)
      .filter((p) => 'step' in p && !p.when)
      .slice(0, 3);
    for (const { label } of dragged) {
      const before = await outline(studio);
      const thumb = slider(studio, label);
      await thumb.scrollIntoViewIfNeeded();
      const seen = await drag(studio, thumb, 24, 5);
      await studio.mouse.up();
      await painted(studio);
      expect(new Set([before, ...seen]).size, `${label} reshapes the pieces`).toBeGreaterThan(3);
    }
    const [meeting, all] = await seams(studio);
    expect(meeting).toBeGreaterThan(3);
    expect(meeting).toBe(all);

    // Whatever goes once round the head is a straight strip in every style: band, facing or sweatband.
    const ease = await typedField(studio, 'Ease').inputValue();
    // Behind, where an opening interrupts it and lets it out, it is as much shorter and longer.
    const cm = async (key: string): Promise<number> => {
      const row = parameters[key];
      return row ? Number.parseFloat(await typedField(studio, row.label).inputValue()) : 0;
    };
    const opened = (await cm('openingWidth')) - (await cm('backRoom'));
    await goTo(studio, 'Paper');
    const names = await mapOf(studio);
    const { pdf } = await download(studio);
    const girth = HEAD + (Number.parseFloat(ease) - opened) * 10;
    const lengths = joined(stitchLines(pdf, names));
    const nearest = Math.min(...lengths.map((length) => Math.abs(length - girth)));
    expect(nearest, `a straight seam of ${girth} mm`).toBeLessThan(0.05);
  });
}

test('another style keeps what both have, is one step of undo, and is there after a reload', async ({
  studio,
}) => {
  const other = styles[1]!;
  await typedField(studio, 'Ease').fill('1.9');
  await expect(tally(studio, /^Inside/)).toHaveText('Inside 56.5 cm');
  const before = await outline(studio);
  await choose(studio, other.name);
  await expect(typedField(studio, 'Ease')).toHaveValue(/^1\.9/);
  const after = await outline(studio);
  expect(after).not.toBe(before);
  await studio.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => outline(studio)).toBe(before);
  await studio.getByRole('button', { name: 'Redo' }).click();
  await expect.poll(() => outline(studio)).toBe(after);
  // At once: keeping waits for a rest, or for the page to be left.
  await studio.reload();
  await expect(studio.getByText(`Style ${other.name}`)).toBeVisible();
  await expect.poll(() => outline(studio)).toBe(after);
});

test('every style is shown by a drawing of its own, with its names and its starting points', async ({
  studio,
}) => {
  await openStyles(studio);
  for (const { name, alsoCalled, starts } of styles) {
    const card = studio.locator('.style', { has: studio.getByRole('radio', { name }) });
    await expect(card).toContainText(alsoCalled.join(', '));
    await expect(card.locator('svg path').nth(1)).toBeAttached();
    await card.getByRole('radio').check();
    for (const start of starts) await expect(studio.getByRole('button', { name: start.name })).toBeVisible();
  }
  const sketches = () => studio.locator('.style svg').evaluateAll((all) => all.map((svg) => svg.innerHTML));
  const drawn = await sketches();
  expect(new Set(drawn).size).toBe(styles.length);

  // All follow what is changed on the table, in whatever style that is.
  await typedField(studio, 'Ease').fill('2.6');
  const alike = async () => (await sketches()).filter((sketch, i) => sketch === drawn[i]).length;
  await expect.poll(alike).toBe(0);
});

test('a piece that takes its shape by itself is not called to be coaxed', async ({ studio }) => {
  await tally(studio, /^Show the arithmetic/).click();
  const panel = studio.getByRole('complementary', { name: 'The arithmetic' });
  await panel.getByLabel('Piece').selectOption('Band');
  await expect(panel).toContainText('It takes its shape by itself');
  await expect(panel).not.toContainText('To be coaxed');
});
