import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright/test';
import { expect } from './studio.ts';

/** The rules of axe that look at colours. All others give the same in any light, since the page is the same. */
const OF_COLOUR = ['color-contrast', 'link-in-text-block'];

/**
 * What axe finds in the way of someone, in the page or in a part of it; by the rules of colour alone where the same page
 * is judged by all of them in another light. Of what is no barrier only the rule is asked for, not each element: telling
 * of those takes longer than judging them.
 */
export const barriers = async (
  page: Page,
  { within, ofColour = false }: { readonly within?: string; readonly ofColour?: boolean } = {},
): Promise<readonly string[]> => {
  const axe = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] });
  if (within !== undefined) axe.include(within);
  if (ofColour) axe.withRules(OF_COLOUR);
  const { violations, passes } = await axe.analyze();
  const judged = [...passes, ...violations].map(({ id }) => id);
  expect(judged).toContain('color-contrast');
  if (!ofColour) expect(judged.length).toBeGreaterThan(within === undefined ? 15 : 5);
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html} ${failureSummary}`),
  );
};
