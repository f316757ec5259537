import { describe, expect, it } from 'vitest';
import { defaultSpec } from '../../../src/design/default-spec.ts';
import type { TextMark } from '../../../src/drawing/drawing.ts';
import { booklet } from '../../../src/print/booklet/booklet.ts';
import { writePdf } from '../../../src/print/pdf.ts';
import { fileName } from '../../../src/ui/hand.ts';
import { type SheetsOrder, sheetsFor } from '../../../src/ui/paper/sheets-for.ts';
import { readPdf } from '../../oracles/pdf-reader.ts';
import { fonts } from '../../print/fonts.ts';

const order: SheetsOrder = {
  spec: defaultSpec,
  paper: defaultSpec.paper,
  unit: 'cm',
  date: '2026-11-25',
  pictured: false,
};

const texts = (marks: readonly { readonly kind: string }[]): string =>
  marks.flatMap((mark) => (mark.kind === 'text' ? (mark as TextMark).lines : [])).join('\n');

describe('the sheets of a cap', () => {
  it('have a map first, and name the cap and the day on it', async () => {
    const set = await sheetsFor(order);
    expect(set?.sheets.map(({ name }) => name)[0]).toBe('Map');
    expect(set?.sheets.length).toBeLessThan(set?.naiveCount ?? 0);
    const map = texts(set?.sheets[0]?.marks ?? []);
    expect(map).toContain(defaultSpec.cap.name);
    expect(map).toContain('2026');
  });

  it.each(['', '   '])(
    'call a cap “Cap” whose name is %j: on every sheet, in the booklet and as a file',
    async (name) => {
      const spec = { ...defaultSpec, cap: { ...defaultSpec.cap, name } };
      const set = (await sheetsFor({ ...order, spec }))!;
      for (const { marks } of set.sheets) expect(texts(marks).split('\n')).toContain('Cap');
      const { info } = await readPdf(await writePdf(set, fonts));
      expect(info.Title).toBe('Cap, pattern for A4');
      const content = { steps: [], tools: [], notions: [], time: '', forAChild: [] };
      const sewing = booklet({ ...content, heading: set.heading });
      expect(texts(sewing.sheets[0]!.marks).split('\n')).toEqual(
        expect.arrayContaining(['Cap', 'Cap · Sewing 1 of 1']),
      );
      expect((await readPdf(await writePdf(sewing, fonts))).info.Title).toBe('Cap, sewing booklet');
      expect(fileName(name)).toBe('Cap');
    },
  );

  it('show the cap worn on the first sheet where that is wanted, and nowhere else', async () => {
    const [plain, pictured] = [await sheetsFor(order), await sheetsFor({ ...order, pictured: true })];
    const lines = (i: number, set: typeof plain): number | undefined => set?.sheets[i]?.marks.length;
    expect(lines(0, pictured)).toBeGreaterThan(lines(0, plain) ?? 0);
    expect(lines(1, pictured)).toBe(lines(1, plain));
  });

  it('are none where the paper leaves no room to print, or the head cannot be one', async () => {
    expect(await sheetsFor({ ...order, paper: { ...order.paper, margin: 120 } })).toBeNull();
    const spec = { ...defaultSpec, head: { ...defaultSpec.head, readings: [90] } };
    expect(await sheetsFor({ ...order, spec })).toBeNull();
  });
});
