import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openMaker } from '../../src/ui/maker.ts';

/** A worker that does what it is told when the test says so. */
class Bench extends EventTarget {
  readonly asked: string[] = [];
  ended = false;
  postMessage(order: string): void {
    this.asked.push(order);
  }
  terminate(): void {
    this.ended = true;
  }
  make(data: string): void {
    this.dispatchEvent(new MessageEvent('message', { data }));
  }
}

let frames: (() => void)[] = [];
const nextFrame = (): void => {
  for (const frame of frames.splice(0)) frame();
};

beforeEach(() => {
  frames = [];
  vi.stubGlobal('requestAnimationFrame', (frame: () => void) => frames.push(frame));
  vi.stubGlobal('document', { body: { toggleAttribute: () => {} } });
});
afterEach(() => {
  while (frames.length > 0) nextFrame();
  vi.unstubAllGlobals();
});

const opened = () => {
  const bench = new Bench();
  const shown: string[] = [];
  let wish: string | null = null;
  let failed = false;
  const maker = openMaker<string, string>(bench as unknown as Worker, {
    order: () => wish,
    show: (made, order) => void shown.push(`${order}: ${made}`),
    failed: () => {
      failed = true;
    },
  });
  const want = (next: string | null): void => {
    wish = next;
    maker.ask();
  };
  return { bench, shown, want, close: maker.close, hasFailed: () => failed };
};

describe('what is made beside the page', () => {
  it('is shown in a frame of the page, with the order it was made for', () => {
    const { bench, shown, want } = opened();
    want('a tip');
    bench.make('round');
    expect(shown).toEqual([]);
    nextFrame();
    expect(shown).toEqual(['a tip: round']);
  });

  it('is asked for once at a time: of what was wished meanwhile, the latest is made next', () => {
    const { bench, shown, want } = opened();
    want('one');
    want('two');
    want('three');
    expect(bench.asked).toEqual(['one']);
    bench.make('made');
    nextFrame();
    expect(bench.asked).toEqual(['one', 'three']);
    bench.make('made');
    nextFrame();
    expect(shown).toEqual(['one: made', 'three: made']);
    expect(bench.asked).toHaveLength(2);
  });

  it('is not asked for while there is nothing to make', () => {
    const { bench, want } = opened();
    want(null);
    expect(bench.asked).toEqual([]);
    want('one');
    expect(bench.asked).toEqual(['one']);
  });

  it('is shown no more once it is closed, and what cannot be made is told', () => {
    const { bench, shown, want, close, hasFailed } = opened();
    want('one');
    bench.make('made');
    close();
    nextFrame();
    expect(shown).toEqual([]);
    expect(bench.ended).toBe(true);
    bench.dispatchEvent(new Event('error'));
    expect(hasFailed()).toBe(true);
  });
});
