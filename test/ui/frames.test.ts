import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  awaitInFrame,
  inFrameAfterAll,
  inSpareFrame,
  notInFrame,
  paintInFrame,
} from '../../src/ui/frames.ts';

/** Less and more than a frame has for work, ms. */
const [LITTLE, LONG] = [0.05, 10];

/** A screen that draws a frame when it is told to, with a clock of its own. */
let frames: (() => void)[] = [];
let clock = 0;
let busy = false;
const page = { toggleAttribute: (_: 'data-busy', is: boolean) => (busy = is) };
const nextFrame = (): void => {
  for (const frame of frames.splice(0)) frame();
};

beforeEach(() => {
  frames = [];
  vi.stubGlobal('requestAnimationFrame', (frame: () => void) => frames.push(frame));
  vi.stubGlobal('document', { body: page });
  vi.spyOn(performance, 'now').mockImplementation(() => clock);
});
afterEach(() => {
  while (frames.length > 0) nextFrame();
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

describe('work in frames', () => {
  const done: string[] = [];
  const work = (name: string, ms: number, then?: () => void) => (): void => {
    clock += ms;
    done.push(name);
    then?.();
  };
  beforeEach(() => {
    done.length = 0;
  });

  it('is all done in one frame where it takes little time', () => {
    paintInFrame(work('paint', LITTLE));
    inFrameAfterAll(work('a new wish', LITTLE, () => paintInFrame(work('paint it', LITTLE))));
    nextFrame();
    expect(done).toEqual(['paint', 'a new wish', 'paint it']);
    expect(frames).toEqual([]);
  });

  it('is done in turns, a frame for each, where it takes long', () => {
    paintInFrame(work('paint', LONG));
    inFrameAfterAll(work('a new wish', LONG));
    nextFrame();
    expect(done).toEqual(['paint']);
    nextFrame();
    expect(done).toEqual(['paint', 'a new wish']);
    expect(frames).toEqual([]);
  });

  it('paints two views of a cap in one frame, however long each takes to be made', () => {
    const [table, worn] = [awaitInFrame(), awaitInFrame()];
    paintInFrame(work('paint the table', LONG));
    table();
    nextFrame();
    expect(done).toEqual([]);
    paintInFrame(work('paint it worn', LONG));
    worn();
    nextFrame();
    expect(done).toEqual(['paint the table', 'paint it worn']);
  });

  it('paints the last wish before it begins a new one, and what is left when a painter fails', () => {
    inFrameAfterAll(work('a new wish', LITTLE));
    paintInFrame(() => {
      throw new Error('a slip');
    });
    paintInFrame(work('paint', LITTLE));
    expect(nextFrame).toThrow('a slip');
    nextFrame();
    expect(done).toEqual(['paint', 'a new wish']);
  });

  it('can be taken back', () => {
    const no = work('no', LITTLE);
    for (const asked of [paintInFrame, inFrameAfterAll, inSpareFrame]) {
      asked(no);
      notInFrame(no);
    }
    paintInFrame(work('yes', LITTLE));
    nextFrame();
    expect(done).toEqual(['yes']);
  });

  it('is told by the page for as long as any is left', () => {
    paintInFrame(work('paint', LONG));
    inFrameAfterAll(work('a new wish', LONG));
    expect(busy).toBe(true);
    nextFrame();
    expect(busy).toBe(true);
    nextFrame();
    expect(busy).toBe(false);
    const no = work('no', LITTLE);
    paintInFrame(no);
    expect(busy).toBe(true);
    notInFrame(no);
    nextFrame();
    expect(busy).toBe(false);
  });

  it('goes on after a piece of it has failed', () => {
    paintInFrame(() => {
      throw new Error('a slip');
    });
    inFrameAfterAll(work('a new wish', LITTLE));
    expect(nextFrame).toThrow('a slip');
    nextFrame();
    expect(done).toEqual(['a new wish']);
    expect(busy).toBe(false);
  });

  it('paints nothing and begins nothing new while something to be painted is made beside the page', () => {
    const here = awaitInFrame();
    paintInFrame(work('the worn view', LITTLE));
    inFrameAfterAll(work('a new wish', LITTLE));
    nextFrame();
    nextFrame();
    expect(done).toEqual([]);
    expect(busy).toBe(true);
    paintInFrame(work('the table', LITTLE));
    here();
    nextFrame();
    expect(done).toEqual(['the worn view', 'the table', 'a new wish']);
    expect(busy).toBe(false);
  });

  it('leaves what can wait to a frame in which nothing else is done', () => {
    const tell = work('tell', LITTLE);
    const here = awaitInFrame();
    paintInFrame(work('paint', LITTLE));
    here();
    inSpareFrame(tell);
    inSpareFrame(tell);
    nextFrame();
    expect(done).toEqual(['paint']);
    expect(busy).toBe(true);
    // Another picture is being made already.
    const next = awaitInFrame();
    nextFrame();
    expect(done).toEqual(['paint', 'tell']);
    next();
    nextFrame();
    expect(done).toEqual(['paint', 'tell']);
    expect(busy).toBe(false);
  });

  it('does not tell again what was told less than a tenth of a second ago', () => {
    clock += 1000;
    const tell = work('tell', 0);
    inSpareFrame(tell);
    nextFrame();
    inSpareFrame(tell);
    for (const [ms, times] of [
      [60, 1],
      [30, 1],
      [20, 2],
    ] as const) {
      clock += ms;
      nextFrame();
      expect(done).toHaveLength(times);
    }
    expect(frames).toEqual([]);
  });

  it('does what has waited long in a frame with other work too, before it', () => {
    clock += 1000;
    inSpareFrame(work('tell', LITTLE));
    for (let i = 0; i < 4; i++) {
      paintInFrame(work('paint', 60));
      nextFrame();
    }
    expect(done).toEqual(['paint', 'paint', 'paint', 'paint']);
    paintInFrame(work('paint', LITTLE));
    nextFrame();
    expect(done.slice(4)).toEqual(['tell', 'paint']);
  });

  it('asks for no frame while all it has to do is wait, and is told once only that the wait is over', () => {
    const [one, other] = [awaitInFrame(), awaitInFrame()];
    paintInFrame(work('paint', LITTLE));
    nextFrame();
    expect(frames).toEqual([]);
    one();
    one();
    nextFrame();
    expect(done).toEqual([]);
    other();
    nextFrame();
    expect(done).toEqual(['paint']);
  });
});
