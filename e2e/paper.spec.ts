import { type ReadPdf, readPdf } from '../test/oracles/pdf-reader.ts';
import { goTo, tally, typedField } from './at-hand.ts';
import { download, joined, mapOf, sheetsSaid, stitchLines } from './printed.ts';
import { expect, test } from './studio.ts';

test.beforeEach(async ({ studio }) => {
  await goTo(studio, 'Paper');
});

/** Sides of the squares that the first sheet shows, mm. */
const squares = (pdf: ReadPdf): readonly number[] =>
  pdf.pages[0]!.paths.flatMap(({ points, painted }) => {
    const sides = [...points.slice(1), points[0]!]
      .map((to, i) => Math.hypot(to.x - points[i]!.x, to.y - points[i]!.y))
      .filter((side) => side > 0.001);
    const equal = sides.length === 4 && Math.max(...sides) - Math.min(...sides) < 0.01;
    return painted === 'stroke' && equal ? [sides[0]!] : [];
  });

const papers = [
  { value: 'a4', width: 210, height: 297 },
  { value: 'letter', width: 215.9, height: 279.4 },
] as const;

for (const { value, width, height } of papers) {
  for (const halves of [false, true]) {
    test(`the file for ${value}${halves ? ', folded,' : ''} holds what the screen says, true to scale`, async ({
      studio,
    }) => {
      await studio.getByLabel('Paper size').selectOption(value);
      await studio.getByRole('checkbox', { name: 'Halves on the fold' }).setChecked(halves);
      const names = await mapOf(studio);
      const { pdf, bytes, name } = await download(studio);
      expect(name).toMatch(/^Cornet’s cap, .*\.pdf$/);
      expect(bytes).toBeLessThan(300_000);
      expect(pdf.info.Title).toContain('Cornet’s cap');
      expect(pdf.viewerPreferences?.PrintScaling).toBe('None');

      expect(pdf.pages).toHaveLength(await sheetsSaid(studio));
      expect(pdf.pages).toHaveLength(names.length + 1);
      names.forEach((sheet, i) => {
        expect(pdf.pages[i + 1]!.texts.map(({ text }) => text)).toContain(sheet);
      });
      for (const page of pdf.pages) {
        expect(Math.abs(page.width - width)).toBeLessThan(0.01);
        expect(Math.abs(page.height - height)).toBeLessThan(0.01);
        // Nothing is drawn in the margin of 10 mm.
        const room = page.paths
          .flatMap(({ points, painted }) => (painted === 'clip' ? [] : points))
          .reduce((least, { x, y }) => Math.min(least, x, y, page.width - x, page.height - y), 99);
        expect(room).toBeGreaterThan(10 - 0.01);
      }
      const found = squares(pdf);
      expect(found.some((side) => Math.abs(side - 100) < 0.005)).toBe(true);
      expect(found.some((side) => Math.abs(side - 101.6) < 0.005)).toBe(true);

      // The longest straight seams of a flat-top cap are the two long edges of its band and of its lining band:
      // head and ease, 21 1/2 in + 1/2 in. On the fold, half of that.
      const girth = 22 * 25.4;
      const longest = joined(stitchLines(pdf, names)).slice(0, 4);
      expect(longest).toHaveLength(4);
      for (const length of longest) expect(Math.abs(length * (halves ? 2 : 1) - girth)).toBeLessThan(0.05);
    });
  }
}

test('the girth in the file follows the head and the ease', async ({ studio }) => {
  await goTo(studio, 'Head');
  await studio.getByRole('textbox', { name: 'Head girth' }).fill('583 mm');
  await goTo(studio, 'Cap');
  await typedField(studio, 'Ease').fill('1,8');
  await expect(tally(studio, /^Inside/)).toHaveText('Inside 60.1 cm');
  await goTo(studio, 'Paper');
  const names = await mapOf(studio);
  const { pdf } = await download(studio);
  const longest = joined(stitchLines(pdf, names)).slice(0, 4);
  expect(longest).toHaveLength(4);
  for (const length of longest) expect(Math.abs(length - 601)).toBeLessThan(0.05);
});

test('sheet count and map follow the paper', async ({ studio }) => {
  const a4 = await mapOf(studio);
  expect(await sheetsSaid(studio)).toBe(a4.length + 1);
  await studio.getByLabel('Paper size').selectOption('a3');
  await expect(studio.getByRole('heading', { name: /sheets of A3/ })).toBeVisible();
  // An A3 sheet is as large as two of A4, so fewer are needed.
  const a3 = await mapOf(studio);
  expect(a3.length).toBeLessThan(a4.length);
  expect(await sheetsSaid(studio)).toBe(a3.length + 1);
  await studio.getByLabel('Paper size').selectOption('one-page');
  await expect(studio.getByRole('heading', { name: '1 page' })).toBeVisible();
});

test('a printer that draws small gets a file drawn larger', async ({ studio }) => {
  await mapOf(studio);
  await studio.getByText('If the printer is a little off').click();
  const button = studio.getByRole('button', { name: 'Download pattern PDF' });
  // Until the sheets are laid out anew there is no file to be had: watched in the page, since it may not be for long.
  const barred = button.evaluate(async (element: HTMLButtonElement) => {
    while (element.ariaDisabled !== 'true') await new Promise(requestAnimationFrame);
  });
  await studio.getByRole('textbox', { name: '100 mm square, across' }).fill('98.4');
  await studio.getByRole('textbox', { name: '100 mm square, down' }).fill('98.4');
  await barred;
  await mapOf(studio);
  const { pdf } = await download(studio);
  expect(squares(pdf).some((side) => Math.abs(side * 0.984 - 100) < 0.005)).toBe(true);
  await studio.getByRole('textbox', { name: '100 mm square, across' }).fill('50');
  await expect(studio.getByText(/That is not a 100 mm square/)).toBeVisible();
  await expect(button).toBeDisabled();
});

test('what the browser itself prints is never taken for a pattern: the shopping list, the order of work, and where patterns are', async ({
  studio,
}) => {
  const printed = async () => (await readPdf(new Uint8Array(await studio.pdf({ format: 'A4' })))).pages;
  const words = async () => (await printed()).flatMap(({ texts }) => texts.map(({ text }) => text)).join('');
  const WHERE = 'Patterns are printed from the PDF on the Paper stage.';
  await studio.getByRole('button', { name: 'Dark room' }).click();
  await studio.getByRole('button', { name: 'Shelf', exact: true }).click();
  for (const stage of ['Head', 'Cap', 'Paper'] as const) {
    await goTo(studio, stage);
    expect(await words()).toBe(WHERE);
    // No canvas, and no line of a piece, of a control or of the tape.
    for (const { images, paths } of await printed()) {
      expect(images).toBe(0);
      expect(paths.filter(({ painted }) => painted === 'stroke')).toEqual([]);
    }
  }
  await goTo(studio, 'Cloth');
  await expect(studio.getByRole('button', { name: 'Print the list' })).toBeVisible();
  const list = await words();
  expect(list).toMatch(/Shopping list.*Thread/s);
  expect(list).toContain(WHERE);
  expect(list).not.toContain('Take to the table');
  await goTo(studio, 'Sewing');
  const steps = await words();
  expect(steps).toContain('Cut the pieces');
  expect(steps).toContain('Take care');
  expect(steps).not.toMatch(/Large type|Fitting|Download|Inside 5/);
  // Ink on paper, though the room is dark.
  await studio.emulateMedia({ media: 'print' });
  const ink = await studio
    .getByText(WHERE)
    .evaluate((line) => getComputedStyle(line).color.match(/\d+/g)!.map(Number));
  await studio.emulateMedia({ media: null });
  expect(Math.max(...ink)).toBeLessThan(100);
});
