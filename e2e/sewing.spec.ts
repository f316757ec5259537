import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright/test';
import { readPdf } from '../test/oracles/pdf-reader.ts';
import { goTo, lengthIn, outline, shown, tally, typedField, unitSwitch } from './at-hand.ts';
import { download, mapOf, sheetsSaid } from './printed.ts';
import { expect, test } from './studio.ts';

const boxes = (page: Page) => page.getByRole('checkbox', { name: /^Done: / });

/** What each step is called, once the stage is there. */
const titles = async (page: Page): Promise<readonly string[]> => {
  await expect(boxes(page).first()).toBeVisible();
  return boxes(page).evaluateAll((all) => all.map((box) => box.getAttribute('aria-label')!.slice(6)));
};

test('one cap is followed from its first step to its last', async ({ studio }) => {
  const inside = lengthIn(await tally(studio, /^Inside/).textContent());
  await goTo(studio, 'Sewing');
  const steps = await titles(studio);
  expect(steps.length).toBeGreaterThan(15);
  expect(steps[0]).toMatch(/cloth/);
  for (const title of steps) {
    // The next step opens by itself once the one before is ticked off: with its drawing and its words.
    await expect(studio.getByRole('button', { name: title, exact: false, expanded: true })).toBeVisible();
    await expect(studio.getByRole('img', { name: `Drawing: ${title}` })).toBeVisible();
    await expect(studio.getByRole('checkbox', { name: `Done: ${title}` })).toBeInViewport();
    if (title === 'Press, and try it on') {
      const said = await studio.getByText(/^Inside, it is/).textContent();
      expect(lengthIn(said)).toBe(inside);
    }
    await studio.getByRole('checkbox', { name: `Done: ${title}` }).check();
  }
  await expect(studio.getByText(`${steps.length} of ${steps.length} done`)).toBeVisible();
});

test('ticks survive a reload and are no steps of undo', async ({ studio }) => {
  await goTo(studio, 'Sewing');
  const [first, second, third] = await titles(studio);
  await studio.getByRole('checkbox', { name: `Done: ${first}` }).check();
  await studio.getByRole('checkbox', { name: `Done: ${second}` }).check();
  await expect(studio.getByRole('button', { name: 'Undo' })).toBeDisabled();
  await studio.reload();
  await shown(studio, 'Sewing');
  await expect(studio.getByRole('checkbox', { name: `Done: ${first}` })).toBeChecked();
  await expect(studio.getByRole('checkbox', { name: `Done: ${second}` })).toBeChecked();
  await expect(studio.getByRole('checkbox', { name: `Done: ${third}` })).not.toBeChecked();
  // The first that is not done lies open.
  await expect(studio.getByRole('button', { name: third!, expanded: true })).toBeVisible();
  await studio.getByRole('button', { name: 'Start again' }).click();
  await expect(studio.getByRole('checkbox', { name: `Done: ${first}` })).not.toBeChecked();
  await expect(studio.getByRole('heading', { name: 'Sewing', exact: true })).toBeFocused();
});

test('what the spec makes needless is absent', async ({ studio }) => {
  await goTo(studio, 'Sewing');
  expect(await titles(studio)).toContain('Make the strap');
  await goTo(studio, 'Cap');
  await studio.locator('summary', { hasText: 'Strap' }).click();
  await studio.getByRole('checkbox', { name: 'Strap', exact: true }).uncheck();
  await goTo(studio, 'Sewing');
  const now = await titles(studio);
  expect(now).not.toContain('Make the strap');
  expect(now).not.toContain('Buttonholes and buttons');
});

test('arrow keys walk the steps, enter opens one, and the pieces light up on the table', async ({
  studio,
}) => {
  await goTo(studio, 'Sewing');
  const steps = await titles(studio);
  const title = (i: number) => studio.getByRole('button', { name: steps[i]! }).first();
  await title(0).focus();
  await studio.keyboard.press('ArrowDown');
  await expect(title(1)).toBeFocused();
  const tip = steps.findIndex((name) => name.startsWith('Sew the tip'));
  for (let i = 1; i < tip; i++) await studio.keyboard.press('ArrowDown');
  await expect(title(tip)).toBeFocused();
  await studio.keyboard.press('Enter');
  await expect(studio.getByRole('img', { name: `Drawing: ${steps[tip]}` })).toBeVisible();
  // The table's caption names the piece that is lit.
  await expect(studio.locator('.table-caption')).toContainText('Tip');
  await studio.keyboard.press('ArrowUp');
  await expect(studio.locator('.table-caption')).toContainText('Side band');
});

test('the booklet holds every step, with the numbers of the screen', async ({ studio }) => {
  await unitSwitch(studio, 'in').check({ force: true });
  await goTo(studio, 'Sewing');
  const steps = await titles(studio);
  const coming = studio.waitForEvent('download');
  await studio.getByRole('button', { name: 'Download sewing booklet PDF' }).click();
  const file = await coming;
  expect(file.suggestedFilename()).toBe('Cornet’s cap, sewing.pdf');
  const pdf = await readPdf(new Uint8Array(await readFile(await file.path())));
  expect(pdf.info.Title).toBe('Cornet’s cap, sewing booklet');
  expect(pdf.pages[0]!.width).toBeCloseTo(215.9, 1);
  const flat = (text: string) => text.normalize('NFKC').replace(/⁄/g, '/').replace(/\s+/g, '');
  const all = flat(pdf.pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' '));
  steps.forEach((title, i) => {
    expect(all).toContain(flat(`${i + 1}. ${title}`));
  });
  const inside = await tally(studio, /^Inside/).textContent();
  expect(all).toContain(flat(`Finished girth ${inside!.replace('Inside', '').trim()}`));
});

test('the type can be large, and the words are explained where they first appear', async ({ studio }) => {
  await goTo(studio, 'Sewing');
  const size = () =>
    studio
      .getByText('Press it flat along the grain.')
      .evaluate((element) => Number.parseFloat(getComputedStyle(element).fontSize));
  const usual = await size();
  await studio.getByRole('checkbox', { name: 'Large type' }).check();
  await expect.poll(size).toBeGreaterThan(usual * 1.3);
  await expect(studio.getByRole('term').filter({ hasText: /^grain$/ })).toBeVisible();
});

test('a fitting is tried on, agreed to, and is one step of undo; it stays with the head', async ({
  studio,
}) => {
  const isInside = async (): Promise<number> => lengthIn(await tally(studio, /^Inside/).textContent());
  const inside = await isInside();
  await goTo(studio, 'Sewing');
  await studio.getByText('Fitting: how does it sit?').click();
  await studio.getByRole('checkbox', { name: 'I pinched it out at the back' }).check();
  // The usual 12.7 mm of ease cannot give up more than themselves.
  await studio.getByRole('textbox', { name: /pins take up/ }).fill('9 cm');
  await expect(studio.getByText(/7\.7 cm are still too much\. Measure the head again/)).toBeVisible();
  await studio.getByRole('textbox', { name: /pins take up/ }).fill('8 mm');
  await expect(studio.getByText(/more room than this head wants/)).toBeVisible();
  const flat = await outline(studio);

  await studio.getByRole('button', { name: 'Show it on the table' }).click();
  await expect.poll(() => outline(studio)).not.toBe(flat);
  await expect.poll(isInside).toBeCloseTo(inside - 8, 0);
  await expect(studio.getByText('The table shows a change on trial.')).toBeVisible();
  // Undo would put it back as well.
  await expect(studio.getByRole('button', { name: 'Undo' })).toBeEnabled();
  await studio.getByRole('button', { name: 'Put it back' }).click();
  await expect.poll(() => outline(studio)).toBe(flat);
  await expect(studio.getByRole('button', { name: 'Undo' })).toBeDisabled();

  await studio.getByRole('button', { name: 'Change the pattern' }).click();
  await expect.poll(() => outline(studio)).not.toBe(flat);
  await expect(studio.getByRole('heading', { name: 'Fittings of Cornet' })).toBeVisible();
  await studio.reload();
  await shown(studio, 'Sewing');
  await studio.getByText('Fitting: how does it sit?').click();
  await expect(studio.getByText(/I pinched it out at the back\. Ease/)).toBeVisible();
  await expect.poll(isInside).toBeCloseTo(inside - 8, 0);
});

test('a fitting that is left untold goes back by itself, and one step takes a told one back', async ({
  studio,
}) => {
  await goTo(studio, 'Sewing');
  const flat = await outline(studio);
  await studio.getByText('Fitting: how does it sit?').click();
  await studio.getByRole('checkbox', { name: 'The crown stands like a box' }).check();
  await studio.getByRole('button', { name: 'Show it on the table' }).click();
  await expect.poll(() => outline(studio)).not.toBe(flat);
  await goTo(studio, 'Cap');
  await expect.poll(() => outline(studio)).toBe(flat);
  await goTo(studio, 'Sewing');
  await studio.getByText('Fitting: how does it sit?').click();
  await studio.getByRole('checkbox', { name: 'The crown stands like a box' }).check();
  await studio.getByRole('checkbox', { name: 'The crown collapses' }).check();
  await expect(studio.getByText(/pull crown fullness two ways/)).toBeVisible();
  await expect(studio.getByRole('button', { name: 'Change the pattern' })).toBeHidden();
  await studio.getByRole('checkbox', { name: 'The crown collapses' }).uncheck();
  await studio.getByRole('button', { name: 'Change the pattern' }).click();
  await expect.poll(() => outline(studio)).not.toBe(flat);
  await studio.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => outline(studio)).toBe(flat);
  await expect(studio.getByRole('button', { name: 'Undo' })).toBeDisabled();
});

test('the screen is kept on while it is asked for', async ({ page }) => {
  await page.addInitScript(() => {
    const held: string[] = [];
    Object.assign(globalThis, { held });
    Object.defineProperty(navigator, 'wakeLock', {
      value: {
        request: async (kind: string) => {
          held.push(`hold ${kind}`);
          return { release: async () => void held.push('let go') };
        },
      },
    });
  });
  const held = () => page.evaluate(() => (globalThis as unknown as { held: string[] }).held);
  await page.goto('./');
  await goTo(page, 'Sewing');
  expect(await held()).toEqual([]);
  await page.getByRole('checkbox', { name: 'Keep the screen on' }).check();
  await expect.poll(held).toEqual(['hold screen']);
  await goTo(page, 'Cap');
  await expect.poll(held).toEqual(['hold screen', 'let go']);
});

test('the booklet can follow the pattern in one file, on the same paper', async ({ studio }) => {
  await goTo(studio, 'Paper');
  // Neither needs a name for the cap.
  await studio.getByRole('textbox', { name: 'Name of the cap' }).fill('');
  await mapOf(studio);
  await studio.getByRole('checkbox', { name: 'With the sewing booklet' }).check();
  const { pdf, name } = await download(studio);
  expect(name).toBe('Cap, A4.pdf');
  const sheets = await sheetsSaid(studio);
  expect(pdf.pages.length).toBeGreaterThan(sheets + 2);
  const said = (i: number) => pdf.pages[i]!.texts.map(({ text }) => text).join(' ');
  expect(said(0)).toContain('100 mm');
  // The rows of stitches on the pieces are explained with the other lines.
  expect(said(0)).toContain('topstitching; beside a stiffener');
  expect(said(sheets)).toContain('Sewing booklet');
  expect(said(pdf.pages.length - 1)).toMatch(/Sewing (\d+) of \1/);
  for (const { width, height } of pdf.pages) {
    expect(width).toBeCloseTo(210, 1);
    expect(height).toBeCloseTo(297, 1);
  }
});

test('a fitting and the steps are those of the cap on the table: another from the shelf begins anew', async ({
  studio,
}) => {
  await goTo(studio, 'Sewing');
  const steps = await titles(studio);
  for (const title of steps.slice(0, 3))
    await studio.getByRole('checkbox', { name: `Done: ${title}` }).check();
  await expect(studio.getByRole('button', { name: steps[3]!, expanded: true })).toBeVisible();
  await studio.getByText('Fitting: how does it sit?').click();
  await studio.getByRole('checkbox', { name: 'It is tight' }).check();
  await studio.getByRole('button', { name: 'Shelf', exact: true }).click();
  await studio.getByRole('button', { name: 'New cap for Cornet' }).click();
  await expect(studio.getByText(`0 of ${steps.length} done`)).toBeVisible();
  await expect(studio.getByRole('button', { name: steps[0]!, expanded: true })).toBeVisible();
  await studio.getByText('Fitting: how does it sit?').click();
  await expect(studio.getByRole('checkbox', { name: 'It is tight' })).not.toBeChecked();
});

test('what a fitting found of one head is not said of the next', async ({ studio }) => {
  await goTo(studio, 'Head');
  await studio.getByText('Head cards', { exact: true }).click();
  await studio.getByRole('button', { name: 'Bass drum', exact: true }).click();
  await goTo(studio, 'Sewing');
  await studio.getByText('Fitting: how does it sit?').click();
  await studio.getByRole('checkbox', { name: 'It is loose and slips' }).check();
  // The step that is taken back is the head: the cap is Cornet's again.
  await studio.getByRole('button', { name: 'Undo' }).click();
  await expect(studio.getByRole('textbox', { name: 'Name of the cap' })).toHaveValue('Cornet’s cap');
  await studio.getByText('Fitting: how does it sit?').click();
  await expect(studio.getByRole('checkbox', { name: 'It is loose and slips' })).not.toBeChecked();
});

test('what pins took up stays as long as it was when the units are switched', async ({ studio }) => {
  await goTo(studio, 'Sewing');
  await studio.getByText('Fitting: how does it sit?').click();
  await studio.getByRole('checkbox', { name: 'It is tight' }).check();
  const more = studio.getByRole('textbox', { name: /How much more does it want/ });
  await more.fill('1.5');
  await expect(studio.getByText('Ease: 1.3 cm → 2.8 cm')).toBeVisible();
  await unitSwitch(studio, 'in').check({ force: true });
  await expect(more).toHaveValue('9/16 in');
  // 12.7 mm and 15 mm: 1.09 in.
  await expect(studio.getByText('Ease: 1/2 in → 1 1/16 in')).toBeVisible();
  await unitSwitch(studio, 'cm').check({ force: true });
  await expect(more).toHaveValue('1.5');
});

test('a fitting of a cap that cannot be sewn says what is in the way', async ({ studio }) => {
  await typedField(studio, 'Crown fullness').fill('99');
  await goTo(studio, 'Sewing');
  await studio.getByText('Fitting: how does it sit?').click();
  await studio.getByRole('checkbox', { name: 'It is tight' }).check();
  await expect(studio.getByRole('button', { name: 'Show it on the table' })).toBeDisabled();
  await expect(studio.getByRole('button', { name: 'Change the pattern' })).toBeDisabled();
  await expect(studio.getByText(/^With what is wished now this cannot be sewn\. .*crown/i)).toBeVisible();
});

test('a fitting is told in the words and units of the style it was made in, whatever lies on the table', async ({
  studio,
}) => {
  await goTo(studio, 'Sewing');
  await studio.getByText('Fitting: how does it sit?').click();
  await studio.getByRole('checkbox', { name: 'The visor points up' }).check();
  await studio.getByRole('button', { name: 'Change the pattern' }).click();
  const note = studio.getByText(/The visor points up\. Visor drop 30° → 36°/);
  await expect(note).toBeVisible();
  // Where a page is opened with a beret on the table, the style of the fitting has yet to be fetched.
  await goTo(studio, 'Cap');
  await studio.getByText(/^Style/).click();
  await studio.getByRole('radio', { name: 'Beret' }).check();
  await expect(studio.getByText('Style Beret')).toBeVisible();
  await studio.reload();
  await goTo(studio, 'Sewing');
  await studio.getByText('Fitting: how does it sit?').click();
  await expect(note).toBeVisible();
});
