import { setTimeout } from 'node:timers/promises';
import type { Page } from 'playwright/test';
import { expect, test } from '../studio.ts';
import { note, part } from './figures.ts';

/** From few triangles to many: see the figures of the units. */
const STYLES = ['Skull cap', 'Flat-top cap', 'Sun hat'];
const SECONDS = 3;
/** Between two moves of the mouse, ms. */
const BETWEEN = 16;

for (const style of STYLES)
  test(`frames while a ${style.toLowerCase()} is turned, and while it is reshaped`, async ({ studio }) => {
    test.setTimeout(120_000);
    await studio.getByText(/^Style/).click();
    await studio.getByRole('radio', { name: style }).check();
    await studio.getByRole('button', { name: 'Show it worn' }).click();
    const model = studio.getByRole('application', { name: 'The cap on a head' });
    await expect(model).toHaveAttribute('data-painted', /^[1-9]/);
    const painted = async (): Promise<number> => Number(await model.getAttribute('data-painted'));
    const devtools = await studio.context().newCDPSession(studio);
    await devtools.send('Performance.enable', { timeDomain: 'threadTicks' });
    const worked = async (): Promise<number> =>
      (await devtools.send('Performance.getMetrics')).metrics.find((m) => m.name === 'TaskDuration')!.value;

    for (const [what, move] of [
      ['turned', turn],
      ['reshaped', reshape],
    ] as const) {
      await watch(studio);
      const [work, count] = [await worked(), await painted()];
      await move(studio);
      const pictures = (await painted()) - count;
      const gaps = await studio.evaluate(() => window.wornFrames);
      // The figures count only if it was painted anew all the while.
      expect(pictures).toBeGreaterThan(2 * SECONDS);
      note({
        subject: `${style} ${what} on a head: between two pictures, graphics in software`,
        median: part(gaps, 0.5),
        high: part(gaps, 0.95),
        unit: 'ms',
      });
      note({
        subject: `${style} ${what} on a head: processor time of the page for each picture`,
        median: (1000 * ((await worked()) - work)) / pictures,
        unit: 'ms',
      });
    }
  });

declare global {
  interface Window {
    /** How long after the one before each picture was painted, ms. */
    wornFrames: number[];
  }
}

const watch = (page: Page): Promise<void> =>
  page.evaluate(() => {
    window.wornFrames = [];
    let before = performance.now();
    new MutationObserver(() => {
      const now = performance.now();
      window.wornFrames.push(now - before);
      before = now;
    }).observe(document.querySelector('.worn-model')!, { attributeFilter: ['data-painted'] });
  });

const drag = async (page: Page, selector: string, reach: number): Promise<void> => {
  const target = page.locator(selector).first();
  await target.scrollIntoViewIfNeeded();
  const box = (await target.boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  const start = Date.now();
  for (let now = 0; now < SECONDS * 1000; now = Date.now() - start) {
    await page.mouse.move(x + reach * Math.sin((now / 1000) * Math.PI), y);
    await setTimeout(BETWEEN);
  }
  await page.mouse.up();
};

const turn = (page: Page): Promise<void> => drag(page, '.worn-model canvas', 80);
const reshape = (page: Page): Promise<void> => drag(page, 'input[type="range"]', 40);
