import { beforeAll, describe, expect, test } from 'vitest';
import type { Values } from '../../src/caps/parameter.ts';
import { fetchStyles } from '../../src/caps/registry.ts';
import type { Style } from '../../src/caps/style.ts';
import type { Step } from '../../src/guide/step.ts';
import { degrees } from '../../src/units.ts';
import { say } from '../../src/words.ts';
import { clothsOf, type Written, written } from './caps.ts';

let styles: readonly Style[] = [];
beforeAll(async () => {
  styles = await fetchStyles();
}, 30_000);

const cap = (id: string, wishes: Values = {}, kinds: Parameters<typeof clothsOf>[0] = {}): Written =>
  written(styles.find((style) => style.id === id)!, wishes, clothsOf(kinds))!;
const stepOf = ({ guide }: Written, id: string): Step | undefined =>
  guide.steps.find((step) => step.id === id);
const said = (of: Written, id: string): string => {
  const step = stepOf(of, id);
  return [...(step?.words ?? []), ...(step?.checks ?? []), ...(step?.cautions ?? [])]
    .map((s) => say(s, 'cm'))
    .join(' ');
};
const order = ({ guide }: Written): readonly string[] => guide.steps.map(({ id }) => id);

describe('the sweatband', () => {
  test.each(['ball', 'three-piece'])('of a %s is sewn over the visor, beside the plastic', (id) => {
    const text = said(cap(id), 'lowerEdge');
    expect(text).toMatch(/with the visor between/);
    expect(text).toMatch(/just inside your basting/);
    expect(text).toMatch(/beside the stiffener, never through it/);
    // The presser foot is wider than the stiffener is far.
    expect(text).toMatch(/narrow foot: the stitch line runs 0\.15 cm from the stiffener/);
    expect(said(cap(id, { stiffenerClearance: 4 }), 'lowerEdge')).not.toMatch(/narrow foot/);
  });

  test.each(['bucket', 'sun-hat'])(
    'of a %s is sewn to the under brim, inside the seam that holds it',
    (id) => {
      const text = said(cap(id), 'sweatbandEdge');
      expect(text).toMatch(/on the under brim.*just inside the seam of the brim/);
      expect(text).not.toMatch(/visor/);
    },
  );

  test('has its raw edge turned in where it is cut from lining', () => {
    expect(said(cap('ball'), 'turnIn')).toMatch(/cut from lining, turn its free edge in first/);
  });
});

describe('a stiff crown', () => {
  test('of plastic is glued, of buckram tacked: a hand needle does not pass plastic', () => {
    expect(said(cap('pillbox', {}, { stiffener: 'visor-sheet' }), 'stiffener')).toMatch(/glue/);
    expect(said(cap('pillbox', {}, { stiffener: 'visor-sheet' }), 'stiffener')).not.toMatch(/Tack/);
    expect(said(cap('pillbox', {}, { stiffener: 'buckram' }), 'stiffener')).toMatch(/Tack it by hand/);
  });

  test('has its stiffener cut 2 mm inside the seam, so that the needle passes beside it, and the piece says so too', () => {
    const pillbox = cap('pillbox');
    expect(said(pillbox, 'cut')).toMatch(/Cut the stiffener 0\.2 cm inside the stitch line/);
    for (const { notes } of pillbox.draft.pattern.pieces.filter(({ id }) => ['tip', 'sideBand'].includes(id)))
      expect(notes.map((note) => say(note, 'cm'))).toContain(
        'Stiffener is cut 0.2 cm inside the stitch line all round.',
      );
  });

  test('is pressed with fingers, since the iron must keep off', () => {
    const pillbox = cap('pillbox');
    expect(said(pillbox, 'side')).toMatch(/open with your finger/);
    expect(said(pillbox, 'crown')).toMatch(/with your fingers/);
    expect(said(cap('pillbox', { crownBody: 'interlining' }), 'crown')).toMatch(/over a ham/);
  });
});

describe('cutting', () => {
  test('follows the stitch line for an interlining that shares a piece with its cloth, and only there', () => {
    expect(said(cap('bucket'), 'cut')).toMatch(/Cut the interlining on the stitch line instead/);
    expect(said(cap('bucket', { brimBody: 'none' }), 'cut')).not.toMatch(/on the stitch line/);
    // A paper piece of its own is drawn without allowance already.
    const own = cap('bucket', {}, { outer: 'canvas', interlining: 'woven-fusible' });
    expect(said(own, 'cut')).not.toMatch(/Cut the interlining/);
  });
});

describe('outward curves', () => {
  test('of a beret are notched out, not clipped: turned in, their allowances are too long', () => {
    const text = said(cap('beret'), 'crown');
    expect(text).toMatch(/small nicks out.*bowl/);
    expect(text).not.toMatch(/Clip/);
    // The upright side of a bucket hat opens round the tip.
    for (const id of ['bucket', 'flat-top', 'pillbox']) {
      expect(said(cap(id), 'crown')).toMatch(/Clip the allowance/);
      expect(said(cap(id), 'crown')).not.toMatch(/nicks/);
    }
  });

  test('of a brim are notched out before it is turned', () => {
    expect(said(cap('bucket'), 'brimEdge')).toMatch(/nicks out.*Turn the brim/);
    expect(said(cap('bucket', { reversible: true }), 'brimEdge')).toMatch(/nicks out/);
  });
});

describe('seams inside, without a lining', () => {
  test('are neatened before others cross them, but not where matted cloth holds its edges', () => {
    const bucket = cap('bucket', { lining: false }, { outer: 'linen' });
    expect(said(bucket, 'neaten')).toMatch(/Zigzag/);
    expect(order(bucket).indexOf('neaten')).toBeLessThan(order(bucket).indexOf('side'));
    expect(order(cap('bucket', { lining: false }, { outer: 'felt' }))).not.toContain('neaten');
    expect(order(cap('bucket'))).not.toContain('neaten');
    // Gores have their tape.
    expect(order(cap('skull', { lining: false }))).toContain('tape');
    expect(order(cap('skull', { lining: false }))).not.toContain('neaten');
  });

  test('are taped before the opening of a ball cap is bound, so that the binding covers the end of the tape', () => {
    const ball = order(cap('ball'));
    expect(ball).toContain('tape');
    expect(ball.indexOf('tape')).toBeLessThan(ball.indexOf('backOpening'));
  });

  test('are taped in an order that the cap has: a scrub cap has two alike and none over the top', () => {
    expect(said(cap('scrub'), 'tape')).not.toMatch(/runs over the top/);
    expect(said(cap('ball'), 'tape')).toMatch(/runs over the top/);
    expect(said(cap('ball'), 'tape')).toMatch(/show outside, beside the topstitching/);
    expect(said(cap('ball', {}, { outer: 'poplin' }), 'tape')).toMatch(/show outside: take thread/);
  });

  test('lie under a facing, which no step calls a lining', () => {
    const beret = cap('beret', { lining: false });
    expect(said(beret, 'lowerTopstitch')).toMatch(/facing rolled.*facing does not peep out/);
    expect(said(beret, 'lowerTopstitch')).not.toMatch(/lining/);
    const notes = beret.draft.pattern.pieces.flatMap((piece) => piece.notes.map((note) => say(note, 'cm')));
    expect(notes.join(' ')).not.toMatch(/lining goes in/);
  });
});

describe('what is matched', () => {
  test('is the middle of the visor before all: its notch meets the seam or the gore at the centre front', () => {
    expect(said(cap('ball'), 'visorToBand')).toMatch(/middle notch of the visor meets the seam/);
    expect(said(cap('gored', { edge: 'sweatband', frontSeam: 'panel' }), 'visorToBand')).toMatch(
      /middle notch of the visor meets the middle of the front gore/,
    );
    expect(said(cap('three-piece'), 'visorToBand')).toMatch(/Match the centre front/);
  });

  test('are the back seams, where both sides have one there', () => {
    expect(said(cap('bucket'), 'lowerEdge')).toMatch(/Match the sides, centre front and back seams\./);
    expect(said(cap('pillbox'), 'lowerEdge')).toMatch(/back seams/);
    // A tip has a notch there, and a front and a back half have no seam.
    expect(said(cap('bucket'), 'crown')).not.toMatch(/back seams/);
    expect(said(cap('flat-top', { sideBandPieces: '2' }), 'bandToSide')).not.toMatch(/back seams/);
  });
});

describe('brims and gathers', () => {
  test('a flat brim closes to a flat ring, a sloping one to a cone', () => {
    // At 40° a ring of 360° · cos 40° = 276° is closed.
    expect(said(cap('bucket', { brimDrop: degrees(40) }), 'brim')).toMatch(/low cone/);
    expect(said(cap('sun-hat', { brimDrop: degrees(8) }), 'brim')).toMatch(/lies flat/);
  });

  test('a brim of more than four inches is wired or stiffened (common practice)', () => {
    expect(said(cap('sun-hat', { brimWidth: 120 }), 'brimEdge')).toMatch(/more than 10\.2 cm droops.*wire/);
    expect(said(cap('sun-hat', { brimWidth: 100 }), 'brimEdge')).not.toMatch(/droops/);
    expect(said(cap('sun-hat', { brimWidth: 120, brimBody: 'stiffener' }), 'brimEdge')).not.toMatch(/droops/);
  });

  test('thick wool is not gathered to nearly half without a word, poplin is', () => {
    const gathered = (outer: string) =>
      said(cap('beret', { beretCrown: 'gathered' }, { outer }), 'bandToCrownGathers');
    expect(gathered('melton')).toMatch(/hardly draws up so far/);
    expect(gathered('poplin')).toMatch(/Draw up the threads/);
    expect(gathered('poplin')).not.toMatch(/hardly/);
  });
});
