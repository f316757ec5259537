import { setTimeout } from 'node:timers/promises';
import type { Browser, Page } from 'playwright/test';
import { goTo } from '../at-hand.ts';
import { expect, test } from '../studio.ts';
import { note } from './figures.ts';

/** A band's caps, and how long their lay is bettered. */
const CAPS = 10;
const SECONDS = 8;
/** A page that takes longer over one thing is felt to stall, ms. */
const MOST = 50;

declare global {
  interface Window {
    /** How long each task took that kept the page from all else for more than 50 ms. */
    longTasks: number[];
    longTaskWatch?: PerformanceObserver;
  }
}

test(`the page while ${CAPS} caps are laid`, async ({ studio, browser }) => {
  test.setTimeout(180_000);
  await goTo(studio, 'Cloth');
  const lay = studio.getByRole('application', { name: /^Cutting lay/ });
  await expect(lay).toBeVisible({ timeout: 60_000 });
  await expect(studio.getByText('Reckoning what to buy…')).toHaveCount(0, { timeout: 60_000 });
  const pieces = await lay.getByRole('button').count();

  await measured('first laid', studio, browser, async () => {
    await studio.getByLabel('Caps in this lay').fill(String(CAPS));
    await expect(lay.getByRole('button')).toHaveCount(CAPS * pieces, { timeout: 60_000 });
  });
  await measured(`bettered for ${SECONDS} s`, studio, browser, async () => {
    await studio.getByRole('button', { name: 'Lay it closer' }).click();
    await setTimeout(SECONDS * 1000);
    await studio.getByRole('button', { name: 'Stop and keep this' }).click();
  });
  const tip = lay.getByRole('button', { name: 'Tip' }).first();
  await measured('waiting while one piece is dragged', studio, browser, async () => {
    const box = (await tip.boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await studio.mouse.move(x, y);
    await studio.mouse.down();
    for (let k = 1; k <= 60; k++) await studio.mouse.move(x + k, y + 20 * Math.sin(k / 10));
    await studio.mouse.up();
    await expect(tip).toHaveAttribute('aria-pressed', 'true');
    await setTimeout(1000);
  });
});

/** Notes the longest task of the page's own thread, by the thread's clock and by the wall's. */
const measured = async (
  what: string,
  page: Page,
  browser: Browser,
  work: () => Promise<void>,
): Promise<void> => {
  await page.evaluate(() => {
    window.longTasks = [];
    window.longTaskWatch?.disconnect();
    window.longTaskWatch = new PerformanceObserver((list) => {
      window.longTasks.push(...list.getEntries().map(({ duration }) => duration));
    });
    window.longTaskWatch.observe({ type: 'longtask' });
  });
  await browser.startTracing(page, { categories: ['toplevel'] });
  await work();
  const tasks = tasksIn(JSON.parse((await browser.stopTracing()).toString()));
  const long = await page.evaluate(() => window.longTasks);
  const subject = `${CAPS} caps ${what}: longest task of the page`;
  const longest = Math.max(...tasks);
  note({
    subject: `${subject}, its processor time`,
    median: longest,
    unit: 'ms',
    wanted: `under ${MOST} ms`,
    met: longest < MOST,
  });
  // What the browser itself calls long; on a busy machine most of it is waiting for a processor.
  note({
    subject: `${subject}, ${long.length} over ${MOST} ms by the wall’s clock`,
    median: Math.max(0, ...long),
    unit: 'ms',
    wanted: 'none',
    met: long.length === 0,
  });
};

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Of the thread, µs. */
  readonly tdur?: number;
  readonly args: { readonly name?: string };
}

/** How much of the processor each task on the page's own thread had, ms. */
const tasksIn = ({ traceEvents }: { readonly traceEvents: readonly TraceEvent[] }): readonly number[] => {
  const threads = traceEvents.filter(({ args }) => args.name === 'CrRendererMain');
  const tasks = traceEvents.flatMap(({ name, pid, tid, tdur }) =>
    name.endsWith('RunTask') && tdur !== undefined && threads.some((t) => t.pid === pid && t.tid === tid)
      ? [tdur / 1000]
      : [],
  );
  if (tasks.length === 0) throw new Error('the trace tells of no task');
  return tasks;
};
