import { setTimeout } from 'node:timers/promises';
import type { CDPSession, Page } from 'playwright/test';
import { expect, test } from '../studio.ts';
import { note, part } from './figures.ts';

/** Every frame of a drag is this much slower than the machine could draw it. */
const SLOWED = 4;
const DRAGS = 3;
const SECONDS = 4;
/** ms. */
const SLOWEST = 32;
/** In so many frames at most a move of the mouse becomes a picture. */
const TURNS = 4;
/** Between two moves of the mouse, ms. */
const BETWEEN = 16;

/** What no page with a slider can do without: what this takes is the browser's and the machine's own. */
const BARE = 'a page of one slider and its number';
const bareNamed = (name: string): string => `<!doctype html>
<title>${BARE}</title>
<body data-painted="0">
<input type="range" aria-label="${name}" max="1000" style="width: 327px"> <output></output>
<script>
  let asked = false;
  document.querySelector('input').addEventListener('input', ({ target }) => {
    if (asked) return;
    asked = true;
    requestAnimationFrame(() => {
      asked = false;
      document.querySelector('output').value = target.value;
      document.body.dataset.painted++;
    });
  });
</script>`;

declare global {
  interface Window {
    /** When each frame began, ms, and how many pictures had been painted by then. */
    frameTimes: [number, number][];
    nextFrame: number;
  }
}

for (const name of ['Crown fullness', 'Ease'])
  test(`frames while ${name} is dragged`, async ({ studio }) => {
    test.setTimeout(180_000);
    await expect(studio.getByRole('region', { name: 'The table' })).toHaveAttribute('data-outline', /./);
    const page = await studio.context().newPage();
    await page.setContent(bareNamed(name));
    const [ours, bare] = [await handOn(studio, name), await handOn(page, name)];

    const what = `${name.toLowerCase()} is dragged`;
    for (let i = 1; i <= DRAGS; i++) {
      const [frames, floor] = [await ours.frames(), await bare.frames()];
      const high = part(frames, 0.95);
      note({
        subject: `frames while ${what}, CPU slowed ${SLOWED}×, ${overIn(frames)} over ${SLOWEST} ms, there ${overIn(floor)}`,
        median: part(frames, 0.5),
        high,
        unit: 'ms',
        against: { name: BARE, ratio: high / part(floor, 0.95) },
        wanted: `95 % under ${SLOWEST} ms`,
        met: high < SLOWEST,
      });
      // The figures count only if the pieces were painted anew all the while.
      expect(frames.length).toBeGreaterThan(5 * SECONDS);
    }

    // The same work by the processor's own clock, which other work on the machine hardly touches.
    const [work, floor] = [await ours.work(), await bare.work()];
    note({
      subject: `processor time for each picture while ${what}, not slowed`,
      median: work,
      unit: 'ms',
      against: { name: BARE, ratio: work / floor },
      wanted: `under ${SLOWEST / SLOWED} ms`,
      met: work < SLOWEST / SLOWED,
    });
  });

const overIn = (frames: readonly number[]): string =>
  `${((100 * frames.filter((ms) => ms > SLOWEST).length) / frames.length).toFixed(0)} %`;

interface Hand {
  /** How long the frames of one drag took, slowed, ms. */
  readonly frames: () => Promise<number[]>;
  /** Processor time of the page for each picture of one drag, not slowed, ms. */
  readonly work: () => Promise<number>;
}

/** A hand on a slider of a page. */
const handOn = async (page: Page, name: string): Promise<Hand> => {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Performance.enable', { timeDomain: 'threadTicks' });
  const slowed = (rate: number) => devtools.send('Emulation.setCPUThrottlingRate', { rate });
  const worked = async (): Promise<number> =>
    (await devtools.send('Performance.getMetrics')).metrics.find((m) => m.name === 'TaskDuration')!.value;
  const painted = async (): Promise<number> =>
    Number(await page.locator('[data-painted]').first().getAttribute('data-painted'));
  const dragOnce = async (): Promise<number[]> => {
    await page.bringToFront();
    return drag(page, devtools, name, SECONDS * 1000);
  };
  return {
    frames: async () => {
      await slowed(SLOWED);
      const frames = await dragOnce();
      await slowed(1);
      return frames;
    },
    work: async () => {
      const [work, count] = [await worked(), await painted()];
      await dragOnce();
      return (1000 * ((await worked()) - work)) / ((await painted()) - count);
    },
  };
};

const countFrames = (page: Page): Promise<void> =>
  page.evaluate(() => {
    window.frameTimes = [];
    const painted = document.querySelector<HTMLElement>('[data-painted]');
    const tick = (now: number): void => {
      window.frameTimes.push([now, Number(painted?.dataset.painted)]);
      window.nextFrame = requestAnimationFrame(tick);
    };
    window.nextFrame = requestAnimationFrame(tick);
  });

/** Gives the frames counted, and counts no more: a page that is not looked at asks for nothing. */
const framesCounted = (page: Page): Promise<[number, number][]> =>
  page.evaluate(() => {
    cancelAnimationFrame(window.nextFrame);
    return window.frameTimes;
  });

/**
 * Drags a slider to and fro with the mouse; gives how long those frames took that had a hand in a new picture, ms. The moves
 * are the browser's own: Playwright's runs a script in the page at each, which costs it about 3 ms a picture.
 */
const drag = async (page: Page, devtools: CDPSession, name: string, ms: number): Promise<number[]> => {
  const track = page.getByRole('slider', { name, exact: true });
  await track.scrollIntoViewIfNeeded();
  const box = await track.boundingBox();
  if (box === null) throw new Error(`no track for ${name}`);
  const y = box.y + box.height / 2;
  const at = (part: number): number => box.x + box.width * part;
  await page.mouse.move(at(0.5), y);
  await page.mouse.down();
  await countFrames(page);
  const start = Date.now();
  const moves: Promise<unknown>[] = [];
  for (let now = 0; now < ms; now = Date.now() - start) {
    // A hand's pace: from side to side of the middle and back in about two seconds. It waits for nobody.
    const x = at(0.5 + 0.25 * Math.sin((now / 1000) * Math.PI));
    moves.push(
      devtools.send('Input.dispatchMouseEvent', { type: 'mouseMoved', x, y, button: 'left', buttons: 1 }),
    );
    await setTimeout(BETWEEN);
  }
  await Promise.all(moves);
  const frames = await framesCounted(page);
  await page.mouse.up();
  await setTimeout(600);
  // A wish is drafted, shown, drawn and painted in as many frames or fewer: all count, frames at rest do not.
  return frames.slice(0, -1).flatMap(([now, painted], i) => {
    const [, after] = frames[Math.min(i + TURNS, frames.length - 1)]!;
    return painted === after ? [] : [frames[i + 1]![0] - now];
  });
};
