import { beforeEach, describe, expect, it, vi } from 'vitest';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { keepIn, openStudio } from './opened.ts';

let kept: Map<string, string>;

beforeEach(() => {
  vi.useFakeTimers();
  kept = new Map();
  keepIn(kept);
});

/** Long enough for anything that waits for a rest, ms. */
const rest = () => vi.advanceTimersByTime(1000);

const reload = () => {
  rest();
  return openStudio();
};

describe('a first visit', () => {
  it('finds the Cornet head of 21 1/2 in with a finished cap, in centimetres', async () => {
    const { now } = await openStudio();
    expect(now().wish).toEqual(defaultSpec);
    expect(now().good).toEqual(defaultSpec);
    expect(now().wish.head).toMatchObject({ name: 'Cornet', readings: [546.1] });
    expect(now().wish.unit).toBe('cm');
    expect(now().notice).toBeNull();
  });
});

describe('a reload', () => {
  it('finds everything as it was left, texts as typed included', async () => {
    const before = await openStudio();
    before.type('head.girth', '22,8 in', 579.12);
    before.type('cap.ease', 'abou', undefined);
    before.put('cap.strap', false);
    before.putUnit('in');
    before.goTo('paper');
    before.putTheme('dark');
    const after = await reload();
    expect(after.now().wish).toEqual(before.now().wish);
    expect(after.now().typed).toEqual(before.now().typed);
    expect(after.now()).toMatchObject({ stage: 'paper', theme: 'dark', notice: null });
  });

  it('finds a wish that cannot be sewn, and under it the last cap that can', async () => {
    const before = await openStudio();
    before.put('cap.sideBandHeight', 30);
    before.put('cap.crownFullness', 300);
    const after = await reload();
    expect(after.now().wish.cap.values.crownFullness).toBe(300);
    expect(after.now().good).toEqual(before.now().good);
    expect(after.now().good).not.toEqual(after.now().wish);
  });

  it('has nothing to take back: what was there is where one begins', async () => {
    const before = await openStudio();
    before.put('cap.ease', 20);
    const after = await reload();
    expect(after.past.getState().pastStates).toHaveLength(0);
    after.undo();
    expect(after.now().wish.cap.values.ease).toBe(20);
  });
});

describe('keeping', () => {
  it('waits for a rest, so that a drag is one writing', async () => {
    const studio = await openStudio();
    const write = vi.spyOn(localStorage, 'setItem');
    for (let ease = 1; ease <= 30; ease++) {
      studio.change('cap.ease', ease);
      vi.advanceTimersByTime(16);
    }
    expect(write).not.toHaveBeenCalled();
    studio.settle();
    rest();
    expect(write).toHaveBeenCalledTimes(1);
  });

  /** A studio, and how another tab keeps something beside it. */
  const besideAnother = async () => {
    const told: ((event: object) => void)[] = [];
    vi.stubGlobal(
      'addEventListener',
      (kind: string, hear: (event: object) => void) => kind === 'storage' && told.push(hear),
    );
    const studio = await openStudio();
    const { keepHere } = await import('../../src/state/studio.ts');
    const keptElsewhere = (key: string, text: string) => {
      kept.set(key, text);
      for (const hear of told) hear({ key });
    };
    return { ...studio, keepHere, keptElsewhere };
  };

  it('leaves alone what another tab kept, whatever is done here, until it is asked to keep this', async () => {
    const { now, keptElsewhere, put, goTo, keepHere } = await besideAnother();
    keptElsewhere('of another page', 'something');
    expect(now().elsewhere).toBe(false);
    put('cap.ease', 20);
    keptElsewhere('capwright', 'what another tab kept');
    expect(now().elsewhere).toBe(true);
    goTo('paper');
    rest();
    put('cap.ease', 22);
    rest();
    expect(kept.get('capwright')).toBe('what another tab kept');
    keepHere();
    expect(now().elsewhere).toBe(false);
    expect(kept.get('capwright')).toContain('"ease":22');
    put('cap.ease', 24);
    rest();
    expect(kept.get('capwright')).toContain('"ease":24');
  });

  it('of this tab takes the place of what another kept though nothing was changed here', async () => {
    const { keptElsewhere, keepHere, put } = await besideAnother();
    put('cap.ease', 20);
    rest();
    keptElsewhere('capwright', 'what another tab kept');
    keepHere();
    expect(kept.get('capwright')).toContain('"ease":20');
  });

  it('is what another tab kept once the page is opened anew', async () => {
    const { keptElsewhere, put } = await besideAnother();
    put('cap.ease', 20);
    rest();
    keptElsewhere('capwright', kept.get('capwright')!.replaceAll('"ease":20', '"ease":30'));
    put('cap.ease', 22);
    const { now } = await reload();
    expect(now().wish.cap.values.ease).toBe(30);
    expect(now().elsewhere).toBe(false);
  });

  it('of a cap whose style cannot be fetched loses nothing: it waits on the shelf', async () => {
    const before = await openStudio();
    await before.putStyle('gored');
    before.put('cap.ease', 20);
    rest();
    const { capId, wish, shelf } = before.now();
    const text = kept.get('capwright');
    vi.doMock('../../src/caps/gored/gored.ts', () => {
      throw new Error('no connection');
    });
    const { now, putTheme } = await openStudio().finally(() => vi.doUnmock('../../src/caps/gored/gored.ts'));
    expect(now().wish).toEqual(defaultSpec);
    expect(now().notice).toMatch(/could not be fetched/);
    expect(now().shelf.slice(0, -1)).toEqual(shelf);
    expect(now().shelf.at(-1)).toMatchObject({ id: capId, wish: { spec: wish } });
    // Until something is changed, the next visit finds all as it was left.
    rest();
    expect(kept.get('capwright')).toBe(text);
    putTheme('dark');
    expect((await reload()).now().shelf.at(-1)).toMatchObject({ id: capId, wish: { spec: wish } });
  });

  it.each([
    ['no JSON', '{"state":{"wish":{"ve'],
    ['an empty text', ''],
    ['another program’s data', '[1,2,3]'],
    ['nothing in it', '{"state":null,"version":1}'],
    ['a spec of the wrong kind', '{"state":{"wish":{"version":1,"spec":7}},"version":1}'],
  ])('that was damaged (%s) gives the demo cap and a calm word', async (_, text) => {
    kept.set('capwright', text);
    const { now } = await openStudio();
    expect(now().wish).toEqual(defaultSpec);
    expect(now().good).toEqual(defaultSpec);
    expect(now().notice).toMatch(/could not be read/);
  });

  it('with one damaged choice loses that choice alone, and says so', async () => {
    const before = await openStudio();
    before.put('head.name', 'Euphonium');
    rest();
    kept.set('capwright', kept.get('capwright')!.replaceAll('"ease":12.7', '"ease":"wide"'));
    const { now } = await openStudio();
    expect(now().wish.head.name).toBe('Euphonium');
    expect(now().wish.cap.values.ease).toBe(defaultSpec.cap.values.ease);
    expect(now().notice).toMatch(/look them over/);
  });

  it('by a browser that refuses is said once, and work goes on', async () => {
    vi.stubGlobal('localStorage', {
      getItem: () => {
        throw new Error('refused');
      },
      setItem: () => {
        throw new Error('refused');
      },
    });
    const studio = await openStudio();
    expect(studio.now().notice).toBeNull();
    studio.put('cap.ease', 20);
    rest();
    expect(studio.now().notice).toMatch(/does not keep/);
    studio.dismissNotice();
    studio.put('cap.ease', 22);
    rest();
    expect(studio.now().notice).toBeNull();
    expect(Number(studio.now().wish.cap.values.ease)).toBe(22);
  });

  it('by a browser that was full and has room again takes the word back', async () => {
    const studio = await openStudio();
    const write = vi.spyOn(localStorage, 'setItem').mockImplementation(() => {
      throw new Error('full');
    });
    studio.put('cap.ease', 20);
    rest();
    expect(studio.now().notice).toMatch(/does not keep/);
    write.mockRestore();
    studio.putTheme('dark');
    rest();
    expect(studio.now().notice).toBeNull();
    expect(kept.get('capwright')).toContain('"ease":20');
  });
});
