import { goTo, lengthIn, outline, tab, table, tally, typedField } from './at-hand.ts';
import { expect, test } from './studio.ts';

test('a first visit shows a finished cap for the Cornet head, all of whose seams meet', async ({
  studio,
}) => {
  await expect(tab(studio, 'Cap')).toHaveAttribute('aria-selected', 'true');
  await expect(studio.getByRole('textbox', { name: 'Name of the cap' })).toHaveValue('Cornet’s cap');
  // Common practice: 21 1/2 in of head and 1/2 in of ease make 22 in inside; 4 in fuller, the crown is 26 in round
  // and its tip 26 ÷ π across.
  const inside = await tally(studio, /^Inside/).textContent();
  const crown = await tally(studio, /^Crown/).textContent();
  const tip = await tally(studio, /^Tip/).textContent();
  expect(Math.abs(lengthIn(inside) - 22 * 25.4)).toBeLessThan(0.51);
  expect(Math.abs(lengthIn(crown) - 26 * 25.4)).toBeLessThan(0.51);
  expect(Math.abs(lengthIn(tip) - (26 / Math.PI) * 25.4)).toBeLessThan(0.51);
  const seams = (await tally(studio, /seams meet/).textContent()) ?? '';
  const [, meeting, all] = /^(\d+) of (\d+) seams meet$/.exec(seams) ?? [];
  expect(Number(all)).toBeGreaterThan(9);
  expect(meeting).toBe(all);
});

test('the pieces are and each can be read as text', async ({ studio }) => {
  await expect(table(studio)).toHaveAttribute('data-painted', /^[1-9]/);
  expect(await outline(studio)).not.toBe('');
  const inked = await table(studio)
    .locator('canvas')
    .last()
    .evaluate((canvas: HTMLCanvasElement) => {
      const copy = new OffscreenCanvas(canvas.width, canvas.height).getContext('2d')!;
      copy.drawImage(canvas, 0, 0);
      const { data } = copy.getImageData(0, 0, canvas.width, canvas.height);
      let count = 0;
      for (let i = 3; i < data.length; i += 4) if (data[i]! > 128) count++;
      return count / (data.length / 4);
    });
  // Nine pieces of a cap cover a good part of the table.
  expect(inked).toBeGreaterThan(0.1);
  const pieces = table(studio).getByRole('list', { name: 'Pieces on the table' }).getByRole('button');
  for (const name of ['Tip', 'Side band', 'Band', 'Visor', 'Visor stiffener', 'Strap', 'Lining tip']) {
    await expect(pieces.filter({ hasText: new RegExp(`^${name}, .*cut \\d`) })).toHaveCount(1);
  }
});

test('an open reckoning shows where a figure of the tally comes from', async ({ studio }) => {
  await tally(studio, /^Inside/).click();
  const panel = studio.getByRole('complementary', { name: 'Finished inside girth' });
  // 21 1/2 in = 54.61 cm; 1/2 in = 1.27 cm; together 55.88 cm.
  await expect(panel).toContainText('54.61 cm + 1.27 cm = 55.88 cm');
  await studio.keyboard.press('Escape');
  await expect(panel).toBeHidden();
});

test('names on the table are set in the typeface of the page', async ({ studio }) => {
  await outline(studio);
  const painter = studio.workers().find((worker) => worker.url().includes('painter'));
  const faces = await painter?.evaluate(() =>
    [...(self as unknown as { fonts: FontFaceSet }).fonts]
      .filter(({ status }) => status === 'loaded')
      .map(({ family }) => family.replaceAll('"', '')),
  );
  const family = await table(studio).evaluate((element) => getComputedStyle(element).fontFamily);
  expect(faces).toHaveLength(1);
  expect(family.replaceAll('"', '').split(', ')[0]).toBe(faces?.[0]);
});

test('a painter that cannot be fetched is said, and the work goes on without the picture', async ({
  page,
  complaints,
}) => {
  await page.context().route(/painter\.worker/, (route) => route.abort());
  await page.goto('./');
  await expect(table(page).getByText('The pieces cannot be painted.')).toBeVisible();
  await typedField(page, 'Ease').fill('2.4');
  await expect(tally(page, /^Inside/)).toContainText('57');
  expect(complaints.splice(0).filter((said) => !/Failed to load/.test(said))).toEqual([]);
});

test('a style or the sheets that cannot be fetched are said, and what could be is there', async ({
  page,
  complaints,
}) => {
  await page.context().route(/(gored|sheets\.worker)-[^/]*\.js$/, (route) => route.abort());
  await page.goto('./');
  await page.getByText(/^Style/).click();
  await expect(page.getByText('Some styles could not be fetched.')).toBeVisible();
  await expect(page.getByRole('group', { name: 'Style', exact: true }).getByRole('radio')).toHaveCount(9);
  await goTo(page, 'Cloth');
  await page.getByText('With caps from the shelf').click();
  await page.getByRole('spinbutton', { name: 'Tenor horn’s cap' }).fill('1');
  await expect(page.getByText('A cap of the shelf could not be fetched')).toBeVisible();
  await expect(page.getByText('What to buy could not be reckoned')).toBeVisible();
  await goTo(page, 'Paper');
  await expect(page.getByText('The sheets could not be laid out: please reload the page.')).toBeVisible();
  await expect(page.getByText('Laying out the sheets…')).toBeHidden();
  expect(complaints.splice(0).filter((said) => !/Failed to load/.test(said))).toEqual([]);
});
