import { beforeAll, describe, expect, test } from 'vitest';
import { fetchStyles } from '../../src/caps/registry.ts';
import type { Style } from '../../src/caps/style.ts';
import type { ClothSpec, Cloths } from '../../src/cloth/cloth.ts';
import { settingLines } from '../../src/guide/settings-words.ts';
import { say } from '../../src/words.ts';
import { clothsOf, type Written, written } from './caps.ts';

let styles: readonly Style[] = [];
beforeAll(async () => {
  styles = await fetchStyles();
}, 30_000);

/** A cap, its outer cloth changed in some ways. */
const cap = (
  id: string,
  kinds: Parameters<typeof clothsOf>[0] = {},
  outer: Partial<ClothSpec> = {},
  wishes = {},
): Written => {
  const cloths: Cloths = clothsOf(kinds);
  return written(styles.find((style) => style.id === id)!, wishes, {
    ...cloths,
    outer: { ...cloths.outer, ...outer },
  })!;
};
/** What a step says, or all of them. */
const said = ({ guide }: Written, id?: string): string =>
  guide.steps
    .filter((step) => id === undefined || step.id === id)
    .flatMap(({ title, words, checks, cautions }) => [
      title,
      ...[...words, ...checks, ...cautions].map((s) => say(s, 'cm')),
    ])
    .join(' ');
const pressed = ({ guide, work }: Written): readonly string[] =>
  guide.steps.flatMap((step) =>
    settingLines(work, step, 'cm')
      .filter(({ name }) => name === 'Press')
      .map(({ value }) => value),
  );

describe('a cap is cared for as its cloth needs (common practice)', () => {
  test.each(['felt', 'melton', 'tweed', 'boiled-wool'])(
    '%s is steamed and brushed, never washed',
    (outer) => {
      const beret = cap('beret', { outer });
      expect(said(beret)).not.toMatch(/\bWash (it|the cap)|the wash\b|first wash/);
      expect(said(beret, 'wash')).toMatch(/Do not steam the outer cloth yet.*dry iron/);
      expect(said(beret, 'look')).toMatch(/first steaming makes it smaller.*Do not wash it: brush it/);
    },
  );

  test.each(['velvet', 'silk', 'brocade'])('%s goes to a dry cleaner', (outer) => {
    const pillbox = cap('pillbox', { outer }, {}, { crownBody: 'none' });
    expect(said(pillbox)).not.toMatch(/\bWash (it|the cap)/);
    expect(said(pillbox, 'look')).toMatch(/dry cleaner/);
  });

  test('wool without shrinkage is steamed before it is cut', () => {
    const beret = cap('beret', { outer: 'felt' }, { shrinkLength: 0, shrinkWidth: 0 });
    expect(said(beret, 'wash')).toMatch(/^Steam and press the cloth Steam the outer cloth and lining/);
  });

  test('felt has no grain to look at, its lining has', () => {
    expect(said(cap('beret', { outer: 'felt' }), 'wash')).toMatch(/grain of the lining is straight/);
    expect(said(cap('beret', { outer: 'felt' }), 'cut')).toMatch(/The outer cloth has no grain/);
    expect(said(cap('beret', { outer: 'tweed' }), 'wash')).toMatch(/its grain is straight/);
  });

  test('a pile is pressed on a towel from the first pressing to the last, wool and silk through a press cloth', () => {
    const corduroy = cap('flat-top', { outer: 'fine-corduroy' });
    expect(said(corduroy, 'wash')).toMatch(/wrong side, on a towel: an iron crushes its pile/);
    expect(pressed(corduroy)).toContain('open, on a towel, from the wrong side');
    expect(pressed(cap('flat-top', { outer: 'tweed' }))).toContain('open, through a press cloth');
    expect(pressed(cap('flat-top', { outer: 'poplin' }))).toContain('open');
    // Where nothing has to be washed, the first step with an iron says it.
    const washed = cap('flat-top', { outer: 'fine-corduroy', lining: 'poplin' }, { washed: true });
    expect(said(washed)).toMatch(/an iron crushes its pile/);
  });

  test('a one-way print lies one way up, and is no pile', () => {
    const print = cap('scrub', { outer: 'poplin' }, { nap: true });
    expect(said(print, 'cut')).toMatch(/same way up: its face has one way up/);
    expect(said(print)).not.toMatch(/\bnap\b|\bpile\b|towel: an iron/);
    expect(said(cap('scrub', {}, { nap: true }))).toMatch(/If the outer cloth has a pile/);
    expect(said(cap('scrub', { outer: 'melton' }), 'cut')).toMatch(/it has a nap/);
  });
});

describe('cloth that is made up before its first wash', () => {
  const kinds = { outer: 'canvas', interlining: 'woven-fusible' } as const;

  test('had better shrink first where an interlining is glued to it that shrinks less: it would bubble', () => {
    expect(said(cap('bucket', kinds), 'wash')).toMatch(/bubbles\. Better shrink the cloth now/);
    expect(said(cap('bucket', kinds), 'interlining')).toMatch(
      /after the wash: lay it in the middle.*bubbles/,
    );
    const washed = { outer: 'canvas', interlining: 'woven-fusible' } as const;
    expect(said(cap('bucket', washed, { washed: true }))).not.toMatch(/bubbles|lay it in the middle/);
    // What is basted moves with the cloth.
    expect(said(cap('bucket', { ...kinds, interlining: 'buckram' }))).not.toMatch(/bubbles/);
    // So does what shrinks as much, to about one per cent.
    expect(said(cap('bucket', kinds, { shrinkLength: 0.02, shrinkWidth: 0.02 }))).not.toMatch(/bubbles/);
  });

  test('stands full on a lining that has shrunk, rather than being pulled in by it', () => {
    const raw = cap('sun-hat', { outer: 'linen' });
    expect(said(raw, 'liningEdge')).toMatch(/stands full on the lining until the wash/);
    expect(said(raw, 'liningEdge')).not.toMatch(/does not pull/);
    expect(said(cap('sun-hat', { outer: 'linen' }, { washed: true }), 'liningEdge')).toMatch(/does not pull/);
    // The other way round too.
    expect(said(cap('sun-hat', { lining: 'linen' }), 'liningEdge')).toMatch(
      /lining lies full in the crown until the wash/,
    );
  });

  test('must shrink first where the hat is never washed: a stiff crown does not bear it', () => {
    const stiff = cap('pillbox', { outer: 'canvas', stiffener: 'visor-sheet' });
    expect(said(stiff, 'wash')).toMatch(/never washed, so that it stays too large/);
    expect(said(stiff, 'look')).toMatch(/no steam.*Wipe the cap clean/);
    expect(said(stiff, 'look')).not.toMatch(/Wash it once|Wash the cap/);
  });
});
