import { beforeAll, describe, expect, it } from 'vitest';
import type { TextMark } from '../../src/drawing/drawing.ts';
import { point } from '../../src/geometry/point.ts';
import { documentFacts } from '../../src/print/pdf/facts.ts';
import { setFractions } from '../../src/print/pdf/fractions.ts';
import { kerningOf } from '../../src/print/pdf/kerning.ts';
import { writePdf } from '../../src/print/pdf.ts';
import { plainSet } from '../../src/print/plain-set.ts';
import { sheetsOf } from '../../src/print/sheets.ts';
import { readPdf } from '../oracles/pdf-reader.ts';
import { fonts } from './fonts.ts';
import { adultCap, drawn, heading, plainPaper, rectangle } from './samples.ts';

describe('the pattern as a PDF', () => {
  const adult = sheetsOf(adultCap(), plainPaper, heading);
  let written: Uint8Array;
  beforeAll(async () => {
    written = await writePdf(adult, fonts);
  });

  it('asks the viewer not to scale, says its title and language, and dates itself by the heading', async () => {
    const { info, viewerPreferences } = await readPdf(written);
    expect(viewerPreferences).toMatchObject({ PrintScaling: 'None', DisplayDocTitle: true });
    expect(info.Title).toBe('Cornet’s cap, pattern for A4');
    expect(info.Subject).toMatch(/Cornet/);
    expect(info.Author).toBe('Capwright');
    expect(info.Creator).toBe('Capwright');
    expect(info.Language).toBe('en');
    expect(info.CreationDate).toMatch(/^D:20261125/);
  });

  it('is no pattern where it is a cutting lay or a booklet on sheets of its own', () => {
    const { title, subject, keywords } = documentFacts(plainSet('cutting lay', heading, () => []));
    expect(title).toBe('Cornet’s cap, cutting lay');
    expect(subject).toBe('Cutting lay for Cornet. Drawn with Capwright.');
    expect(keywords).toBe('cutting lay');
    expect(documentFacts(adult).subject).toBe(
      'Sewing pattern for Cornet, true to scale. Drawn with Capwright.',
    );
  });

  it('is the same to the byte for the same pattern, another for another, and under 300 kB for an adult cap', async () => {
    const again = await writePdf(sheetsOf(adultCap(), plainPaper, heading), fonts);
    expect(Buffer.compare(Buffer.from(written), Buffer.from(again))).toBe(0);
    expect(written.length).toBeLessThan(300_000);
    const small = [drawn('a', 'A', rectangle(100, 80))];
    const others = ['One', 'Two'].map((cap) => sheetsOf(small, plainPaper, { ...heading, cap }));
    const [one, two] = [await writePdf(others[0]!, fonts), await writePdf(others[1]!, fonts)];
    expect(idOf(one)).not.toBe(idOf(two));
  });

  it('has page boxes: nothing to trim, and all art inside the margins', async () => {
    const text = Buffer.from(written).toString('latin1');
    const box = (name: string) =>
      /\[([^\]]+)\]/
        .exec(text.slice(text.indexOf(`/${name} `)))![1]!
        .split(' ')
        .map(Number);
    const a4 = [0, 0, (210 / 25.4) * 72, (297 / 25.4) * 72];
    for (const name of ['MediaBox', 'CropBox', 'TrimBox'])
      for (const [i, n] of box(name).entries()) expect(Math.abs(n - a4[i]!)).toBeLessThan(0.001);
    const art = [10, 10, 200, 287].map((mm) => (mm / 25.4) * 72);
    for (const [i, n] of box('ArtBox').entries()) expect(Math.abs(n - art[i]!)).toBeLessThan(0.001);
  });

  it('tells after each sheet how far it is', async () => {
    const set = sheetsOf([drawn('a', 'A', rectangle(300, 400))], plainPaper, heading);
    const told: number[] = [];
    await writePdf(set, fonts, (n) => told.push(n));
    expect(told).toEqual(set.sheets.map((s) => s.number));
  });

  it('prints names in Latin, Greek, Cyrillic and Vietnamese letters, accents written apart or together', async () => {
    const cap = 'Žofiin čepec · Καπέλο · Кепка · Nguyễn'.normalize('NFD');
    const set = sheetsOf([drawn('a', 'A', rectangle(100, 80))], plainPaper, { ...heading, cap });
    const { pages } = await readPdf(await writePdf(set, fonts));
    const words = pages[0]!.texts.map((t) => t.text).join('');
    expect(words.replaceAll(' ', '')).toContain(cap.normalize('NFC').replaceAll(' ', ''));
  });

  it.each(['', '   '])('writes a piece whose label is %j as one without a label', async (empty) => {
    const label = {
      kind: 'text',
      role: 'label',
      at: point(50, 40),
      size: 3.5,
      align: 'middle',
      angle: 0,
    } as const;
    const { marks, ...piece } = drawn('a', 'A', rectangle(100, 80));
    const words = async (labels: readonly TextMark[]) => {
      const set = sheetsOf([{ ...piece, marks: [...marks.slice(0, 2), ...labels] }], plainPaper, heading);
      const { texts } = (await readPdf(await writePdf(set, fonts))).pages.at(-1)!;
      return texts.map(({ text }) => text).filter((text) => text.trim() !== '');
    };
    expect(await words([{ ...label, lines: [empty] }])).toEqual(await words([]));
  });

  it('does not fail on letters it cannot print where there is no device to draw them', async () => {
    const set = sheetsOf([drawn('a', 'A', rectangle(100, 80))], plainPaper, {
      ...heading,
      wearer: '帽子 ✂ כובע',
    });
    expect((await readPdf(await writePdf(set, fonts))).pages).toHaveLength(2);
  });

  it('refuses what no page can hold', async () => {
    const problems = [{ field: 'paper.paper', message: ['too long'] }];
    const set = { ...adult, problems };
    await expect(writePdf(set, fonts)).rejects.toThrow(RangeError);
  });
});

const idOf = (bytes: Uint8Array): string =>
  /\/ID \[ <([0-9A-F]+)>/.exec(Buffer.from(bytes).toString('latin1'))![1]!;

describe('setting type', () => {
  it('sets fractions of an inch as fractions, and leaves other strokes alone', () => {
    expect(setFractions('Finished girth 21 1/2 in')).toBe('Finished girth 21½ in');
    expect(setFractions('Seam allowance 3/8 in included')).toBe('Seam allowance ⅜ in included');
    expect(setFractions('4 11/16 in')).toBe('4¹¹⁄₁₆ in');
    for (const text of ['1/2', 'Band 24/7', 'cut 1/3 in', '5/4 in', '2026/11/25 in'])
      expect(setFractions(text)).toBe(text);
  });

  it('sets pairs such as To and AV closer, and HH and figures as they are', async () => {
    // The pairs every type designer draws closer together: common practice. Figures stay even, for columns.
    const kern = kerningOf(fonts.regular);
    const glyph = await glyphsOf(fonts.regular);
    for (const [a, b] of ['To', 'AV', 'Te', 'Ly', 'P.'].map((s) => [...s]))
      expect(kern(glyph(a!), glyph(b!))).toBeLessThan(-5);
    for (const [a, b] of ['HH', 'nn', '11', '00', '47'].map((s) => [...s]))
      expect(kern(glyph(a!), glyph(b!))).toBe(0);
  });

  it('knows that a font without pairs has none', () => {
    const empty = new Uint8Array(64);
    expect(kerningOf(empty)(3, 4)).toBe(0);
  });
});

/** Glyph numbers as jsPDF reads them from the font's cmap. */
const glyphsOf = async (font: Uint8Array): Promise<(letter: string) => number> => {
  const { jsPDF } = await import('jspdf');
  const doc = new jsPDF();
  doc.addFileToVFS('f.ttf', Buffer.from(font).toString('base64'));
  doc.addFont('f.ttf', 'f', 'normal');
  doc.setFont('f');
  const { metadata } = doc.getFont() as unknown as { metadata: { characterToGlyph(code: number): number } };
  return (letter) => metadata.characterToGlyph(letter.charCodeAt(0));
};
