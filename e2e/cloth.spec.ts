import { readFile } from 'node:fs/promises';
import type { Download, Locator, Page } from 'playwright/test';
import { readPdf } from '../test/oracles/pdf-reader.ts';
import { goTo, lengthIn } from './at-hand.ts';
import { expect, test } from './studio.ts';

test.beforeEach(async ({ studio }) => {
  await goTo(studio, 'Cloth');
  await expect(takes(studio)).toBeVisible();
});

const takes = (page: Page): Locator => page.getByText(/^Takes/);
const taken = async (page: Page): Promise<number> => lengthIn(await takes(page).textContent());
const piece = (page: Page, name: string): Locator =>
  page.getByRole('application', { name: /^Cutting lay/ }).getByRole('button', { name });
/** How far down the screen it begins, pixels. */
const top = async (there: Locator): Promise<number> => (await there.boundingBox())!.y;

test('the lay says what to buy, and a remnant that is too short what has no place', async ({ studio }) => {
  // The band alone, 22 in and twice 1/4 in, lies along the cloth.
  expect(await taken(studio)).toBeCloseTo(22.5 * 25.4, -1);
  await expect(takes(studio)).toContainText('0.6 m');
  await studio.getByLabel('Length at hand').fill('30');
  await expect(studio.getByText('It will not do: Band found no place.')).toBeVisible();
  await expect(studio.getByText(/^Band takes .* along its grain .*: more than this cloth has/)).toBeVisible();
  await studio.getByRole('button', { name: 'Let pieces lie across' }).click();
  await expect(studio.getByText(/^It will do/)).toBeVisible();
  await studio.getByLabel('Length at hand').fill('a bit');
  await expect(studio.getByText(/this is for what stood there before/)).toBeVisible();
});

test('how many caps are cut is typed anew, and no more than 20', async ({ studio }) => {
  const count = studio.getByLabel('Caps in this lay');
  await count.press('End');
  await count.press('Backspace');
  await expect(count).toHaveValue('');
  await count.press('3');
  await expect(count).toHaveValue('3');
  await count.fill('25');
  await expect(studio.getByText('A whole number from 1 to 20, please.')).toBeVisible();
  await count.blur();
  await expect(count).toHaveValue('20');
});

test('half a metre of corduroy will do for a band cut across the grain', async ({ studio }) => {
  const outer = studio.getByRole('group').filter({ has: studio.getByText('Outer', { exact: true }) });
  await outer.getByLabel('Kind').selectOption({ label: 'Corduroy, fine' });
  await studio.getByLabel('Length at hand').fill('50');
  await expect(studio.getByText('It will not do: Band found no place.')).toBeVisible();
  await expect(studio.getByRole('button', { name: 'Let pieces lie across' })).toHaveCount(0);
  await studio.getByRole('button', { name: 'Cut the band across the grain' }).click();
  await expect(studio.getByText(/^It will do/)).toBeVisible();
  await goTo(studio, 'Cap');
  await expect(studio.getByRole('radio', { name: 'Across it' })).toBeChecked();
  await studio.getByRole('button', { name: 'Undo' }).click();
  await expect(studio.getByRole('radio', { name: 'Along it' })).toBeChecked();
});

test('folded cloth takes half as many outlines', async ({ studio }) => {
  const single = await piece(studio, 'Side band').count();
  await studio.getByLabel('Folded along its length').check();
  await expect(piece(studio, 'Side band')).toHaveCount(single / 2);
  const tip = piece(studio, 'Tip, on the fold');
  await expect(tip).toHaveCount(1);
  // Its half can be moved along the fold, and not off it: there it would be half a tip.
  const before = (await tip.boundingBox())!;
  await tip.focus();
  await studio.keyboard.press('ArrowUp');
  await expect(tip).toHaveAttribute('aria-pressed', 'true');
  for (let i = 0; i < 8; i++) await studio.keyboard.press('ArrowRight');
  await expect.poll(async () => (await tip.boundingBox())!.x).toBeGreaterThan(before.x + 5);
  const { bottom } = await tip
    .locator('path')
    .first()
    .evaluate((path) => path.getBoundingClientRect());
  const { bottom: fold } = await studio
    .locator('.lay line.fold')
    .evaluate((cloth) => cloth.getBoundingClientRect());
  expect(Math.abs(bottom - fold)).toBeLessThan(2);
});

test('a piece is dragged and put down, the rest make room, and it is let go again', async ({ studio }) => {
  const tip = piece(studio, 'Tip').first();
  const before = (await tip.boundingBox())!;
  await studio.mouse.move(before.x + before.width / 2, before.y + before.height / 2);
  await studio.mouse.down();
  await studio.mouse.move(before.x + before.width / 2 + 40, before.y + before.height / 2 - 150, { steps: 6 });
  await studio.mouse.up();
  await expect(tip).toHaveAttribute('aria-pressed', 'true');
  // The view may draw nearer or further off, since the lay has another length now.
  await expect.poll(() => top(tip)).toBeLessThan(before.y - 60);
  // Nothing lies over anything once the rest has been laid anew.
  await expect(studio.locator('.laid.wrong')).toHaveCount(0);
  // Where a hand has put it, there it is still after a reload.
  const put = await top(tip);
  await studio.reload();
  await expect(tip).toHaveAttribute('aria-pressed', 'true');
  await expect.poll(() => top(tip)).toBeCloseTo(put, 0);
  await studio.getByRole('button', { name: 'Let go of all pieces' }).click();
  await expect(studio.getByRole('heading', { name: 'Cloth', exact: true })).toBeFocused();
  await expect(tip).toHaveAttribute('aria-pressed', 'false');
});

test('a piece is moved, put down, let go and turned from the keyboard; upside down it stays until there is a nap', async ({
  studio,
}) => {
  const strap = piece(studio, 'Strap').first();
  await strap.focus();
  const before = await top(strap);
  await studio.keyboard.press('ArrowUp');
  await expect(strap).toHaveAttribute('aria-pressed', 'true');
  await expect.poll(() => top(strap)).toBeLessThan(before);
  await studio.keyboard.press('Enter');
  await expect(strap).toHaveAttribute('aria-pressed', 'false');
  const way = async (): Promise<string | undefined> =>
    /rotate\(.*\)/.exec((await strap.locator('path').first().getAttribute('transform')) ?? '')?.[0];
  const upright = await way();
  await studio.keyboard.press('r');
  await expect(strap).toHaveAttribute('aria-pressed', 'true');
  expect(await way()).not.toBe(upright);
  await studio.getByLabel('Nap or one-way print').first().check();
  await expect(strap).toHaveAttribute('aria-pressed', 'false');
  await expect.poll(way).toBe('rotate(0)');
});

test('laying closer shows how far it is, and can be stopped with what it has', async ({ studio }) => {
  // One cap may lie as close as it can at once: the cloth is no shorter than its longest piece. Three leave room to better.
  await studio.getByLabel('Across allowed').first().check();
  await expect.poll(() => taken(studio)).toBeLessThan(400);
  const one = await piece(studio, 'Strap').count();
  await studio.getByLabel('Caps in this lay').fill('3');
  await expect(piece(studio, 'Strap')).toHaveCount(3 * one);
  const before = await taken(studio);
  const closer = studio.getByRole('button', { name: 'Lay it closer' });
  const stop = studio.getByRole('button', { name: 'Stop and keep this' });
  const progress = studio.getByRole('progressbar', { name: 'Laying closer' });
  // Watched and stopped from within the page: on a machine with much to do the time is over before a hand gets there.
  const stopped = studio.getByRole('region', { name: 'Cutting lay' }).evaluate(async (form) => {
    const shown: number[] = [];
    while (!shown.some((part) => part > 0)) {
      await new Promise(requestAnimationFrame);
      shown.push(form.querySelector('progress')?.value ?? 0);
    }
    const button = [...form.querySelectorAll('button')].find(
      (one) => one.textContent === 'Stop and keep this',
    );
    button?.click();
    return { shown: shown.at(-1)!, stopped: button !== undefined };
  });
  await closer.click();
  const how = await stopped;
  expect(how.stopped).toBe(true);
  expect(how.shown).toBeLessThan(1);
  await expect(progress.or(stop)).toHaveCount(0);
  await expect(closer).toBeVisible();
  expect(await taken(studio)).toBeLessThanOrEqual(before);
  await expect(studio.locator('.laid.wrong')).toHaveCount(0);
});

test('scraps of any outline will do, or not', async ({ studio }) => {
  await studio.getByText('Scraps at hand').click();
  await studio.getByRole('button', { name: 'Add a scrap' }).click();
  await studio.getByRole('textbox', { name: 'Scrap 1, corners' }).fill('0 0; 70 0; 75 30; 40 55; 0 50');
  await expect(studio.getByText('The scraps will do.')).toBeVisible();
  await studio.getByRole('button', { name: 'Add a scrap' }).click();
  await expect(studio.getByText('The scraps will do. Scrap 2 stays whole.')).toBeVisible();
  await studio.getByRole('textbox', { name: 'Scrap 2, corners' }).fill('0 0; 5 0; 5 5; 0 5');
  await studio.getByRole('textbox', { name: 'Scrap 1, corners' }).fill('0 0; 30 0; 30 30; 0 20');
  await expect(studio.getByText(/^The scraps will not do: .*Band/)).toBeVisible();
  await studio.getByRole('textbox', { name: 'Scrap 1, corners' }).fill('0 0; 30');
  await expect(studio.getByText(/Type each corner/)).toBeVisible();
  const stale = studio.getByText(/this is for what stood there before/);
  await expect(stale).toBeVisible();
  // What was typed goes with its scrap.
  await studio.getByRole('button', { name: 'Remove', exact: true }).first().click();
  await expect(studio.getByText('Scraps at hand')).toBeFocused();
  await expect(stale).toHaveCount(0);
  await expect(studio.getByRole('textbox', { name: 'Scrap 1, corners' })).toHaveValue('0 0; 5 0; 5 5; 0 5');
  const add = studio.getByRole('button', { name: 'Add a scrap' });
  await add.evaluate(async (button: HTMLButtonElement) => {
    while (button.ariaDisabled !== 'true') {
      button.click();
      await new Promise(requestAnimationFrame);
    }
  });
  await expect(studio.getByRole('textbox', { name: /^Scrap \d+, corners$/ })).toHaveCount(20);
  await expect(studio.getByText('No more than 20 scraps of a cloth.')).toBeVisible();
});

test('the lay is handed over as pages, one for each cloth', async ({ studio }) => {
  const coming = studio.waitForEvent('download');
  await studio.getByRole('button', { name: 'Download cutting lay PDF' }).click();
  const file = await coming;
  expect(file.suggestedFilename()).toBe('Cornet’s cap, cutting lay.pdf');
  const pdf = await readPdf(new Uint8Array(await readFile(await file.path())));
  expect(pdf.pages.map(({ texts }) => texts.map(({ text }) => text).join(' '))).toEqual([
    expect.stringMatching(/Cutting lay, outer.*Tip/),
    expect.stringMatching(/Cutting lay, lining.*Lining tip/),
    expect.stringMatching(/Cutting lay, interlining.*Visor/),
    expect.stringMatching(/Cutting lay, stiffener.*Visor stiffener/),
  ]);
});

/** The pattern's file, the cutting lay in it. */
const patternWithLay = async (studio: Page): Promise<Download> => {
  await goTo(studio, 'Paper');
  await studio.getByLabel('With the cutting lay').check();
  const download = studio.getByRole('button', { name: 'Download pattern PDF' });
  await expect(download).toBeEnabled();
  const coming = studio.waitForEvent('download');
  await download.click();
  return coming;
};

test('the lay comes after the pattern in one file where it is wished', async ({ studio }) => {
  const pdf = await readPdf(new Uint8Array(await readFile(await (await patternWithLay(studio)).path())));
  const titles = pdf.pages
    .flatMap(({ texts }) => texts.map(({ text }) => text))
    .filter((t) => t.startsWith('Cutting lay,'));
  expect(titles).toEqual(
    ['outer', 'lining', 'interlining', 'stiffener'].map((cloth) => `Cutting lay, ${cloth}`),
  );
});

/** What the cloths' pages of a lay say, in their order. */
const layPages = async (coming: Promise<Download>): Promise<readonly string[]> => {
  const pdf = await readPdf(new Uint8Array(await readFile(await (await coming).path())));
  return pdf.pages
    .map(({ texts }) => texts.map(({ text }) => text).join(' '))
    .filter((text) => text.includes('Cutting lay,'));
};

test('the lay in the pattern’s file is that of the cap on the sheets, whatever was laid before', async ({
  studio,
}) => {
  const strap = piece(studio, 'Strap').first();
  await strap.focus();
  await studio.keyboard.press('Enter');
  await expect(strap).toHaveAttribute('aria-pressed', 'true');
  await goTo(studio, 'Cap');
  await studio.getByText(/^Style/).click();
  await studio.getByRole('radio', { name: 'Bucket hat' }).check();
  await expect(studio.getByText('Style Bucket hat')).toBeVisible();
  const [outer] = await layPages(patternWithLay(studio));
  expect(outer).toMatch(/Cutting lay, outer.*Brim/);
  expect(outer).not.toMatch(/Strap|Visor/);
});

test('a lay that is handed over straight after a change is that of the cloth as changed', async ({
  studio,
}) => {
  await studio.getByLabel('Usable width').first().fill('90');
  const coming = studio.waitForEvent('download');
  await studio.getByRole('button', { name: 'Download cutting lay PDF' }).click();
  expect((await layPages(coming))[0]).toContain('Cloth 90.0 cm wide');
});

test('where nothing can be laid it is said, and nothing waits for it', async ({ page, complaints }) => {
  await page.context().route(/lay\.worker-[^/]*\.js$/, (route) => route.abort());
  await page.goto('./');
  await goTo(page, 'Cloth');
  await expect(page.getByText('The pieces could not be laid: please reload the page.')).toBeVisible();
  await expect(page.getByText('What to buy could not be reckoned')).toBeVisible();
  const lay = page.getByRole('button', { name: 'Download cutting lay PDF' });
  await lay.click();
  await expect(page.getByText('The cutting lay could not be written.')).toBeVisible();
  await expect(lay).toBeEnabled();
  await goTo(page, 'Paper');
  await page.getByLabel('With the cutting lay').check();
  const pattern = page.getByRole('button', { name: 'Download pattern PDF' });
  await expect(pattern).toBeEnabled();
  await pattern.click();
  await expect(page.getByText('The PDF could not be written.')).toBeVisible();
  await expect(pattern).toBeEnabled();
  expect(complaints.splice(0).filter((said) => !/Failed to load|could not be loaded/.test(said))).toEqual([]);
});

test('laying for the pattern’s file can be stopped', async ({ page }) => {
  // A worker whose script comes empty never answers.
  await page
    .context()
    .route(/lay\.worker-[^/]*\.js$/, (route) => route.fulfill({ contentType: 'text/javascript', body: '' }));
  await page.goto('./');
  await goTo(page, 'Paper');
  await page.getByLabel('With the cutting lay').check();
  const pattern = page.getByRole('button', { name: 'Download pattern PDF' });
  await expect(pattern).toBeEnabled();
  await pattern.click();
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect(pattern).toBeEnabled();
  await expect(page.getByRole('progressbar', { name: 'Writing the PDF' })).toHaveCount(0);
});

test('a cap without the cloth that was laid has its own first cloth laid', async ({ studio }) => {
  const lay = studio.getByRole('group', { name: 'Lay', exact: true });
  await lay.getByRole('radio', { name: 'Stiffener' }).check();
  await expect(piece(studio, 'Visor stiffener')).toHaveCount(1);
  await goTo(studio, 'Cap');
  await studio.getByText(/^Style/).click();
  await studio.getByRole('radio', { name: 'Beret' }).check();
  await expect(studio.getByText('Style Beret')).toBeVisible();
  await goTo(studio, 'Cloth');
  await expect(lay.getByRole('radio', { name: 'Outer' })).toBeChecked();
  await expect(lay.getByRole('radio', { name: 'Stiffener' })).toHaveCount(0);
  await expect.poll(() => taken(studio)).toBeGreaterThan(0);
  // What is put down there belongs to the cloth that is shown.
  const first = studio.locator('.laid').first();
  await first.focus();
  await studio.keyboard.press('Enter');
  await expect(first).toHaveAttribute('aria-pressed', 'true');
  await studio.reload();
  await expect(lay.getByRole('radio', { name: 'Outer' })).toBeChecked();
  await expect(first).toHaveAttribute('aria-pressed', 'true');
});

test('a piece is moved by the first button alone, and by one finger', async ({ studio }) => {
  const tip = piece(studio, 'Tip').first();
  const box = (await tip.boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await studio.mouse.move(x, y);
  await studio.mouse.down({ button: 'right' });
  await studio.mouse.move(x + 40, y - 60, { steps: 4 });
  await studio.mouse.up({ button: 'right' });
  await expect(tip).toHaveAttribute('aria-pressed', 'false');
  expect(await top(tip)).toBeCloseTo(box.y, 0);

  const finger = (type: string, pointerId: number, right: number): Promise<void> =>
    tip.dispatchEvent(type, {
      pointerId,
      isPrimary: pointerId === FIRST,
      pointerType: 'touch',
      button: 0,
      clientX: x + right,
      clientY: y,
    });
  // No finger is on the screen that could be held on to.
  await tip.evaluate((element) => {
    element.setPointerCapture = () => {};
  });
  await finger('pointerdown', FIRST, 0);
  await finger('pointermove', FIRST, 60);
  const moved = (await tip.boundingBox())!.x;
  expect(moved).toBeGreaterThan(box.x + 30);
  await finger('pointerdown', SECOND, 200);
  await finger('pointermove', SECOND, 300);
  expect((await tip.boundingBox())!.x).toBe(moved);
  await finger('pointerup', SECOND, 300);
  await expect(tip).toHaveAttribute('aria-pressed', 'false');
  await finger('pointerup', FIRST, 60);
  await expect(tip).toHaveAttribute('aria-pressed', 'true');
});

/** Numbers of two pointers. */
const FIRST = 11;
const SECOND = 12;

test('thick cloth makes the shell longer and says so; cloth that shrinks makes the pieces larger', async ({
  studio,
}) => {
  const before = await taken(studio);
  await studio.getByLabel('Kind').first().selectOption({ label: 'Corduroy, wide wale' });
  // Half of 1.5 mm goes round inside the shell's own middle: 2π × 0.75 mm, on 55.9 cm.
  await expect(
    studio.getByText(/Finished inside girth 55.9 cm; the shell is stitched at 56.4 cm/),
  ).toBeVisible();
  await expect(studio.getByRole('button', { name: 'Use 1.3 cm' })).toBeVisible();
  // Then 4 % of shrinkage along the band.
  await expect.poll(async () => (await taken(studio)) / before).toBeGreaterThan(1.045);
  const outer = studio.getByRole('group').filter({ has: studio.getByText('Outer', { exact: true }) });
  await expect(outer.getByText(/^All pieces lie along the grain/)).toBeVisible();
  await expect(outer.getByLabel('Bias allowed')).toHaveCount(0);
  await studio.getByLabel('Washed before cutting').first().check();
  await expect.poll(async () => (await taken(studio)) / before).toBeLessThan(1.02);
  await expect(outer.getByLabel('Bias allowed')).toBeVisible();
});

test('the shopping list is copied as text', async ({ studio, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await studio.getByRole('button', { name: 'Copy the list' }).click();
  await expect(studio.getByRole('button', { name: 'Copied' })).toBeVisible();
  const text = await studio.evaluate(() => navigator.clipboard.readText());
  expect(text).toMatch(/^For Cornet’s cap\nOuter: 140.0 cm wide: 0.6 m/);
  // The visor, nearly 18 cm from tip to tip, wants its sheet too: there are no widths that shops have.
  expect(text).toMatch(/\nStiffener: 50.0 cm wide: 0.2 m\n/);
  expect(text).toContain('Buttons: 2, 1.2 cm across');
  expect(text).toMatch(/\nThread: about \d+ m\n/);
  expect(text).toMatch(/Stripes and checks are not matched.* one repeat more for each row of pieces/);
  // Another list has not been copied yet.
  await studio.getByLabel('Usable width').first().fill('90');
  await expect(studio.getByRole('button', { name: 'Copy the list' })).toBeVisible();
});

test('a list that may not be copied can still be printed, and that is said', async ({ studio }) => {
  await studio.evaluate(() => {
    navigator.clipboard.writeText = () => Promise.reject(new DOMException('no', 'NotAllowedError'));
  });
  await studio.getByRole('button', { name: 'Copy the list' }).click();
  await expect(studio.getByText(/^This browser does not let the list be copied/)).toBeVisible();
});

test('caps of the shelf are laid on the same cloth, each piece named by its cap, and bought for', async ({
  studio,
}) => {
  test.slow();
  const alone = await taken(studio);
  const list = studio.getByRole('region', { name: 'Shopping list' });
  const thread = async (): Promise<number> =>
    Number.parseFloat(
      /about ([\d.]+)/.exec((await list.getByText(/^Thread/).textContent()) ?? '')?.[1] ?? '',
    );
  await expect(list).toBeVisible();
  const forOne = await thread();

  await studio.getByText('With caps from the shelf').click();
  await studio.getByRole('spinbutton', { name: 'Tenor horn’s cap' }).fill('2');
  // A visor of two layers for each of the two.
  await expect(piece(studio, 'Tenor horn’s cap: visor')).toHaveCount(4);
  await expect(piece(studio, 'Cornet’s cap: tip')).toHaveCount(1);
  await expect(studio.locator('.laid.wrong')).toHaveCount(0);
  expect(await taken(studio)).toBeGreaterThan(alone);
  // What is cut together is no less kept than the cap itself.
  await studio.reload();
  await expect(studio.getByRole('spinbutton', { name: 'Tenor horn’s cap' })).toHaveValue('2');
  await expect(piece(studio, 'Tenor horn’s cap: visor')).toHaveCount(4);
  // Every cloth is laid at five widths for the list.
  await expect(list.getByText('For Cornet’s cap, 2 × Tenor horn’s cap.')).toBeVisible({ timeout: 60_000 });
  expect(await thread()).toBeGreaterThan(2 * forOne);

  await studio.getByRole('spinbutton', { name: 'Tenor horn’s cap' }).fill('0');
  await expect(piece(studio, 'Visor')).toHaveCount(2);
  await expect.poll(() => taken(studio)).toBe(alone);
});
