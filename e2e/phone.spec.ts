import type { Locator } from 'playwright/test';
import { goTo, outline, slider, stages, table, tally } from './at-hand.ts';
import { expect, test } from './studio.ts';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

/** Everything that is pressed and stands in sight, smaller than a fingertip needs: WCAG 2.2, 2.5.8, 24 CSS pixels. */
const tooSmall = (controls: Locator): Promise<readonly string[]> =>
  controls.evaluateAll((all) =>
    all.flatMap((control) => {
      if (!control.checkVisibility({ visibilityProperty: true })) return [];
      // A label is pressed as the control itself.
      const label = control.closest('label');
      const boxes = [control, ...(label ? [label] : [])].map((element) => element.getBoundingClientRect());
      // Out of sight until it has the focus: for keyboards only.
      if (boxes.every(({ width, height }) => width <= 1 && height <= 1)) return [];
      const fits = boxes.some(({ width, height }) => width >= 24 && height >= 24);
      const { width, height } = boxes[0]!;
      const name = control.getAttribute('aria-label') ?? control.id ?? '';
      return fits ? [] : [`${control.tagName} ${name || control.textContent}: ${width} × ${height}`];
    }),
  );

test('on a phone nothing scrolls sideways, the table is in sight, and all is large enough to press', async ({
  studio,
}) => {
  await outline(studio);
  for (const stage of stages) {
    await goTo(studio, stage);
    const width = await studio.evaluate(() => document.documentElement.scrollWidth);
    expect(width, stage).toBeLessThanOrEqual(390);
    const box = await table(studio).boundingBox();
    if (stage !== 'Paper') {
      expect(box!.height, stage).toBeGreaterThan(150);
      expect(box!.y + 150, stage).toBeLessThan(844);
    }
    await studio
      .getByRole('tabpanel')
      .locator('details:not([open])')
      .evaluateAll((all) => {
        for (const details of all) details.setAttribute('open', '');
      });
    const pressed = studio.locator('button, input, select, summary, a[href], [role=tab]');
    expect(await pressed.count()).toBeGreaterThan(10);
    expect(await tooSmall(pressed), stage).toEqual([]);
  }
});

test('on a phone a slider is moved with the table in sight', async ({ studio }) => {
  const before = await outline(studio);
  const ease = slider(studio, 'Ease');
  await ease.scrollIntoViewIfNeeded();
  const box = (await ease.boundingBox())!;
  await studio.touchscreen.tap(box.x + box.width * 0.8, box.y + box.height / 2);
  await expect(tally(studio, /^Inside/)).toHaveText(/Inside 5[78]\.\d cm/);
  await expect.poll(() => outline(studio)).not.toBe(before);
  const lies = (await table(studio).boundingBox())!;
  expect(lies.y).toBeGreaterThanOrEqual(0);
  expect(lies.y + lies.height).toBeLessThanOrEqual(844);
});

test('on a phone the name of the cap has the row to itself while it is typed in, and the tally is seen to go on', async ({
  studio,
}) => {
  const name = studio.getByRole('textbox', { name: 'Name of the cap' });
  const header = studio.locator('header');
  const { height } = (await header.boundingBox())!;
  await name.focus();
  expect((await name.boundingBox())!.width).toBeGreaterThan(350);
  expect((await header.boundingBox())!.height).toBe(height);
  const strip = studio.getByRole('region', { name: 'The tally' }).locator('> div');
  const [wide, shown, mask] = await strip.evaluate((element) => [
    element.scrollWidth,
    element.clientWidth,
    getComputedStyle(element).maskImage,
  ]);
  expect(wide).toBeGreaterThan(shown);
  expect(mask).toContain('gradient');
});
