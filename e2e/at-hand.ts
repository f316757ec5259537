import type { Locator, Page } from 'playwright/test';
import { expect } from './studio.ts';

export const stages = ['Head', 'Cap', 'Cloth', 'Paper', 'Sewing'] as const;
export type StageName = (typeof stages)[number];

export const tab = (page: Page, stage: StageName): Locator =>
  page.getByRole('tab', { name: stage, exact: true });

export const goTo = async (page: Page, stage: StageName): Promise<void> => {
  await tab(page, stage).click();
  await shown(page, stage);
};

/** Waits until a stage is there: its heading, and what stands under it. */
export const shown = async (page: Page, stage: StageName): Promise<void> => {
  await expect(tab(page, stage)).toHaveAttribute('aria-selected', 'true');
  await expect(page.getByRole('tabpanel', { name: stage })).toHaveText(new RegExp(`${stage}\\s*\\S`));
};

export const table = (page: Page): Locator => page.getByRole('region', { name: 'The table' });

/** The mark of the outlines on the table, once there is one and all that was asked for is painted: one question to the page. */
export const outline = (page: Page): Promise<string> =>
  table(page).evaluate(async (region) => {
    for (let idle = 0; idle < 2; ) {
      await new Promise(requestAnimationFrame);
      const busy = document.body.hasAttribute('data-busy') || !region.dataset.outline;
      idle = busy ? 0 : idle + 1;
    }
    return region.dataset.outline ?? '';
  });

/**
 * Waits until all that was asked for is drafted, drawn and painted: a slow machine takes a frame for each. What follows
 * from a change of size is asked for at the end of a frame, so it takes two frames in a row with nothing left to do.
 */
export const painted = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    for (let idle = 0; idle < 2; ) {
      await new Promise(requestAnimationFrame);
      idle = document.body.hasAttribute('data-busy') ? 0 : idle + 1;
    }
  });

/** One number of the tally, such as /^Inside/. */
export const tally = (page: Page, name: RegExp): Locator =>
  page.getByRole('region', { name: 'The tally' }).getByRole('button', { name });

/** The field beside a slider. */
export const typedField = (page: Page, name: string): Locator =>
  page.getByRole('textbox', { name: `${name}, typed` });

export const slider = (page: Page, name: string): Locator => page.getByRole('slider', { name, exact: true });

export const unitSwitch = (page: Page, unit: 'cm' | 'in'): Locator =>
  page.getByRole('radiogroup', { name: 'Units' }).getByRole('radio', { name: unit, exact: true });

/** The first length in a text, mm: "54.6 cm", "1/2 in", "21 1/2 in". */
export const lengthIn = (text: string | null): number => {
  const found = /(?:(\d+(?:\.\d+)?)(?:\s(\d+)\/(\d+))?|(\d+)\/(\d+))\s(cm|in)\b/.exec(text ?? '');
  if (found === null) throw new Error(`no length in "${text}"`);
  const [, whole, over, under, overAlone, underAlone, unit] = found;
  const share = Number(over ?? overAlone ?? 0) / Number(under ?? underAlone ?? 1);
  return (Number(whole ?? 0) + share) * (unit === 'cm' ? 10 : 25.4);
};

/** Takes the thumb with the mouse and moves it by so many pixels in steps; gives the outlines seen on the way. */
export const drag = async (
  page: Page,
  thumb: Locator,
  right: number,
  steps = 10,
): Promise<readonly string[]> => {
  const box = (await thumb.boundingBox())!;
  const [value, min, max] = await thumb.evaluate((input: HTMLInputElement) => [
    input.valueAsNumber,
    Number(input.min),
    Number(input.max),
  ]);
  // The thumb's middle runs from half its width inside one end to half its width inside the other.
  const half = 9;
  const x = box.x + half + ((value! - min!) / (max! - min!)) * (box.width - 2 * half);
  const y = box.y + box.height / 2;
  await page.mouse.move(x, y);
  await page.mouse.down();
  const seen: string[] = [];
  for (let i = 1; i <= steps; i++) {
    await page.mouse.move(x + (right * i) / steps, y);
    seen.push(await outline(page));
  }
  return seen;
};
