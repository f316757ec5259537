import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright/test';
import { goTo, outline, typedField } from './at-hand.ts';
import { barriers } from './barriers.ts';
import { expect, test } from './studio.ts';

const shelf = (page: Page): Locator => page.getByRole('complementary', { name: 'The shelf' });

const openShelf = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'Shelf', exact: true }).click();
  await expect(shelf(page).getByRole('listitem')).not.toHaveCount(0);
};

const capName = (page: Page): Locator => page.getByRole('textbox', { name: 'Name of the cap' });

test('a cap is taken from the shelf, the other is laid there as it was, and both outlast a reload', async ({
  studio,
}) => {
  const first = await outline(studio);
  await openShelf(studio);
  await expect(shelf(studio).getByRole('listitem')).toHaveCount(4);
  await expect(shelf(studio).locator('svg')).toHaveCount(4);
  await shelf(studio).getByRole('button', { name: 'Take Tenor horn’s cap to the table' }).click();
  await expect(capName(studio)).toHaveValue('Tenor horn’s cap');
  await expect(studio.getByRole('heading', { name: 'The shelf' })).toBeFocused();
  await expect.poll(() => outline(studio)).not.toBe(first);
  await expect(typedField(studio, 'Gore fullness')).toBeVisible();

  await studio.getByRole('button', { name: 'Undo' }).click();
  await expect(capName(studio)).toHaveValue('Cornet’s cap');
  await expect.poll(() => outline(studio)).toBe(first);
  await studio.getByRole('button', { name: 'Redo' }).click();
  await expect(capName(studio)).toHaveValue('Tenor horn’s cap');

  await expect.poll(() => kept(studio)).toContain('Tenor horn’s cap');
  await studio.reload();
  await expect(capName(studio)).toHaveValue('Tenor horn’s cap');
  await openShelf(studio);
  await shelf(studio).getByRole('button', { name: 'Take Cornet’s cap to the table' }).click();
  await expect.poll(() => outline(studio)).toBe(first);
});

/** The name of the cap on the table as the browser keeps it. */
const kept = (page: Page): Promise<string> =>
  page.evaluate(() => JSON.parse(localStorage.getItem('capwright') ?? '{}').state?.wish.spec.cap.name ?? '');

test('a cap is removed from the shelf and brought back by undo', async ({ studio }) => {
  await openShelf(studio);
  await shelf(studio).getByRole('button', { name: 'Remove Bass drum’s hat from the shelf' }).click();
  await expect(shelf(studio).getByRole('listitem')).toHaveCount(3);
  await expect(studio.getByRole('heading', { name: 'The shelf' })).toBeFocused();
  await studio.getByRole('button', { name: 'Undo' }).click();
  await expect(shelf(studio).getByRole('heading', { name: 'Bass drum’s hat' })).toBeVisible();
});

test('a fitting stays with the head card, and the next cap for that head starts with what fitted', async ({
  studio,
}) => {
  await goTo(studio, 'Sewing');
  await studio.getByText('Fitting: how does it sit?').click();
  await studio.getByRole('checkbox', { name: 'It is tight' }).check();
  await studio.getByRole('button', { name: 'Change the pattern' }).click();
  await expect(studio.getByText('Fitting: how does it sit?')).toBeFocused();
  // The usual 12.7 mm and 6 mm more.
  await goTo(studio, 'Cap');
  await expect(typedField(studio, 'Ease')).toHaveValue(/^1\.9/);

  await openShelf(studio);
  await shelf(studio).getByRole('button', { name: 'New cap for Cornet' }).click();
  await expect(capName(studio)).toHaveValue('Cornet’s cap 2');
  await expect(typedField(studio, 'Ease')).toHaveValue(/^1\.9/);

  // Another head starts as usual; on the fitted one it can be had again.
  await shelf(studio).getByRole('button', { name: 'Take Tenor horn’s cap to the table' }).click();
  await expect(typedField(studio, 'Ease')).toHaveValue(/^1\.3/);
  await goTo(studio, 'Head');
  await studio.getByText('Head cards', { exact: true }).click();
  await studio.getByRole('button', { name: 'Cornet', exact: true }).click();
  await expect(studio.getByText(/What fitted last: ease 1\.9 cm/)).toBeVisible();
  await studio.getByRole('button', { name: 'Use what fitted' }).click();
  await expect(studio.getByRole('heading', { name: 'Head', exact: true })).toBeFocused();
  await expect(studio.getByText(/What fitted last/)).toHaveCount(0);
  await goTo(studio, 'Cap');
  await expect(typedField(studio, 'Ease')).toHaveValue(/^1\.9/);

  // A third head takes the same cap up: what fitted another is said, and the usual offered.
  await goTo(studio, 'Head');
  await studio.getByText('Head cards', { exact: true }).click();
  await studio.getByRole('button', { name: 'Euphonium', exact: true }).click();
  await expect(studio.getByText('Ease 1.9 cm is what fitted Cornet; usual is 1.3 cm.')).toBeVisible();
  await studio.getByRole('button', { name: 'Use what is usual' }).click();
  await expect(studio.getByText(/is what fitted Cornet/)).toHaveCount(0);
  await goTo(studio, 'Cap');
  await expect(typedField(studio, 'Ease')).toHaveValue(/^1\.3/);
});

test('a head is kept as a card, and brought up to date when it is measured again', async ({ studio }) => {
  await goTo(studio, 'Head');
  await studio.getByText('Head cards', { exact: true }).click();
  await expect(studio.getByText('This head stands on its card.')).toBeVisible();
  const girth = studio.getByRole('textbox', { name: 'Head girth' });
  await girth.fill('55.1');
  await studio.getByRole('button', { name: 'Bring the card up to date' }).click();
  await expect(studio.getByText('Head cards', { exact: true })).toBeFocused();
  await expect(studio.getByText('This head stands on its card.')).toBeVisible();
  await studio.getByRole('textbox', { name: 'Whose head' }).fill('Flugelhorn');
  await studio.getByRole('button', { name: 'Keep this head as a card' }).click();
  await expect(studio.getByText('Head cards', { exact: true })).toBeFocused();
  await studio.getByRole('button', { name: 'Bass drum', exact: true }).click();
  await expect(girth).toHaveValue(/^61\.6/);
  await studio.getByRole('button', { name: 'Flugelhorn', exact: true }).click();
  await expect(girth).toHaveValue(/^55\.1/);
  await studio.getByRole('button', { name: 'Remove the head card of Bass drum' }).click();
  await expect(studio.getByText('Head cards', { exact: true })).toBeFocused();
});

test('all caps and heads are saved as a file, and added from it elsewhere', async ({
  studio,
  browser,
  baseURL,
}) => {
  await typedField(studio, 'Ease').fill('2.2');
  await expect(typedField(studio, 'Ease')).toHaveValue(/^2\.2/);
  await openShelf(studio);
  await studio.getByText('Keep a copy elsewhere').click();
  const download = studio.waitForEvent('download');
  await studio.getByRole('button', { name: 'Save all as a file' }).click();
  const file = await (await download).path();

  const other = await browser.newPage();
  await other.goto(baseURL!);
  await openShelf(other);
  for (const name of ['Tenor horn’s cap', 'Euphonium’s cap', 'Bass drum’s hat']) {
    await shelf(other)
      .getByRole('button', { name: `Remove ${name} from the shelf` })
      .click();
  }
  await other.getByText('Keep a copy elsewhere').click();
  await other.getByLabel('Add from a file').setInputFiles(file);
  await expect(other.getByText('Added 4 caps and 0 head cards.')).toBeVisible();
  await expect(shelf(other).getByRole('listitem')).toHaveCount(5);
  await shelf(other).getByRole('button', { name: 'Take Cornet’s cap to the table' }).click();
  await expect(typedField(other, 'Ease')).toHaveValue(/^2\.2/);

  await other.getByLabel('Add from a file').setInputFiles({
    name: 'cap.json',
    mimeType: 'application/json',
    buffer: Buffer.from('{"caps": "none"}'),
  });
  await expect(other.getByText('This file holds no caps of ours.')).toBeVisible();

  const { capwright, caps } = JSON.parse(readFileSync(file, 'utf8'));
  const bring = (data: object) =>
    other.getByLabel('Add from a file').setInputFiles({
      name: 'later.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(data)),
    });
  await bring({ capwright: capwright + 1, caps });
  await expect(other.getByText('This file was saved by a later Capwright')).toBeVisible();
  const [cap] = caps;
  await bring({ capwright, caps: [cap, { ...cap, wish: { ...cap.wish, version: 99 } }] });
  // The first is there already.
  const said = other.getByText('Added 0 caps and 0 head cards. Left out');
  await expect(said).toContainText('the shelf has the same: 1 cap.');
  await expect(said).toContainText('saved them: 1 cap.');
  await other.context().close();
});

test('one cap alone is handed over with its head’s card and its ticks, and those of the demo are not brought twice', async ({
  studio,
  browser,
  baseURL,
}) => {
  await goTo(studio, 'Sewing');
  await studio
    .getByRole('checkbox', { name: /^Done: / })
    .first()
    .check();
  await goTo(studio, 'Cap');
  await capName(studio).fill('Canal cap');
  await openShelf(studio);
  const download = studio.waitForEvent('download');
  await shelf(studio).getByRole('button', { name: 'Save Canal cap as a file' }).click();
  expect((await download).suggestedFilename()).toMatch(/^Canal cap, .*\.json$/);
  const file = await (await download).path();
  const { caps, heads } = JSON.parse(readFileSync(file, 'utf8'));
  expect(caps).toHaveLength(1);
  expect(heads.map(({ name }: { readonly name: string }) => name)).toEqual(['Cornet']);

  const other = await browser.newPage();
  await other.goto(baseURL!);
  await openShelf(other);
  await other.getByText('Keep a copy elsewhere').click();
  await other.getByLabel('Add from a file').setInputFiles(file);
  await expect(other.getByText('Added 1 cap and 0 head cards.')).toBeVisible();
  await shelf(other).getByRole('button', { name: 'Take Canal cap to the table' }).click();
  await goTo(other, 'Sewing');
  await expect(other.getByText(/^1 of \d+ done$/)).toBeVisible();
  const all = other.waitForEvent('download');
  await other.getByRole('button', { name: 'Save all as a file' }).click();
  await other.getByLabel('Add from a file').setInputFiles(await (await all).path());
  await expect(other.getByText('Left out, since the shelf has the same: 5 caps.')).toBeVisible();
  await other.context().close();
});

test('axe finds no barrier in the shelf and the head cards', async ({ studio }) => {
  await goTo(studio, 'Head');
  await studio.getByText('Head cards', { exact: true }).click();
  await openShelf(studio);
  await studio.getByText('Keep a copy elsewhere').click();
  await expect(shelf(studio).locator('svg')).toHaveCount(4);
  expect(await barriers(studio)).toEqual([]);
});

test('a tab that another has left behind keeps nothing of its own until it is told which of the two to keep', async ({
  studio,
  context,
}) => {
  const told = (page: Page) => page.getByText('Capwright is open in another tab too.');
  const second = await context.newPage();
  await second.goto(studio.url());
  await typedField(second, 'Ease').fill('2.2');
  await expect(told(studio)).toBeVisible();
  // Walking to a stage, or a cap taken from the shelf, is no answer.
  await goTo(studio, 'Paper');
  await openShelf(studio);
  await shelf(studio).getByRole('button', { name: 'Take Tenor horn’s cap to the table' }).click();
  await studio.getByRole('button', { name: 'Take what the other tab kept' }).click();
  await expect(capName(studio)).toHaveValue('Cornet’s cap');
  await expect(typedField(studio, 'Ease')).toHaveValue(/^2\.2/);
  await expect(told(studio)).toHaveCount(0);
  await expect(told(second)).toHaveCount(0);

  await typedField(studio, 'Ease').fill('3');
  await expect(told(second)).toBeVisible();
  await typedField(second, 'Ease').fill('1.8');
  await second.getByRole('button', { name: 'Keep this one' }).click();
  await expect(second.getByRole('heading', { name: 'Cap', exact: true })).toBeFocused();
  await expect(told(second)).toHaveCount(0);
  await expect(told(studio)).toBeVisible();
  await studio.reload();
  await expect(typedField(studio, 'Ease')).toHaveValue(/^1\.8/);
});

test('a head with a very long name in one word keeps its button within the shelf of a narrow phone', async ({
  studio,
}) => {
  await studio.setViewportSize({ width: 320, height: 640 });
  await goTo(studio, 'Head');
  await studio.getByRole('textbox', { name: 'Whose head' }).fill('Contrabassflugelhorn'.repeat(6));
  await openShelf(studio);
  const button = shelf(studio).getByRole('button', { name: /^New cap for/ });
  const { x, width } = (await button.boundingBox())!;
  expect(x + width).toBeLessThanOrEqual(320);
});
