import { describe, expect, test } from 'vitest';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { threePieceParameters } from '../../src/caps/three-piece/parameters.ts';
import { threePiece } from '../../src/caps/three-piece/three-piece.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { pathEnd } from '../../src/geometry/path.ts';
import { checkSeams } from '../../src/pattern/seam-check.ts';
import { inches } from '../../src/units.ts';

/**
 * What cap makers say of a three-piece flat cap (common practice, no single source): the top is as long as the way over the head
 * from front to back and one to two inches more, widest six to seven inches behind its front; the sides are three to four
 * inches deep at the ear; side seams match within 2 mm. Held on the mean man (girth 574 mm, ANSUR II, 2012); the way from
 * front to back is 14 in for a girth of 24 in (F. Anslow, Practical Millinery, 1922, p. 88).
 */
describe('a three-piece flat cap against the trade’s figures', () => {
  const girth = 574;
  const arc = (girth * 14) / 24;
  const head = { girth, ratio: 0.8, arc };
  const { pattern } = threePiece.draft(defaultsOf(threePieceParameters), head);
  const piece = (id: string) => pattern.pieces.find((p) => p.id === id)!;
  const dimension = (id: string, name: string) => piece(id).dimensions.find((d) => d.name === name)!.along;

  test('the top is an inch or two longer than the way over the head', () => {
    const extra = pathLength(dimension('top', 'Length')) - arc;
    expect(extra).toBeGreaterThanOrEqual(inches(1));
    expect(extra).toBeLessThanOrEqual(inches(2));
  });

  test('the top is widest six to seven inches behind its front edge', () => {
    const front = pathEnd(dimension('top', 'Length'));
    const behind = front.y - pathEnd(dimension('top', 'Widest')).y;
    expect(behind).toBeGreaterThanOrEqual(inches(6));
    expect(behind).toBeLessThanOrEqual(inches(7));
  });

  test('the sides are three to four inches deep at the ear', () => {
    const depth = pathLength(dimension('side', 'Depth'));
    expect(depth).toBeGreaterThanOrEqual(inches(3));
    expect(depth).toBeLessThanOrEqual(inches(4));
  });

  test('the side seams match well within 2 mm', () => {
    const long = checkSeams(pattern).filter(({ seam }) => seam.kind === 'gore');
    expect(long).toHaveLength(4);
    for (const { difference } of long) expect(Math.abs(difference)).toBeLessThan(0.02);
  });

  test('the visor takes about a third of the girth', () => {
    const share = pathLength(dimension('visor', 'Inner edge')) / girth;
    expect(share).toBeGreaterThan(0.28);
    expect(share).toBeLessThan(0.38);
  });
});
