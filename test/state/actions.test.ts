import { beforeEach, describe, expect, it } from 'vitest';
import { atRestIn, isDragged } from '../../src/state/dragged.ts';
import { keepIn, openStudio } from './opened.ts';

let studio: Awaited<ReturnType<typeof openStudio>>;
const ease = () => Number(studio.now().wish.cap.values.ease);
const steps = () => studio.past.getState().pastStates.length;

beforeEach(async () => {
  keepIn(new Map());
  studio = await openStudio();
});

describe('a measure moved by its slider', () => {
  it('is one step of undo, however many places it passed', () => {
    const before = studio.now().wish;
    for (const to of [13, 14, 15, 18, 22]) studio.change('cap.ease', to);
    studio.settle();
    expect(steps()).toBe(1);
    studio.undo();
    expect(studio.now().wish).toBe(before);
    studio.redo();
    expect(ease()).toBe(22);
  });

  it('keeps what lay on the table before as a ghost until it rests', () => {
    const before = studio.now().good;
    studio.change('cap.ease', 14);
    studio.change('cap.ease', 15);
    expect(studio.now().moving).toEqual({ field: 'cap.ease', wished: before, from: before });
    studio.settle();
    expect(studio.now().moving).toBeNull();
  });

  it('has the value that it had before for as long as it is dragged, and no longer', () => {
    const was = ease();
    const seen = () => [isDragged(studio.now(), 'cap.ease'), atRestIn(studio.now(), 'cap.ease')];
    studio.change('cap.ease', 14);
    studio.change('cap.ease', 15);
    expect(seen()).toEqual([true, was]);
    expect(atRestIn(studio.now(), 'cap.bandHeight')).toBe(studio.now().wish.cap.values.bandHeight);
    studio.settle();
    expect(seen()).toEqual([false, 15]);
  });

  it('is not dragged by what is typed, which is shown as it is typed', () => {
    studio.type('cap.ease', '16 mm', 16);
    expect(studio.now().moving?.field).toBe('cap.ease');
    expect([isDragged(studio.now(), 'cap.ease'), atRestIn(studio.now(), 'cap.ease')]).toEqual([false, 16]);
    // A text that was typed before is none once the slider has moved on.
    studio.change('cap.ease', 17);
    expect(isDragged(studio.now(), 'cap.ease')).toBe(true);
  });

  it('ends where another measure is moved', () => {
    studio.change('cap.ease', 14);
    studio.change('cap.bandHeight', 40);
    studio.settle();
    expect(steps()).toBe(2);
    studio.undo();
    expect(ease()).toBe(14);
  });

  it('is no step where it comes to nothing', () => {
    studio.put('cap.ease', ease());
    expect(steps()).toBe(0);
    expect(studio.now().moving).toBeNull();
  });

  it('can be taken back in the middle of the move', () => {
    const was = ease();
    studio.change('cap.ease', 14);
    studio.change('cap.ease', 19);
    studio.undo();
    expect(ease()).toBe(was);
    studio.change('cap.ease', 20);
    studio.settle();
    expect(steps()).toBe(1);
  });
});

describe('a wish that cannot be sewn', () => {
  // Common practice: a ring of cloth 30 mm wide reaches out by 2π × 30 = 188 mm of girth at the very most.
  it('leaves the last cap that can on the table, and comes back with undo and redo as it was', () => {
    studio.put('cap.sideBandHeight', 30);
    const last = studio.now().good;
    studio.put('cap.crownFullness', 300);
    expect(studio.now().wish.cap.values.crownFullness).toBe(300);
    expect(studio.now().good).toBe(last);
    studio.undo();
    expect(studio.now().wish).toBe(last);
    studio.redo();
    expect(studio.now().wish.cap.values.crownFullness).toBe(300);
    expect(studio.now().good).toBe(last);
  });

  it('becomes the cap on the table as soon as it can be sewn', () => {
    studio.put('cap.sideBandHeight', 30);
    studio.put('cap.crownFullness', 300);
    studio.put('cap.sideBandHeight', 60);
    expect(studio.now().good).toBe(studio.now().wish);
  });
});

describe('a change of style', () => {
  // Common practice: a visor is sewn to no more than half of the way round.
  it('makes of what could not be sewn what can, for the head on the table', async () => {
    const { canBeSewn } = await import('../../src/state/derived.ts');
    studio.put('cap.visorLength', 300);
    expect(canBeSewn(studio.now().wish)).toBe(false);
    await studio.putStyle('gored');
    const { wish, good } = studio.now();
    expect(wish.cap.style).toBe('gored');
    expect(canBeSewn(wish)).toBe(true);
    expect(good).toBe(wish);
    const stretch = Number(wish.cap.values.visorLength);
    expect(stretch).toBeLessThan((546.1 + ease()) / 2 + 1);
    expect(stretch).toBeGreaterThan(190);
  });
});

describe('what is typed', () => {
  it('is kept word for word beside its value, letter by letter in one step', () => {
    studio.type('head.girth', '2', undefined);
    studio.type('head.girth', '22', 558.8);
    studio.type('head.girth', '22 1/2 in', 571.5);
    studio.settle();
    expect(studio.now().typed['head.girth']).toEqual({
      text: '22 1/2 in',
      value: 571.5,
      unit: 'cm',
      understood: true,
    });
    expect(studio.now().wish.head.readings).toEqual([571.5]);
    expect(steps()).toBe(1);
  });

  it('leaves the cap alone while it cannot be read', () => {
    const before = studio.now().wish;
    studio.type('cap.ease', 'loose', undefined);
    expect(studio.now().wish).toBe(before);
    expect(studio.now().typed['cap.ease']).toMatchObject({ text: 'loose', understood: false });
  });
});

describe('the switch of units', () => {
  it('takes home paper along, from A4 to Letter and back', () => {
    studio.putUnit('in');
    expect(studio.now().wish.paper.paper).toBe('letter');
    studio.putUnit('cm');
    expect(studio.now().wish.paper.paper).toBe('a4');
  });
  it('leaves other papers, and a paper chosen afterwards, alone', () => {
    studio.put('paper.paper', 'a3');
    studio.putUnit('in');
    expect(studio.now().wish.paper.paper).toBe('a3');
    studio.put('paper.paper', 'a4');
    expect(studio.now().wish.paper.paper).toBe('a4');
  });
  it('changes no measure of the cap or of the head', () => {
    const { cap, head } = studio.now().wish;
    studio.putUnit('in');
    expect(studio.now().wish.cap).toBe(cap);
    expect(studio.now().wish.head).toBe(head);
  });
});

it('a hat size takes the place of all readings', () => {
  studio.put('head.girth.2', 550);
  studio.putGirth(580);
  expect(studio.now().wish.head.readings).toEqual([580]);
  studio.undo();
  expect(studio.now().wish.head.readings).toHaveLength(2);
});
