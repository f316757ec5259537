import { beforeEach, describe, expect, it, vi } from 'vitest';
import { encodeSpec, SPEC_VERSION } from '../../src/design/decode.ts';
import { demoHeads } from '../../src/design/demo-band.ts';
import type { Spec } from '../../src/design/spec.ts';
import { keepIn, openStudio } from './opened.ts';

let kept: Map<string, string>;
beforeEach(() => {
  kept = new Map();
  keepIn(kept);
  vi.useFakeTimers({ now: new Date('2026-11-28') });
});

const open = async () => ({
  ...(await openStudio()),
  ...(await import('../../src/state/shelf.ts')),
  ...(await import('../../src/state/derived.ts')),
  ...(await import('../../src/state/ticks.ts')),
  ...(await import('../../src/state/cloth-actions.ts')),
});
const reload = () => {
  vi.advanceTimersByTime(1000);
  return open();
};

describe('the shelf of a first visit', () => {
  it('holds caps of the demo band, each of which can be sewn as it is', async () => {
    const { now, openShelved, judged, drafted } = await open();
    expect(now().shelf).toHaveLength(3);
    for (const cap of now().shelf) {
      const { wish, good } = await openShelved(cap);
      expect(good).toBe(wish);
      expect(judged(wish).problems).toEqual([]);
      expect(drafted(wish)!.seams.filter(({ meets }) => !meets)).toEqual([]);
    }
  });
});

describe('a cap taken from the shelf', () => {
  it('lies on the table as it left it, and the other on the shelf; paper and unit stay', async () => {
    const studio = await open();
    const { now, takeToTable, put, putUnit } = studio;
    put('cap.ease', 15);
    const first = now();
    const [other] = first.shelf;
    await takeToTable(other!);
    expect(now().wish.cap).toMatchObject({ style: 'gored', name: 'Tenor horn’s cap' });
    expect(now().wish.head.name).toBe('Tenor horn');
    expect(now().shelf.map(({ id }) => id)).not.toContain(other!.id);
    put('cap.ease', 9);
    putUnit('in');
    await takeToTable(now().shelf.find(({ id }) => id === first.capId)!);
    expect(now().wish.cap).toEqual(first.wish.cap);
    expect(now().wish.head).toEqual(first.wish.head);
    expect(now().wish).toMatchObject({ unit: 'in', paper: { paper: 'letter' } });
    const back = now().shelf.find(({ id }) => id === other!.id)!;
    expect((await studio.openShelved(back)).wish.cap.values.ease).toBe(9);
  });

  it('keeps a wish that cannot be sewn, with the last that can under it', async () => {
    const { now, takeToTable, put, putUnit } = await open();
    const { capId } = now();
    put('cap.sideBandHeight', 30);
    const { good } = now();
    put('cap.crownFullness', 300);
    await takeToTable(now().shelf[0]!);
    expect(now().good).toBe(now().wish);
    putUnit('in');
    await takeToTable(now().shelf.find(({ id }) => id === capId)!);
    expect(now().wish.cap.values.crownFullness).toBe(300);
    expect(now().good.cap).toEqual(good.cap);
    // What is shown and printed meanwhile is said in the unit that stays, on the paper that stays.
    for (const spec of [now().wish, now().good])
      expect(spec).toMatchObject({ unit: 'in', paper: { paper: 'letter' } });
  });

  it('of which no wish can be sewn lies on the table over the demo cap', async () => {
    const { now, takeToTable, addToShelf, canBeSewn } = await open();
    const { wish } = now();
    const wide = encodeSpec({
      ...wish,
      cap: { ...wish.cap, values: { ...wish.cap.values, ease: 50_000 } },
    });
    await addToShelf([{ wish: wide, good: wide }]);
    await takeToTable(now().shelf.at(-1)!);
    expect(now().wish.cap.values.ease).toBe(50_000);
    expect(canBeSewn(now().good)).toBe(true);
  });

  it('takes over what is cut together, and not what was put down by hand of the other', async () => {
    const { now, takeToTable, pinPiece, putBeside, putCaps } = await open();
    const [first, second] = now().shelf;
    putCaps(3);
    putBeside(second!.id, 2);
    pinPiece({ piece: '1.tip#1', container: 0, rotation: 0, x: 10, y: 20 });
    expect((await reload()).now().lay).toEqual(now().lay);
    await takeToTable(first!);
    expect(now().lay).toEqual({ cloth: 'outer', here: 3, besides: { [second!.id]: 2 }, pins: [] });
  });

  it('stays there when the style of one that was asked for before comes later', async () => {
    const { now, takeToTable, copyCap, putStyle } = await open();
    const [gored] = now().shelf;
    const { capId } = now();
    copyCap();
    const [fetched] = now().shelf.filter(({ id }) => id === capId);
    await Promise.all([putStyle('bucket'), takeToTable(gored!), takeToTable(fetched!)]);
    expect(now().capId).toBe(capId);
    expect(now().wish.cap.style).toBe('flat-top');
  });

  it('has its own ticks', async () => {
    const { now, takeToTable, tick, ticksNow } = await open();
    const { capId } = now();
    tick('cut', true);
    await takeToTable(now().shelf[0]!);
    expect(ticksNow(now())).toEqual([]);
    tick('crown', true);
    await takeToTable(now().shelf.find(({ id }) => id === capId)!);
    expect(ticksNow(now())).toEqual(['cut']);
  });

  it('is one step of undo, which lays both back', async () => {
    const { now, takeToTable, undo, redo } = await open();
    const { wish, shelf, capId } = now();
    await takeToTable(shelf[0]!);
    const after = now();
    undo();
    expect(now()).toMatchObject({ wish, shelf, capId });
    redo();
    expect(now()).toMatchObject({ wish: after.wish, shelf: after.shelf, capId: after.capId });
  });

  it('is there with the rest of the shelf after a reload', async () => {
    const { now, takeToTable } = await open();
    await takeToTable(now().shelf[2]!);
    const before = now();
    const after = (await reload()).now();
    expect(after.wish).toEqual(before.wish);
    expect(after.shelf).toEqual(before.shelf);
    expect(after.capId).toBe(before.capId);
  });
});

describe('another cap', () => {
  it('begins with the usual values on the head on the table; the first lies on the shelf', async () => {
    const { now, put, startCap } = await open();
    put('cap.ease', 20);
    const before = now();
    startCap(before.wish.head);
    expect(now().wish.head).toBe(before.wish.head);
    expect(now().wish.cap).toMatchObject({ style: 'flat-top', name: 'Cornet’s cap 2' });
    expect(now().wish.cap.values.ease).toBe(12.7);
    expect(now().shelf.map(({ wish }) => wish.spec.cap.name)).toContain('Cornet’s cap');
    expect(now().capId).toBeGreaterThan(before.capId);
  });

  it('goes on from a copy under a name of its own', async () => {
    const { now, put, copyCap } = await open();
    put('cap.ease', 20);
    copyCap();
    copyCap();
    expect(now().wish.cap).toMatchObject({ name: 'Cornet’s cap 3' });
    expect(now().wish.cap.values.ease).toBe(20);
    expect(now().shelf).toHaveLength(5);
    expect(new Set([now().capId, ...now().shelf.map(({ id }) => id)]).size).toBe(6);
  });

  it('has a name no longer than is kept', async () => {
    const { now, put, startCap, copyCap } = await open();
    put('head.name', 'W'.repeat(120));
    startCap(now().wish.head);
    startCap(now().wish.head);
    copyCap();
    const { name } = now().wish.cap;
    expect(name).toHaveLength(120);
    expect(name).toMatch(/^W+.* 4$/);
    expect((await reload()).now()).toMatchObject({ wish: { cap: { name } }, notice: null });
  });

  it('is begun for a head that was fitted with what fitted it', async () => {
    const { now, startCap } = await open();
    const { keepFit } = await import('../../src/state/try-on.ts');
    const note = {
      date: '2026-11-28',
      style: 'flat-top',
      found: ['It is tight'],
      changed: { ease: [12.7, 18.7] as const },
    };
    keepFit({ ease: 18.7 }, note);
    const card = now().heads.find(({ name }) => name === 'Cornet')!;
    expect(card.fittings).toEqual([note]);
    startCap(demoHeads[1]!);
    expect(now().wish.cap.values.ease).toBe(12.7);
    startCap(card);
    expect(now().wish.cap.values.ease).toBe(18.7);
  });
});

describe('a cap removed from the shelf', () => {
  it('is brought back by undo', async () => {
    const { now, removeFromShelf, undo } = await open();
    const { shelf } = now();
    removeFromShelf(shelf[1]!);
    expect(now().shelf).toEqual([shelf[0], shelf[2]]);
    undo();
    expect(now().shelf).toBe(shelf);
  });
});

describe('a damaged shelf', () => {
  it('says which caps had to be mended when they are taken to the table', async () => {
    const { now, takeToTable, addToShelf } = await open();
    const { wish } = now();
    const whole = encodeSpec({ ...wish, cap: { ...wish.cap, name: 'Flugelhorn’s cap' } });
    const damaged = (changed: object) => ({
      wish: { ...whole, spec: { ...whole.spec, ...changed } as Spec },
      good: whole,
    });
    await addToShelf([damaged({ paper: 7 }), damaged({ head: { ...whole.spec.head, readings: [] } })]);
    const [paperless, headless] = now().shelf.slice(-2);
    await takeToTable(paperless!);
    expect(now().notice).toBeNull();
    await takeToTable(headless!);
    expect(now().notice).toMatch(/look them over/);
  });

  it('leaves a cap that a later version saved where it is, and says so', async () => {
    const { now, takeToTable, addToShelf } = await open();
    const { wish, capId } = now();
    const other = { ...wish, cap: { ...wish.cap, name: 'Flugelhorn’s cap' } };
    const later = { ...encodeSpec(other), version: SPEC_VERSION + 1 };
    await addToShelf([{ wish: later, good: later }]);
    await takeToTable(now().shelf.at(-1)!);
    expect(now().capId).toBe(capId);
    expect(now().notice).toMatch(/later/);
  });

  it('loses what is no cap, and nothing else', async () => {
    const { now, removeFromShelf } = await open();
    removeFromShelf(now().shelf[0]!);
    vi.advanceTimersByTime(1000);
    const text = kept.get('capwright')!;
    const data = JSON.parse(text);
    data.state.shelf.push(7, { id: 'x', wish: {}, good: {} }, { id: 9 });
    kept.set('capwright', JSON.stringify(data));
    expect((await open()).now().shelf).toEqual(now().shelf);
  });
});

describe('a file of caps', () => {
  const filedAll = async () => {
    const { now, onShelf, filed } = await open();
    return [...now().shelf, onShelf()].map(filed);
  };

  it('brings no cap that is there already, whether it has been read since or not, nor one in another unit', async () => {
    const { now, takeToTable, putUnit, addToShelf } = await open();
    const untouched = await filedAll();
    const { capId } = now();
    // Its usual values are filled in when it is read.
    await takeToTable(now().shelf[0]!);
    putUnit('in');
    await takeToTable(now().shelf.find(({ id }) => id === capId)!);
    const before = now().shelf;
    expect(await addToShelf(untouched)).toEqual({ added: 0, known: 4, roomless: 0 });
    expect(now().shelf).toBe(before);
  });

  it('brings a cap that differs in one measure from the one of its name, or is another head’s', async () => {
    const { now, put, addToShelf, onShelf, filed } = await open();
    put('cap.ease', 21);
    const [eased] = [onShelf()].map(filed);
    put('cap.ease', 12.7);
    put('head.girth', 571);
    const measured = filed(onShelf());
    put('head.girth', 560);
    expect(await addToShelf([eased!, measured, eased!])).toEqual({ added: 2, known: 1, roomless: 0 });
    expect(
      now()
        .shelf.slice(-2)
        .map(({ wish }) => wish.spec.cap.name),
    ).toEqual(['Cornet’s cap', 'Cornet’s cap']);
  });

  it('carries the steps that are done, and one of before, which has none, is read all the same', async () => {
    const { now, put, tick, ticksNow, addToShelf, takeToTable, onShelf, filed } = await open();
    tick('cut', true);
    tick('crown', true);
    put('cap.name', 'Half sewn');
    const cap = filed(onShelf());
    put('cap.name', 'Mine');
    const { ticks: _, ...old } = {
      ...cap,
      wish: { ...cap.wish, spec: { ...cap.wish.spec, unit: 'in' as const } },
    };
    await addToShelf([cap]);
    await takeToTable(now().shelf.at(-1)!);
    expect(now().wish.cap.name).toBe('Half sewn');
    expect(ticksNow(now())).toEqual(['cut', 'crown']);
    put('cap.name', 'Another');
    await addToShelf([{ ...old, ticks: ['cut', 7, 'x'.repeat(90)] as readonly string[] }]);
    expect(now().ticks[now().shelf.at(-1)!.id]).toEqual(['cut']);
    put('cap.name', 'A third');
    await addToShelf([
      { wish: encodeSpec({ ...now().wish, cap: { ...now().wish.cap, name: 'Old' } }), good: old.good },
    ]);
    await takeToTable(now().shelf.at(-1)!);
    expect(now().wish.cap.name).toBe('Old');
    expect(ticksNow(now())).toEqual([]);
  });
});

describe('a full shelf', () => {
  it('takes no more from a file, nor does any shelf from an empty one, and that is no step of undo', async () => {
    const { now, copyCap, addToShelf, past } = await open();
    const steps = () => past.getState().pastStates.length;
    const { wish } = now();
    const others = ['Flugelhorn’s cap', 'Soprano’s cap'].map((name) => {
      const saved = encodeSpec({ ...wish, cap: { ...wish.cap, name } });
      return { wish: saved, good: saved };
    });
    expect(await addToShelf([])).toEqual({ added: 0, known: 0, roomless: 0 });
    expect(steps()).toBe(0);
    while (now().shelf.length < 100) copyCap();
    const before = steps();
    expect(await addToShelf(others)).toEqual({ added: 0, known: 0, roomless: 2 });
    expect(steps()).toBe(before);
    expect(now().shelf).toHaveLength(100);
  });

  it('loses no cap by a reload', async () => {
    const { now, copyCap } = await open();
    while (now().shelf.length < 104) copyCap();
    const before = now().shelf;
    expect((await reload()).now().shelf).toEqual(before);
  });
});
