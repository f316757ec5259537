import { beforeAll, describe, expect, test } from 'vitest';
import { flatTop } from '../../src/caps/flat-top/flat-top.ts';
import type { Style } from '../../src/caps/style.ts';
import { stepDrawing } from '../../src/drawing/steps/step-drawing.ts';
import { placedLines } from '../../src/drawing/text-block.ts';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { forAChild } from '../../src/guide/for-a-child.ts';
import { joinedIn } from '../../src/guide/joined.ts';
import { settingLines } from '../../src/guide/settings-words.ts';
import { termsOf } from '../../src/guide/terms.ts';
import { timeWords } from '../../src/guide/time.ts';
import { type BookletContent, booklet, withBooklet } from '../../src/print/booklet/booklet.ts';
import type { PaperSpec } from '../../src/print/paper.ts';
import { writePdf } from '../../src/print/pdf.ts';
import type { SheetSet } from '../../src/print/sheet.ts';
import { sheetsOf } from '../../src/print/sheets.ts';
import { textBox } from '../../src/print/text-box.ts';
import { formatLength, type Unit } from '../../src/units.ts';
import { say } from '../../src/words.ts';
import { type Written, written } from '../guide/caps.ts';
import { type ReadPdf, readPdf } from '../oracles/pdf-reader.ts';
import { fonts } from './fonts.ts';
import { adultCap, heading, plainPaper } from './samples.ts';

const cap: Written = written(flatTop as unknown as Style, {})!;

const contentIn = (unit: Unit): BookletContent => {
  const { guide, work, draft, style, values } = cap;
  const joined = joinedIn(guide.steps, draft.pattern.seams);
  const terms = termsOf(guide.steps);
  const form = style.form(values, { girth: 560, ratio: 0.8, arc: 315 });
  return {
    heading: {
      cap: 'Cornet’s cap',
      wearer: 'Cornet',
      date: '2026-11-25',
      unit,
      finishedGirth: draft.finishedGirth,
    },
    steps: guide.steps.map((step, i) => ({
      step,
      picture: stepDrawing(
        {
          ...step,
          press: step.settings.press ?? null,
          topstitched: step.settings.topstitch !== undefined,
          ...joined[i]!,
          form,
        },
        draft.pattern,
      ),
      settings: settingLines(work, step, unit),
      terms: terms[i]!,
    })),
    tools: guide.tools,
    notions: guide.notions,
    time: timeWords(guide.minutes),
    forAChild,
  };
};

const bookletIn = (unit: Unit): SheetSet => booklet(contentIn(unit));

const flatText = (text: string): string => text.normalize('NFKC').replace(/⁄/g, '/').replace(/\s+/g, '');

describe.each([
  ['cm', 210, 297],
  ['in', 215.9, 279.4],
] as const)('a booklet in %s', (unit, width, height) => {
  let pdf: ReadPdf;
  beforeAll(async () => {
    pdf = await readPdf(await writePdf(bookletIn(unit), fonts));
  }, 20_000);

  test('is printed on plain home paper', () => {
    expect(pdf.pages.length).toBeGreaterThan(2);
    for (const page of pdf.pages) {
      expect(page.width).toBeCloseTo(width, 1);
      expect(page.height).toBeCloseTo(height, 1);
    }
  });

  test('says every sentence of every step, in order, and the girth', () => {
    // Columns are read one after the other, as they were written.
    const all = flatText(pdf.pages.flatMap((page) => page.texts.map(({ text }) => text)).join(' '));
    let reached = 0;
    for (const { title, words, checks, cautions } of cap.guide.steps) {
      for (const sentence of [title, ...words.map((w) => say(w, unit))]) {
        const at = all.indexOf(flatText(sentence), reached);
        expect(at, sentence).toBeGreaterThanOrEqual(0);
        reached = at;
      }
      for (const sentence of [...checks, ...cautions]) expect(all).toContain(flatText(say(sentence, unit)));
    }
    expect(all).toContain(flatText(`Finished girth ${formatLength(cap.draft.finishedGirth, unit)}`));
  });

  test('says that it is a sewing booklet', () => {
    expect(pdf.info.Title).toBe('Cornet’s cap, sewing booklet');
    expect(pdf.info.Subject).toBe('Sewing booklet for Cornet. Drawn with Capwright.');
    expect(pdf.info.Keywords).toBe('sewing booklet');
  });

  test('keeps inside its margins and has a box to tick for each step', () => {
    for (const page of pdf.pages) {
      const points = page.paths.flatMap(({ points, painted }) => (painted === 'clip' ? [] : points));
      const texts = page.texts.flatMap(({ corners }) => corners);
      const least = [...points, ...texts].reduce(
        (room, { x, y }) => Math.min(room, x, y, width - x, height - y),
        99,
      );
      expect(least).toBeGreaterThan(10);
    }
    const boxes = pdf.pages.flatMap(({ paths }) =>
      paths.filter(({ points, painted }) => {
        const xs = points.map(({ x }) => x);
        const ys = points.map(({ y }) => y);
        const [w, h] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
        return painted === 'stroke' && Math.abs(w - 4) < 0.01 && Math.abs(h - 4) < 0.01;
      }),
    );
    expect(boxes).toHaveLength(cap.guide.steps.length);
  });
});

test.each(['Cornet’s cap', '帽'.repeat(120)])(
  'head and foot of a booklet keep inside its margins: %s',
  (called) => {
    const content = contentIn('cm');
    const { sheets } = booklet({ ...content, heading: { ...content.heading, cap: called } });
    for (const mark of sheets.flatMap(({ marks }) => marks)) {
      if (mark.kind !== 'text') continue;
      const { min, max } = textBox(mark);
      expect(min.x).toBeGreaterThan(12 - 1e-6);
      expect(max.x).toBeLessThan(210 - 12 + 1e-6);
      // Below its baseline a letter such as p hangs by 0.21 of its size: the descender of the typeface.
      const tails = placedLines(mark).map(({ at }) => at.y - 0.21 * mark.size);
      expect(Math.min(...tails)).toBeGreaterThan(12);
    }
  },
);

describe('a booklet after the pattern', () => {
  const content = contentIn('cm');
  const pattern = (paper: Partial<PaperSpec>): SheetSet =>
    sheetsOf(adultCap(), { ...plainPaper, ...paper }, heading);

  test('stays inside the margins of its paper, in as many columns as that holds', async () => {
    for (const paper of ['a4', 'letter', 'a3', 'tabloid', 'legal'] as const) {
      for (const orientation of ['portrait', 'landscape'] as const) {
        // A printer that draws small: all is drawn larger, and there is less room.
        const set = pattern({ paper, orientation, measuredAcross: 97, measuredDown: 98 });
        const whole = withBooklet(set, content);
        const added = whole.sheets.slice(set.sheets.length);
        expect(added.length).toBeGreaterThan(0);
        const { width, height } = set.page;
        const said = added
          .flatMap(({ marks }) => marks.flatMap((m) => (m.kind === 'text' ? m.lines : [])))
          .join(' ');
        for (const [i, { step }] of content.steps.entries())
          expect(said).toContain(`${i + 1}. ${step.title.split(' ')[0]}`);
        expect(said).toContain('For a child’s cap');
        for (const { marks } of added) {
          for (const mark of marks) {
            if (mark.kind !== 'line') continue;
            const { min, max } = boundsOf(mark.path);
            const right = 10 + (max.x - 10) * set.scale.across;
            const top = 10 + (max.y - 10) * set.scale.up;
            expect(Math.min(min.x, min.y, width - right, height - top)).toBeGreaterThan(9);
          }
        }
      }
    }
  });

  test('is left out on endless paper', () => {
    const set = pattern({ paper: 'roll-914' });
    expect(withBooklet(set, content)).toBe(set);
  });
});
