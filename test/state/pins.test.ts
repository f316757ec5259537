import { beforeEach, describe, expect, it } from 'vitest';
import type { Placement } from '../../src/nesting/task.ts';
import { keepIn, openStudio } from './opened.ts';

const placed = (piece: string, x: number): Placement => ({ piece, container: 0, rotation: 0, x, y: 40 });

const open = async () => ({
  ...(await openStudio()),
  ...(await import('../../src/state/cloth-actions.ts')),
});
let studio: Awaited<ReturnType<typeof open>>;
const pins = () => studio.now().lay.pins;

beforeEach(async () => {
  keepIn(new Map());
  studio = await open();
  studio.pinPiece(placed('1.tip#1', 100));
  studio.pinPiece(placed('1.visor#1', 300));
});

describe('a piece put down by hand', () => {
  it('lies where it was put last, and the others as they lay', () => {
    studio.pinPiece(placed('1.tip#1', 150));
    expect(pins()).toHaveLength(2);
    expect(pins()).toEqual(expect.arrayContaining([placed('1.tip#1', 150), placed('1.visor#1', 300)]));
  });

  it('is let go of alone, or with all others', () => {
    studio.freePiece('1.tip#1');
    expect(pins()).toEqual([placed('1.visor#1', 300)]);
    studio.freeAll();
    expect(pins()).toEqual([]);
  });

  it('stays there while the same cloth is looked at', () => {
    studio.chooseCloth(studio.now().lay.cloth);
    expect(pins()).toHaveLength(2);
  });

  it('lies there no more on another cloth, nor among more or fewer caps', () => {
    const put = pins();
    for (const change of [
      () => studio.chooseCloth('lining'),
      () => studio.putCaps(2),
      () => studio.putBeside(studio.now().shelf[0]!.id, 1),
    ]) {
      studio.keepPins(put);
      change();
      expect(pins()).toEqual([]);
    }
    expect(studio.now().lay).toMatchObject({ cloth: 'lining', here: 2 });
  });
});
