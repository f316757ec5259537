import { bench, describe } from 'vitest';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { drawPattern } from '../../src/drawing/draw-piece.ts';
import type { PaperName } from '../../src/print/paper.ts';
import { writePdf } from '../../src/print/pdf.ts';
import type { SheetSet } from '../../src/print/sheet.ts';
import { sheetsOf } from '../../src/print/sheets.ts';
import { derive } from '../design/derive.ts';
import { timing } from '../house/processor-time.ts';
import { fonts } from './fonts.ts';

let calls = 0;

/** The sheets of the demo cap, each call with another ease, so that nothing can be remembered from the call before. */
const nextSheets = (paper: PaperName): SheetSet => {
  const values = { ...defaultSpec.cap.values, ease: 6 + (calls++ % 9973) / 1000 };
  const { draft } = derive({ ...defaultSpec, cap: { ...defaultSpec.cap, values } });
  if (draft === null) throw new Error('the demo cap cannot be drafted');
  const facts = {
    cap: defaultSpec.cap.name,
    wearer: defaultSpec.head.name,
    finishedGirth: draft.finishedGirth,
    date: '2026-11-25',
  };
  const drawings = drawPattern(draft.pattern, { unit: 'cm', halves: false, dimensions: false, label: facts });
  return sheetsOf(drawings, { ...defaultSpec.paper, paper }, { ...facts, unit: 'cm' });
};

for (const [name, paper] of [
  ['A4', 'a4'],
  ['Letter', 'letter'],
] as const) {
  describe(`spec to drawn and placed sheets, ${name}`, () => {
    bench(
      'ours',
      () => {
        nextSheets(paper);
      },
      timing,
    );
  });
}

describe('writing the PDF, A4', () => {
  const set = nextSheets('a4');

  bench(
    'ours',
    async () => {
      await writePdf(set, fonts);
    },
    timing,
  );
});
