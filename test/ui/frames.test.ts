import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { awaitInFrame, inFrame, inFrameAfterAll, notInFrame, paintInFrame } from '../../src/ui/frames.ts';

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
    inFrame(work('draft', 1, () => inFrame(work('draw', 1, () => inFrame(work('paint', 1))))));
    nextFrame();
    expect(done).toEqual(['draft', 'draw', 'paint']);
    expect(frames).toEqual([]);
  });

  it('is done in turns, a frame for each, where it takes long', () => {
    inFrame(work('draft', 10, () => inFrame(work('paint', 10))));
    nextFrame();
    expect(done).toEqual(['draft']);
    nextFrame();
    expect(done).toEqual(['draft', 'paint']);
    expect(frames).toEqual([]);
  });

  it('ends one picture before it begins the next', () => {
    const draft = (name: string) =>
      work(`draft ${name}`, 10, () =>
        inFrame(work(`draw ${name}`, 10, () => inFrame(work(`paint ${name}`, 10)))),
      );
    inFrameAfterAll(draft('one'));
    nextFrame();
    inFrameAfterAll(draft('two'));
    for (let i = 0; i < 5; i++) nextFrame();
    expect(done).toEqual(['draft one', 'draw one', 'paint one', 'draft two', 'draw two', 'paint two']);
  });

  it('paints two views of a cap in one frame, however long each takes to make ready', () => {
    inFrame(
      work('draft', 10, () => {
        inFrame(work('draw', 10, () => paintInFrame(work('paint the table', 10))));
        inFrame(work('put on', 10, () => paintInFrame(work('paint it worn', 10))));
      }),
    );
    const frameByFrame: string[][] = [];
    while (frames.length > 0) {
      const before = done.length;
      nextFrame();
      frameByFrame.push(done.slice(before));
    }
    expect(frameByFrame).toEqual([['draft'], ['draw'], ['put on'], ['paint the table', 'paint it worn']]);
  });

  it('paints the last wish before it begins a new one, and what is left when a painter fails', () => {
    inFrameAfterAll(work('a new wish', 1));
    paintInFrame(() => {
      throw new Error('a slip');
    });
    paintInFrame(work('paint', 1));
    expect(nextFrame).toThrow('a slip');
    nextFrame();
    expect(done).toEqual(['paint', 'a new wish']);
  });

  it('can be taken back', () => {
    const no = work('no', 1);
    for (const asked of [inFrame, paintInFrame, inFrameAfterAll]) {
      asked(no);
      notInFrame(no);
    }
    inFrame(work('yes', 1));
    nextFrame();
    expect(done).toEqual(['yes']);
  });

  it('is told by the page for as long as any is left', () => {
    inFrame(work('draft', 10, () => inFrame(work('paint', 10))));
    expect(busy).toBe(true);
    nextFrame();
    expect(busy).toBe(true);
    nextFrame();
    expect(busy).toBe(false);
    const no = work('no', 1);
    inFrame(no);
    expect(busy).toBe(true);
    notInFrame(no);
    nextFrame();
    expect(busy).toBe(false);
  });

  it('goes on after a piece of it has failed', () => {
    inFrame(() => {
      throw new Error('a slip');
    });
    inFrame(work('paint', 1));
    expect(nextFrame).toThrow('a slip');
    nextFrame();
    expect(done).toEqual(['paint']);
    expect(busy).toBe(false);
  });

  it('paints nothing and begins nothing new while something to be painted is made beside the page', () => {
    const here = awaitInFrame();
    paintInFrame(work('the worn view', 1));
    inFrameAfterAll(work('a new wish', 1));
    inFrame(work('what follows', 1));
    nextFrame();
    nextFrame();
    expect(done).toEqual(['what follows']);
    expect(busy).toBe(true);
    paintInFrame(work('the table', 1));
    here();
    nextFrame();
    expect(done).toEqual(['what follows', 'the worn view', 'the table', 'a new wish']);
    expect(busy).toBe(false);
  });

  it('asks for no frame while all it has to do is wait, and is told once only that the wait is over', () => {
    const [one, other] = [awaitInFrame(), awaitInFrame()];
    paintInFrame(work('paint', 1));
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
