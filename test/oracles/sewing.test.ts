import { beforeAll, describe, expect, test } from 'vitest';
import { fetchStyles } from '../../src/caps/registry.ts';
import type { Style } from '../../src/caps/style.ts';
import { forAChild } from '../../src/guide/for-a-child.ts';
import { settingLines } from '../../src/guide/settings-words.ts';
import type { Step } from '../../src/guide/step.ts';
import { say } from '../../src/words.ts';
import { clothsOf, everyCap, type Written, written } from '../guide/caps.ts';

let styles: readonly Style[] = [];
let caps: readonly Written[] = [];
beforeAll(async () => {
  styles = await fetchStyles();
  caps = await everyCap();
}, 30_000);

const cap = (id: string, wishes = {}, cloths?: ReturnType<typeof clothsOf>): Written =>
  written(styles.find((style) => style.id === id)!, wishes, cloths)!;
const ids = ({ guide }: Written): readonly string[] => guide.steps.map(({ id }) => id);
const stepOf = (of: Written, id: string): Step => of.guide.steps.find((step) => step.id === id)!;
const said = (sentences: Step['words']): string => sentences.map((s) => say(s, 'cm')).join(' ');

describe('the order in which the trade sews (common practice)', () => {
  // Each list is read: what stands first is done before what stands after it.
  const orders: readonly (readonly [string, object, readonly (readonly string[])[]])[] = [
    [
      'flat-top',
      {},
      [
        // Visor; quarters; tip to side; lining; visor basted at the front; sewn in with the band's lower edge; strap and buttons.
        [
          'visorEdge',
          'stiffenVisor',
          'side',
          'crown',
          'liningSide',
          'liningCrown',
          'visorToBand',
          'lowerEdge',
          'strapEdge',
          'buttons',
        ],
        ['back', 'bandToSide', 'lowerEdge'],
      ],
    ],
    ['gored', {}, [['pair', 'half', 'over', 'liningPair', 'visorToBand', 'lowerEdge', 'topButton']]],
    ['ball', {}, [['frontToSide', 'over', 'tape', 'visorToBand', 'lowerEdge', 'turnIn', 'topButton']]],
    ['three-piece', {}, [['long', 'liningLong', 'visorToBand', 'lowerEdge', 'turnIn', 'tack']]],
    [
      'bucket',
      {},
      [
        ['side', 'crown', 'liningSide', 'liningCrown', 'lowerEdge', 'sweatbandEdge'],
        ['brim', 'brimEdge', 'brimRows', 'lowerEdge'],
        ['liningEdge', 'sweatbandEdge'],
      ],
    ],
    [
      'sun-hat',
      {},
      [
        ['pair', 'over', 'lowerEdge', 'sweatbandEdge'],
        ['brim', 'brimEdge', 'lowerEdge'],
      ],
    ],
    ['beret', {}, [['side', 'crown', 'stem', 'back', 'bandToCrown', 'liningCrown', 'lowerEdge']]],
    ['pillbox', {}, [['stiffener', 'side', 'crown', 'liningSide', 'liningEdge', 'lowerEdge', 'turnIn']]],
    ['skull', {}, [['pair', 'over', 'liningPair', 'liningEdge', 'lowerEdge', 'turnIn']]],
    ['scrub', {}, [['long', 'casingBack', 'lowerEdge', 'drawIn']]],
  ];
  test.each(orders)('of a %s', (id, wishes, lists) => {
    const order = ids(cap(id, wishes));
    for (const list of lists) {
      const at = list.map((one) => order.indexOf(one));
      expect(at, `${list}: ${order}`).not.toContain(-1);
      expect(at, `${list}: ${order}`).toEqual([...at].sort((a, b) => a - b));
    }
  });

  test('wash, cut, mark, hold curved edges and fuse come before any seam', () => {
    for (const { name, guide } of caps) {
      const first = guide.steps.findIndex(({ seams }) => seams.length > 0);
      const before = ['wash', 'cut', 'mark', 'staystitch', 'interlining', 'stiffener'];
      const late = guide.steps.slice(first).filter(({ id }) => before.includes(id));
      expect(late, name).toEqual([]);
    }
  });

  test('a seam is pressed before another crosses it: every ring is closed and pressed open first', () => {
    for (const { guide } of caps) {
      for (const { seams, settings, title } of guide.steps) {
        if (seams.length > 0 && /^(Close the .* to a ring|Join the|Sew .* in pairs)/.test(title))
          expect(settings.press, title).toBe('open');
      }
    }
  });
});

describe('stitches and distances', () => {
  test('are those of the usual charts: seams 10 to 12 to the inch, 1.5 mm to reinforce, 3 to 3.5 mm to topstitch, 4 to 5 mm to baste (common practice)', () => {
    for (const { guide, work } of caps) {
      const heavy = ['tweed', 'melton', 'felt'].includes(work.cloths.outer.kind);
      for (const { title, settings, id } of guide.steps) {
        const { stitch } = settings;
        if (stitch === undefined) continue;
        if (id === 'staystitch') expect(stitch).toBe(1.5);
        else if (/^Baste|Gather|Fold the pleats|slip in|Put the lining in|interlining/.test(title)) {
          expect(stitch, title).toBeGreaterThanOrEqual(4);
          expect(stitch, title).toBeLessThanOrEqual(5);
        } else if (/^Topstitch|^Turn the/.test(title)) {
          expect(stitch, title).toBeGreaterThanOrEqual(3);
          expect(stitch, title).toBeLessThanOrEqual(3.5);
        } else if (!(heavy && stitch === 3)) {
          const perInch = 25.4 / stitch;
          expect(perInch, title).toBeGreaterThanOrEqual(10);
          expect(perInch, title).toBeLessThanOrEqual(12);
        }
      }
    }
  });

  test('heavy wool takes 3 mm (common practice)', () => {
    expect(stepOf(cap('flat-top', {}, clothsOf({ outer: 'tweed' })), 'crown').settings.stitch).toBe(3);
    expect(stepOf(cap('flat-top', {}, clothsOf({ outer: 'poplin' })), 'crown').settings.stitch).toBe(2.5);
  });

  test('a seam is topstitched 1.5 to 2 mm away, a brim in rows 5 to 8 mm apart from 6 mm in (common practice)', () => {
    for (const { guide, work } of caps) {
      for (const { id, settings } of guide.steps) {
        if (settings.topstitch === undefined) continue;
        if (id === 'brimRows' || id === 'stiffenVisor') expect(settings.topstitch).toBe(6);
        else expect(settings.topstitch).toBeGreaterThanOrEqual(1.5);
        if (id !== 'brimRows' && id !== 'stiffenVisor') expect(settings.topstitch).toBeLessThanOrEqual(2);
      }
      const spacing = work.values.brimRowSpacing;
      if (typeof spacing === 'number') expect(spacing).toBeGreaterThanOrEqual(5);
      if (typeof spacing === 'number') expect(spacing).toBeLessThanOrEqual(8);
    }
  });

  test('curves are clipped every quarter to half inch, and enclosed seams trimmed to a quarter (Apparel: Design, Textiles and Construction, 2012)', () => {
    const clips = caps.flatMap(({ guide }) =>
      guide.steps.flatMap(({ words }) =>
        words
          .filter((sentence) => /Clip .* every/.test(say(sentence, 'cm')))
          .flatMap((sentence) =>
            sentence.flatMap((part) => (typeof part === 'object' && 'mm' in part ? [part.mm] : [])),
          ),
      ),
    );
    expect(clips.length).toBeGreaterThan(20);
    for (const mm of clips) {
      expect(mm).toBeGreaterThanOrEqual(25.4 / 4);
      expect(mm).toBeLessThanOrEqual(25.4 / 2);
    }
    const wide = stepOf(cap('flat-top', { allowance: 12 }), 'visorEdge');
    expect(wide.words.map((s) => say(s, 'in')).join(' ')).toContain('Trim the allowance to 1/4 in');
    expect(said(stepOf(cap('flat-top'), 'visorEdge').words)).not.toContain('Trim the allowance');
  });

  test('two rows of gathering lie a quarter inch apart (common practice)', () => {
    const step = stepOf(cap('flat-top', { crownGather: 0.4 }), 'bandToSideGathers');
    expect(step.words.map((s) => say(s, 'in')).join(' ')).toMatch(/two rows of long stitches, 1\/4 in apart/);
  });
});

describe('needles (common practice: the charts of needle makers agree)', () => {
  const chart: readonly (readonly [string, readonly string[], string])[] = [
    ['poplin', ['70/10', '80/12'], 'universal'],
    ['quilting-cotton', ['80/12'], 'universal'],
    ['linen', ['80/12'], 'universal'],
    ['fine-corduroy', ['90/14'], 'universal'],
    ['tweed', ['90/14'], 'universal'],
    ['denim', ['100/16'], 'jeans'],
    ['canvas', ['100/16'], 'jeans'],
  ];
  test.each(chart)('%s takes %s', (kind, sizes, point) => {
    const { needle } = stepOf(cap('flat-top', {}, clothsOf({ outer: kind })), 'side').settings;
    expect(sizes).toContain(needle?.size);
    expect(needle?.point).toBe(point);
  });

  test('lining takes 70/10 to 80/12, also in a cap of denim', () => {
    const { needle } = stepOf(
      cap('flat-top', {}, clothsOf({ outer: 'denim', lining: 'satin-lining' })),
      'liningSide',
    ).settings;
    expect(['70/10', '80/12']).toContain(needle?.size);
  });

  test('every number pairs the metric size, hundredths of a millimetre, with the old one', () => {
    // The pairs that stand on needle packets.
    const pairs = ['70/10', '80/12', '90/14', '100/16', '110/18'];
    const used = new Set(
      caps.flatMap(({ guide }) => guide.steps.flatMap(({ settings }) => settings.needle?.size ?? [])),
    );
    expect(used.size).toBeGreaterThan(1);
    for (const size of used) expect(pairs).toContain(size);
  });
});

describe('classes of the standards', () => {
  /** ASTM D6193 on seams, as summed up in trade handbooks: plain and enclosed SS, felled and topstitched LS, bound BS. */
  const seamOf = ({ id, seams, settings }: Step, pattern: Written['draft']['pattern']): string => {
    const kinds = seams.map((seam) => pattern.seams.find((one) => one.id === seam)!.kind);
    if (id === 'backOpening') return 'BS';
    const enclosed = kinds.some((kind) => ['visorEdge', 'brimEdge', 'strapEdge'].includes(kind));
    return settings.topstitch !== undefined && !enclosed ? 'LS' : 'SS';
  };
  /** ISO 4915: 301 is the lockstitch, 200 the class of hand stitches. ISO 4916: superimposed 1, lapped 2, bound 3 (from memory). */
  const published = {
    301: 'lockstitch 301 (ISO 4915)',
    200: 'class 200 (ISO 4915)',
    SS: 'class 1 (ISO 4916)',
    LS: 'class 2 (ISO 4916)',
    BS: 'class 3 (ISO 4916)',
  };

  test('are a lockstitch for the machine, a hand stitch for the hand, and the class of every seam', () => {
    const wrong = new Set<string>();
    for (const { name, guide, draft, work } of caps) {
      for (const step of guide.steps) {
        const { trade, stitch } = step.settings;
        const said = settingLines(work, step, 'cm').find((line) => line.name === 'In the trade')?.value ?? '';
        // What the machine sews has a stitch length; buttonholes are set by eye.
        if (stitch === undefined && trade?.stitch === '301' && step.id !== 'buttons')
          wrong.add(`${name}, ${step.id}: no length`);
        if (stitch !== undefined && trade?.stitch !== '301')
          wrong.add(`${name}, ${step.id}: no machine stitch`);
        if (trade && !said.includes(published[trade.stitch])) wrong.add(`${name}, ${step.id}: ${said}`);
        if (step.seams.length === 0) continue;
        const seam = seamOf(step, draft.pattern) as 'SS' | 'LS' | 'BS';
        if (trade?.seam !== seam || !said.includes(published[seam]))
          wrong.add(`${name}, ${step.id}: ${said}, ${seam}`);
      }
    }
    expect([...wrong]).toEqual([]);
  });
});

describe('cautions', () => {
  test('near a stiffener: stitch beside, not through, and turn the wheel by hand (common practice)', () => {
    for (const { guide, work } of caps) {
      const visored = work.pattern.pieces.some(({ id }) => id === 'visor');
      const texts = guide.steps.map(({ cautions }) => said(cautions));
      if (!visored) continue;
      const basting = guide.steps.find(({ id }) => id === 'visorToBand')!;
      expect(said(basting.cautions)).toMatch(/beside the stiffener, never through it/);
      expect(said(basting.cautions)).toMatch(/wheel by hand/);
      expect(texts.join()).toMatch(/iron/);
    }
  });

  test('irons, blades, eyelets, nickel and elastic have theirs where they are used', () => {
    const ball = cap('ball', { backFastening: 'elastic' });
    expect(said(stepOf(ball, 'cut').cautions)).toMatch(/rotary cutter/);
    expect(said(stepOf(ball, 'eyelets').cautions)).toMatch(/eyes.*nickel/);
    expect(said(stepOf(ball, 'elasticCasing').cautions)).toMatch(/latex/);
    expect(said(stepOf(cap('flat-top'), 'wash').cautions)).toMatch(/steam scalds/);
  });

  test('a stiffened crown is not steamed, and buckram is not washed: it loses its shape when wet (common practice)', () => {
    const cloths = clothsOf({ stiffener: 'buckram' });
    const last = (of: Written) => said(stepOf(of, 'look').words);
    expect(last(cap('pillbox', {}, cloths))).toMatch(/no steam.*Buckram loses its shape when it gets wet/);
    expect(last(cap('pillbox', { crownBody: 'none' }))).toMatch(
      /^Pull out all basting.*Steam the crown.*Wash the cap/,
    );
    expect(said(stepOf(cap('pillbox'), 'crown').cautions)).toMatch(/iron off the stiffener/);
  });

  test('metal eyelets, studs and buckles are kept off children under three, as buttons are', () => {
    expect(said(stepOf(cap('ball'), 'eyelets').cautions)).toMatch(/under three.*choke/);
    expect(said(stepOf(cap('ball'), 'backStrap').cautions)).toMatch(/under three.*choke/);
  });

  test('buttons say under three years, cords are kept off children', () => {
    expect(said(stepOf(cap('flat-top'), 'buttons').cautions)).toMatch(/under three/);
    expect(said(stepOf(cap('gored'), 'topButton').cautions)).toMatch(/under three/);
  });

  test('the note on children says what 16 CFR 1501 and EN 14682 leave out, and that local rules come first', () => {
    const note = said(forAChild);
    // 16 CFR 1501.3(d): children's clothing and buttons are exempt; 1501.4: fabric, yarn, elastic are not counted.
    expect(note).toMatch(/16 CFR 1501.*leaves out children’s clothes and their buttons/s);
    expect(note).toMatch(/does not count cloth, yarn or elastic/);
    // EN 14682, scope: to 14 years; hats and bonnets are outside it.
    expect(note).toMatch(/EN 14682.*14 years.*leaves out hats and bonnets/s);
    // A national authority's summary: no cords at head or neck under seven, no free ends there to fourteen.
    expect(note).toMatch(
      /no cords at the head or neck under seven years, and none with free ends there up to 14/,
    );
    expect(note).toMatch(/choke.*strangle/s);
    expect(note).toMatch(/No cords and no ties.*comes apart when it is pulled/s);
    expect(note).toMatch(/Rules where you live.*come first/);
  });
});
