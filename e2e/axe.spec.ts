import { goTo, slider, stages, table, tally } from './at-hand.ts';
import { barriers } from './barriers.ts';
import { expect, test } from './studio.ts';

const sizes = [
  { on: 'a desk', width: 1280, height: 800 },
  { on: 'a phone', width: 390, height: 844 },
] as const;

for (const { on, width, height } of sizes) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test.describe(`on ${on}, in ${colorScheme}`, () => {
      test.use({ viewport: { width, height }, colorScheme, reducedMotion: 'reduce' });

      test('no stage has a barrier that axe can find', async ({ studio: page }) => {
        test.slow();
        // In both lights the page is the same but for its colours.
        const ofColour = colorScheme === 'dark';
        await expect(table(page)).toHaveAttribute('data-outline', /./);
        await expect(page.locator('html')).toHaveAttribute('data-light', colorScheme);
        for (const stage of stages) {
          await goTo(page, stage);
          if (stage === 'Cap') {
            // With a problem beside a control, and a reckoning open.
            await slider(page, 'Crown fullness').press('End');
            await slider(page, 'Side band height').press('Home');
            await expect(page.getByText(/cannot reach out that far/)).toBeVisible();
            await tally(page, /seams meet/).click();
          }
          expect(await barriers(page, { ofColour }), stage).toEqual([]);
          if (stage === 'Cap') {
            await page.keyboard.press('Escape');
            await slider(page, 'Crown fullness').press('Home');
          }
        }
      });
    });
  }
}
