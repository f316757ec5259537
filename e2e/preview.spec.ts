import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright/test';
import { outline, painted, slider, table, tally, typedField } from './at-hand.ts';
import { barriers } from './barriers.ts';
import { expect, test } from './studio.ts';

const worn = (page: Page): Locator => page.getByRole('region', { name: 'Worn' });
const model = (page: Page): Locator => page.getByRole('application', { name: 'The cap on a head' });

const show = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'Show it worn' }).click();
  await expect(model(page)).toHaveAttribute('data-painted', /^[1-9]/);
  await painted(page);
};

const pictures = async (page: Page): Promise<number> =>
  Number(await model(page).getAttribute('data-painted'));
const cap = async (page: Page): Promise<string | null> => model(page).getAttribute('data-cap');

/**
 * Shares of the picture: what is not see-through, since something is drawn there, and what is green. Lopsided is that share of
 * what is drawn which has nothing drawn facing it across the middle.
 */
const shares = (
  page: Page,
): Promise<{ readonly drawn: number; readonly green: number; readonly lopsided: number }> =>
  model(page)
    .locator('canvas')
    .evaluate(async (canvas: HTMLCanvasElement) => {
      // The picture is only there within the frame in which it is painted: a turn of the wheel paints it.
      const place = canvas.closest<HTMLElement>('[data-painted]');
      // A canvas that has just made room for another shows nothing.
      if (place === null) return { drawn: 0, green: 0, lopsided: 0 };
      const { dataset } = place;
      const before = dataset.painted;
      canvas.dispatchEvent(new WheelEvent('wheel', { deltaY: 1, cancelable: true }));
      for (let frame = 0; dataset.painted === before && frame < 60; frame++)
        await new Promise(requestAnimationFrame);
      const copy = new OffscreenCanvas(canvas.width, canvas.height).getContext('2d')!;
      copy.drawImage(canvas, 0, 0);
      const { width } = canvas;
      const { data } = copy.getImageData(0, 0, width, canvas.height);
      const isDrawn = (pixel: number) => data[4 * pixel + 3]! > 250;
      const count = data.length / 4;
      let [drawn, green, alone] = [0, 0, 0];
      for (let pixel = 0; pixel < count; pixel++) {
        if (data[4 * pixel + 1]! > data[4 * pixel]! + 60) green++;
        if (!isDrawn(pixel)) continue;
        drawn++;
        const right = pixel % width;
        if (!isDrawn(pixel - right + (width - 1 - right))) alone++;
      }
      return { drawn: drawn / count, green: green / count, lopsided: alone / drawn };
    });
const drawnShare = async (page: Page): Promise<number> => (await shares(page)).drawn;
const greenShare = async (page: Page): Promise<number> => (await shares(page)).green;

test('nothing of what shows it worn is fetched before it is asked for', async ({ studio }) => {
  await outline(studio);
  await studio.waitForLoadState('networkidle');
  const asked = () => studio.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name));
  expect((await asked()).filter((name) => /Preview/.test(name))).toEqual([]);
  await show(studio);
  expect((await asked()).filter((name) => /Preview/.test(name)).length).toBeGreaterThan(0);
});

test('the cap on its head looks as it did', async ({ studio }) => {
  await show(studio);
  expect(await drawnShare(studio)).toBeGreaterThan(0.15);
  await model(studio).press('0');
  await painted(studio);
  await expect(model(studio)).toHaveScreenshot('flat-top-worn.png', { maxDiffPixelRatio: 0.02 });
  await worn(studio).getByRole('button', { name: 'Front' }).click();
  await painted(studio);
  await expect(model(studio)).toHaveScreenshot('flat-top-worn-front.png', { maxDiffPixelRatio: 0.02 });
});

for (const slowed of [1, 4])
  test(`it follows a slider in the same frame as the table, on a processor slowed ${slowed}×`, async ({
    studio,
  }) => {
    await show(studio);
    const devtools = await studio.context().newCDPSession(studio);
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowed });
    await watchFrames(studio);
    const box = (await slider(studio, 'Crown fullness').boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await studio.mouse.move(x, y);
    await studio.mouse.down();
    for (let i = 1; i <= 20; i++) {
      await studio.mouse.move(x + 4 * i, y);
      await studio.waitForTimeout(30);
    }
    await studio.mouse.up();
    await painted(studio);
    // With it goes what it has slowed.
    await devtools.detach();
    const frames = await studio.evaluate(() => window.seenFrames);
    const changed = frames.slice(1).flatMap((now, i) => {
      const before = frames[i]!;
      const [lies, stands] = [now.table !== before.table, now.worn !== before.worn];
      return lies || stands ? [{ lies, stands }] : [];
    });
    // Both went through several caps on the way, and no frame showed one of them alone.
    expect(changed.length).toBeGreaterThan(2);
    expect(changed.filter(({ lies, stands }) => lies !== stands)).toEqual([]);
  });

declare global {
  interface Window {
    /** The mark of what each view had painted when a frame began. */
    seenFrames: { readonly table: string; readonly worn: string }[];
  }
}

const watchFrames = (page: Page): Promise<void> =>
  page.evaluate(() => {
    window.seenFrames = [];
    const [lies, stands] = ['[data-outline]', '[data-cap]'].map(
      (s) => document.querySelector<HTMLElement>(s)!,
    );
    const tick = (): void => {
      window.seenFrames.push({ table: lies!.dataset.outline!, worn: stands!.dataset.cap! });
      requestAnimationFrame(tick);
    };
    requestAnimationFrame(tick);
  });

test('hand, wheel, keys and views turn it; the cap stays the same', async ({ studio }) => {
  await show(studio);
  const same = await cap(studio);
  const box = (await model(studio).boundingBox())!;
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const turns = async (act: () => Promise<void>): Promise<void> => {
    await painted(studio);
    const before = await pictures(studio);
    await act();
    await expect.poll(() => pictures(studio)).toBeGreaterThan(before);
  };
  await turns(async () => {
    await studio.mouse.move(middle.x, middle.y);
    await studio.mouse.down();
    await studio.mouse.move(middle.x + 60, middle.y + 10, { steps: 4 });
    await studio.mouse.up();
  });
  await turns(() => studio.mouse.wheel(0, -200));
  for (const key of ['ArrowLeft', 'ArrowUp', '+', '0']) await turns(() => model(studio).press(key));
  for (const name of ['Front', 'Side', 'Back', 'Top'])
    await turns(() => worn(studio).getByRole('button', { name, exact: true }).click());
  expect(await cap(studio)).toBe(same);
});

test('a piece pointed at on the head is named on the table, and one focused on the table lights on the head', async ({
  studio,
}) => {
  await show(studio);
  await worn(studio).getByRole('button', { name: 'Top', exact: true }).click();
  const box = (await model(studio).boundingBox())!;
  await studio.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await expect(table(studio)).toContainText(/Tip.*cut 1/);
  await studio.mouse.move(box.x - 20, box.y + 20);
  await painted(studio);
  const before = await pictures(studio);
  await table(studio)
    .getByRole('button', { name: /^Band, / })
    .focus();
  await expect.poll(() => pictures(studio)).toBeGreaterThan(before);
});

test('a seam pointed at in the seam check lights on the head and on the table', async ({ studio }) => {
  await show(studio);
  await tally(studio, /seams meet/).click();
  await painted(studio);
  const before = await pictures(studio);
  const laid = Number(await table(studio).getAttribute('data-painted'));
  await studio
    .getByRole('row', { name: /Tip to side band/ })
    .first()
    .hover();
  await expect.poll(() => pictures(studio)).toBeGreaterThan(before);
  await expect
    .poll(async () => Number(await table(studio).getAttribute('data-painted')))
    .toBeGreaterThan(laid);
});

const contextMessage = /CONTEXT_LOST_WEBGL/;
const loseAnd = (page: Page, restore: boolean): Promise<void> =>
  model(page)
    .locator('canvas')
    .evaluate(async (canvas: HTMLCanvasElement, back) => {
      const lose = canvas.getContext('webgl2')!.getExtension('WEBGL_lose_context')!;
      const told = new Promise((done) => canvas.addEventListener('webglcontextlost', done, { once: true }));
      lose.loseContext();
      await told;
      // Only after that has been told to all can it be given back.
      await new Promise((done) => setTimeout(done));
      if (back) lose.restoreContext();
    }, restore);

test('a canvas that the browser takes back and gives again is painted anew', async ({
  studio,
  complaints,
}) => {
  await show(studio);
  const same = await cap(studio);
  await loseAnd(studio, true);
  await expect.poll(() => drawnShare(studio)).toBeGreaterThan(0.15);
  expect(await cap(studio)).toBe(same);
  await typedField(studio, 'Ease').fill('2.4');
  await expect.poll(() => cap(studio)).not.toBe(same);
  expect(complaints.splice(0).filter((said) => !contextMessage.test(said))).toEqual([]);
});

const drawings = (page: Page): Locator => worn(page).getByRole('img');

/** Four views and one into the cap, each with lines enough to be a cap. */
const expectDrawn = async (page: Page): Promise<void> => {
  await expect(drawings(page)).toHaveCount(5);
  for (const view of ['front', 'side', 'back', 'top', 'inside']) {
    const drawing = worn(page).getByRole('img', { name: `The cap on a head, ${view}` });
    const lines = await drawing
      .locator('path')
      .evaluateAll((all) => all.map((path) => (path as SVGPathElement).getTotalLength()));
    expect(
      lines.reduce((a, b) => a + b, 0),
      view,
    ).toBeGreaterThan(600);
  }
};

test('a canvas that does not come back gives way to a line drawing', async ({ studio, complaints }) => {
  await show(studio);
  await loseAnd(studio, false);
  await expect(drawings(studio).first()).toBeVisible();
  await expectDrawn(studio);
  expect(complaints.splice(0).filter((said) => !contextMessage.test(said))).toEqual([]);
});

test('what puts caps on heads cannot be fetched: it is drawn instead, and that is said', async ({
  studio,
  complaints,
}) => {
  await studio.context().route(/dressing\.worker/, (route) => route.abort());
  await studio.getByRole('button', { name: 'Show it worn' }).click();
  await expect(worn(studio).getByText(/could not be fetched/)).toBeVisible();
  await expectDrawn(studio);
  expect(complaints.splice(0).filter((said) => !/Failed to load/.test(said))).toEqual([]);
});

test.describe('without WebGL', () => {
  test.beforeEach(({ page }) =>
    page.addInitScript(() => {
      const getContext = HTMLCanvasElement.prototype.getContext;
      HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...more: []) {
        return kind.startsWith('webgl') ? null : getContext.call(this, kind as '2d', ...more);
      } as typeof getContext;
    }),
  );

  test('a line drawing from four sides follows the slider', async ({ studio }) => {
    await studio.getByRole('button', { name: 'Show it worn' }).click();
    await expect(drawings(studio).first()).toBeVisible();
    await expectDrawn(studio);
    const front = () => drawings(studio).first().locator('.edge').getAttribute('d');
    const before = await front();
    await slider(studio, 'Crown fullness').press('ArrowRight');
    await expect.poll(front).not.toBe(before);
  });
});

test.describe('where little motion is wanted', () => {
  test.use({ reducedMotion: 'reduce' });

  test('it is drawn, and turns in space only when asked to', async ({ studio }) => {
    await studio.getByRole('button', { name: 'Show it worn' }).click();
    await expect(drawings(studio).first()).toBeVisible();
    await worn(studio).getByRole('button', { name: 'Turn it in space' }).click();
    await expect(model(studio)).toHaveAttribute('data-painted', /^[1-9]/);
  });
});

test('it takes the table’s place and gives it back, is put on to one side, and goes when hidden', async ({
  studio,
}) => {
  await show(studio);
  const straight = await cap(studio);
  await worn(studio).getByRole('button', { name: 'Larger' }).click();
  await expect(table(studio)).toBeHidden();
  await worn(studio).getByText('Cloth and picture').click();
  await worn(studio).getByLabel('Worn to one side').check();
  await expect.poll(() => cap(studio)).not.toBe(straight);
  await worn(studio).getByRole('button', { name: 'Beside the table' }).click();
  await expect(table(studio)).toBeVisible();
  // At once: keeping waits for a rest, or for the page to be left.
  await studio.reload();
  await expect(model(studio)).toHaveAttribute('data-painted', /^[1-9]/);
  await expect(worn(studio).getByRole('button', { name: 'Larger' })).toBeVisible();
  await worn(studio).getByRole('button', { name: 'Hide' }).click();
  await expect(worn(studio)).toHaveCount(0);
  const back = studio.getByRole('button', { name: 'Show it worn' });
  await expect(back).toBeFocused();
  await back.press('Enter');
  await studio.keyboard.press('Tab');
  await expect(worn(studio).getByRole('button', { name: 'Larger' })).toBeFocused();
  await worn(studio).getByRole('button', { name: 'Hide' }).click();
});

test('cloth and pictures: a weave shows, a picture and a drawing are saved', async ({ studio }) => {
  await show(studio);
  await worn(studio).getByText('Cloth and picture').click();
  const before = await pictures(studio);
  await worn(studio).getByLabel('Cloth shown').selectOption('checked');
  await expect.poll(() => pictures(studio)).toBeGreaterThan(before);
  const saved = async (name: string) => {
    const [file] = await Promise.all([
      studio.waitForEvent('download'),
      worn(studio).getByRole('button', { name }).click(),
    ]);
    return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
  };
  const png = await saved('Save picture (PNG)');
  expect(png.name).toBe('Cornet’s cap.png');
  // The signature of every PNG, and the size in its header (ISO/IEC 15948).
  expect([...png.bytes.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  expect(png.bytes.readUInt32BE(16)).toBeGreaterThan(200);
  const svg = await saved('Save drawing (SVG)');
  expect(svg.name).toBe('Cornet’s cap.svg');
  const read = await studio.evaluate((text) => {
    const page = new DOMParser().parseFromString(text, 'image/svg+xml');
    const root = page.documentElement;
    return {
      errors: page.querySelectorAll('parsererror').length,
      title: page.querySelector('title')?.textContent,
      views: page.querySelectorAll('g > g').length,
      width: root.getAttribute('width'),
      box: root.getAttribute('viewBox'),
    };
  }, svg.bytes.toString('utf8'));
  expect(read).toMatchObject({ errors: 0, title: 'Cornet’s cap', views: 5 });
  expect(Number.parseFloat(read.width!) * 3).toBeCloseTo(Number(read.box!.split(' ')[2]), 0);
});

test('a photo of the cloth is laid on the cap, and taken off again', async ({ studio }) => {
  await show(studio);
  await worn(studio).getByText('Cloth and picture').click();
  expect(await greenShare(studio)).toBe(0);
  const photo = await studio.evaluate(() => {
    const canvas = document.createElement('canvas');
    canvas.width = canvas.height = 64;
    const pen = canvas.getContext('2d')!;
    pen.fillStyle = '#20c040';
    pen.fillRect(0, 0, 64, 64);
    return canvas.toDataURL('image/png').split(',')[1]!;
  });
  const file = (buffer: Buffer) => ({ name: 'cloth.png', mimeType: 'image/png', buffer });
  const field = worn(studio).getByLabel('Photo of the cloth');
  await field.setInputFiles(file(Buffer.from('no picture at all')));
  await expect(worn(studio).getByText('could not be read as a picture')).toBeVisible();
  await field.setInputFiles(file(Buffer.from(photo, 'base64')));
  await expect.poll(() => greenShare(studio)).toBeGreaterThan(0.1);
  // Its width is typed anew, over the one that was there.
  const across = worn(studio).getByLabel('The photo shows');
  await expect(across).toHaveValue('10');
  await across.press('End');
  for (const key of ['Backspace', 'Backspace', '2', '5']) await across.press(key);
  await expect(across).toHaveValue('25');
  // What is being typed is taken back by the browser, and the cap is left alone.
  const undo = studio.getByRole('button', { name: 'Undo' });
  await typedField(studio, 'Ease').fill('2');
  await expect(undo).toBeEnabled();
  await across.fill('30');
  await across.press('ControlOrMeta+z');
  await expect(typedField(studio, 'Ease')).toHaveValue('2');
  await worn(studio).getByRole('button', { name: 'Without the photo' }).click();
  await expect(worn(studio).getByText('Cloth and picture')).toBeFocused();
  await expect.poll(() => greenShare(studio)).toBe(0);
  // An empty field takes the same photo again.
  await expect(field).toHaveValue('');
});

test('a canvas is given back when it is hidden: a browser has few of them', async ({ studio }) => {
  for (let round = 0; round < 3; round++) {
    await show(studio);
    const canvas = await model(studio).locator('canvas').elementHandle();
    await worn(studio).getByRole('button', { name: 'Hide', exact: true }).click();
    await expect(worn(studio)).toHaveCount(0);
    const isGivenBack = await canvas!.evaluate((one) =>
      (one as HTMLCanvasElement).getContext('webgl2')!.isContextLost(),
    );
    expect(isGivenBack).toBe(true);
  }
});

test('whoever looks inside before the cap is on its head sees the lining too', async ({ studio }) => {
  let goOn = () => {};
  const asked = new Promise<void>((resolve) => {
    goOn = resolve;
  });
  await studio.context().route(/dressing\.worker/, async (route) => {
    await asked;
    await route.continue();
  });
  await studio.getByRole('button', { name: 'Show it worn' }).click();
  await worn(studio).getByRole('button', { name: 'Inside' }).click();
  goOn();
  await expect(model(studio)).toHaveAttribute('data-painted', /^[1-9]/);
  await painted(studio);
  // The middle of the cap is its lining's tip, and the shell's behind it.
  const box = (await model(studio).boundingBox())!;
  await studio.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await expect(studio.locator('.table-caption')).toContainText('Lining tip');
});

test('from below one looks into the lining: its colour, its photo, and its pieces on the table', async ({
  studio,
}) => {
  await show(studio);
  const same = await cap(studio);
  await worn(studio).getByRole('button', { name: 'Inside' }).click();
  await painted(studio);
  // It is the same cap, and what was hidden in it is seen.
  expect(await cap(studio)).toBe(same);
  await expect(model(studio)).toHaveScreenshot('flat-top-inside.png', { maxDiffPixelRatio: 0.02 });
  expect(await greenShare(studio)).toBe(0);
  await worn(studio).getByText('Cloth and picture').click();
  await worn(studio).getByLabel('Lining colour').fill('#20c040');
  await expect.poll(() => greenShare(studio)).toBeGreaterThan(0.1);
  await worn(studio).getByRole('button', { name: 'Top' }).click();
  await expect.poll(() => greenShare(studio)).toBe(0);
  await worn(studio).getByRole('button', { name: 'Inside' }).click();
  await worn(studio).getByText('Cloth and picture').click();
  await painted(studio);
  const lit = await pictures(studio);
  const laid = Number(await table(studio).getAttribute('data-painted'));
  const box = (await model(studio).boundingBox())!;
  // The middle of the cap is its lining's tip: pointed at, it is lit there and on the table.
  await studio.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await expect.poll(() => pictures(studio)).toBeGreaterThan(lit);
  await expect
    .poll(async () => Number(await table(studio).getAttribute('data-painted')))
    .toBeGreaterThan(laid);
});

test('a cap without a lining asks for no colour of one', async ({ studio }) => {
  await show(studio);
  await worn(studio).getByText('Cloth and picture').click();
  await expect(worn(studio).getByLabel('Lining colour')).toBeVisible();
  await studio.locator('summary', { hasText: /^Lining$/ }).click();
  await studio.getByRole('checkbox', { name: 'Lining', exact: true }).uncheck();
  await expect(worn(studio).getByLabel('Lining colour')).toHaveCount(0);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(`in ${colorScheme}`, () => {
    test.use({ colorScheme });

    test('axe finds no barrier in it', async ({ studio: page }) => {
      await show(page);
      await worn(page).getByText('Cloth and picture').click();
      expect(await barriers(page, { within: '.worn', ofColour: colorScheme === 'dark' })).toEqual([]);
    });
  });
}

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  test('it is a strip beside the table, within the screen', async ({ studio }) => {
    await show(studio);
    expect(await studio.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    const [lies, stands] = [(await table(studio).boundingBox())!, (await worn(studio).boundingBox())!];
    expect(lies.width).toBeGreaterThan(150);
    expect(stands.x).toBeGreaterThanOrEqual(lies.x + lies.width - 1);
    expect(stands.x + stands.width).toBeLessThanOrEqual(390);
    for (const button of await worn(studio).getByRole('button').all()) {
      const box = (await button.boundingBox())!;
      expect(box.x + box.width).toBeLessThanOrEqual(390);
      expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(24);
    }
  });

  test('one finger turns it, and two draw it nearer and push it away', async ({ studio }) => {
    await show(studio);
    await worn(studio).getByRole('button', { name: 'Front', exact: true }).click();
    await painted(studio);
    const box = (await model(studio).boundingBox())!;
    const touch = await fingers(studio, { x: box.x + box.width / 2, y: box.y + box.height / 2 });
    const before = await shares(studio);
    // From the front a cap is as broad on either hand.
    expect(before.lopsided).toBeLessThan(0.02);

    await touch.drawn([[-10], [-40]]);
    await painted(studio);
    const turned = await shares(studio);
    expect(turned.lopsided).toBeGreaterThan(0.04);

    await worn(studio).getByRole('button', { name: 'Front', exact: true }).click();
    await painted(studio);
    await touch.drawn([
      [-60, 60],
      [-30, 30],
    ]);
    await painted(studio);
    const farther = await shares(studio);
    expect(farther.drawn / before.drawn).toBeLessThan(0.8);
    // Fingers that come together about the middle turn nothing.
    expect(farther.lopsided).toBeLessThan(0.02);

    await touch.drawn([
      [-30, 30],
      [-60, 60],
    ]);
    await painted(studio);
    const nearer = await shares(studio);
    expect(nearer.drawn / farther.drawn).toBeGreaterThan(1.3);
  });
});

/** Fingers side by side on a place of the screen: put down at the first of some distances from it, in pixels to the right, drawn to the last and lifted. */
const fingers = async (page: Page, middle: { readonly x: number; readonly y: number }) => {
  const devtools = await page.context().newCDPSession(page);
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', rights: readonly number[]) =>
    devtools.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: rights.map((right, id) => ({ x: middle.x + right, y: middle.y, id })),
    });
  const STEPS = 6;
  return {
    drawn: async ([from, to]: readonly [readonly number[], readonly number[]]): Promise<void> => {
      await send('touchStart', from);
      for (let i = 1; i <= STEPS; i++) {
        await send(
          'touchMove',
          from.map((right, id) => right + ((to[id]! - right) * i) / STEPS),
        );
      }
      await send('touchEnd', []);
    },
  };
};
