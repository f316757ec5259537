import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright/test';
import { type ReadPage, type ReadPdf, readPdf, type XY } from '../test/oracles/pdf-reader.ts';
import { tally } from './at-hand.ts';
import { expect } from './studio.ts';

/** The names on the sheet map, in order, once it has been laid out. */
export const mapOf = async (page: Page): Promise<readonly string[]> => {
  await expect(page.getByRole('button', { name: 'Download pattern PDF' })).toBeEnabled();
  const label = await page.getByRole('img', { name: /^Sheet map: / }).getAttribute('aria-label');
  return (label ?? '').replace('Sheet map: ', '').split(', ');
};

export const sheetsSaid = async (page: Page): Promise<number> =>
  Number.parseInt((await tally(page, /^\d+ sheets?$/).textContent()) ?? '', 10);

export const download = async (
  page: Page,
): Promise<{ readonly pdf: ReadPdf; readonly bytes: number; readonly name: string }> => {
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Download pattern PDF' }).click();
  const file = await coming;
  const bytes = await readFile(await file.path());
  return { pdf: await readPdf(new Uint8Array(bytes)), bytes: bytes.length, name: file.suggestedFilename() };
};

/** Sheets joined as the names say: the letter counts rows down, the number columns to the right. */
const cellOf = (name: string): { readonly row: number; readonly column: number } => ({
  row: name.charCodeAt(0) - 65,
  column: Number(name.slice(1)) - 1,
});

interface Laid {
  /** On the plane of all sheets, mm: along the line, and across it. */
  readonly level: boolean;
  readonly across: number;
  readonly from: number;
  readonly to: number;
}

/** The stitch lines of all sheets that run level or upright, laid together with 10 mm of overlap. */
export const stitchLines = (
  pdf: ReadPdf,
  names: readonly string[],
  margin = 10,
  overlap = 10,
): readonly Laid[] => {
  const stitch = keyOf(pdf, 'stitch line');
  return names.flatMap((name, i) => {
    const page = pdf.pages[i + 1]!;
    const { row, column } = cellOf(name);
    const pitch = { x: page.width - 2 * margin - overlap, y: page.height - 2 * margin - overlap };
    const onPlane = ({ x, y }: XY): XY => ({ x: x + column * pitch.x, y: y - row * pitch.y });
    return straightsOf(page)
      .filter(({ weight, dashed }) => dashed && Math.abs(weight - stitch.weight) < 0.01)
      .flatMap((line) => laid(onPlane(line.from), onPlane(line.to)));
  });
};

interface Straight {
  readonly from: XY;
  readonly to: XY;
  readonly weight: number;
  readonly dashed: boolean;
}

const straightsOf = (page: ReadPage): readonly Straight[] =>
  page.paths.flatMap(({ points, painted, weight, dashed }) =>
    painted === 'stroke'
      ? points.slice(1).map((to, i): Straight => ({ from: points[i]!, to, weight, dashed }))
      : [],
  );

/** The sample line that the key on the first sheet shows beside a name. */
const keyOf = (pdf: ReadPdf, name: string): Straight => {
  const page = pdf.pages[0]!;
  const [low, high] =
    page.texts.find(({ text }) => text.includes(name))?.corners.toSorted((a, b) => a.y - b.y) ?? [];
  if (!low || !high) throw new Error(`the first sheet has no "${name}"`);
  const beside = straightsOf(page).filter(
    ({ from, to }) =>
      Math.abs(from.y - to.y) < 0.01 && Math.abs(from.y - low.y - 1) < 2 && Math.max(from.x, to.x) < low.x,
  );
  expect(beside).toHaveLength(1);
  return beside[0]!;
};

const STRAIGHT = 0.005;
const laid = (a: XY, b: XY): readonly Laid[] => {
  const [dx, dy] = [Math.abs(a.x - b.x), Math.abs(a.y - b.y)];
  if (dy < STRAIGHT) return [{ level: true, across: a.y, from: Math.min(a.x, b.x), to: Math.max(a.x, b.x) }];
  if (dx < STRAIGHT) return [{ level: false, across: a.x, from: Math.min(a.y, b.y), to: Math.max(a.y, b.y) }];
  return [];
};

/** Lines that go on from one sheet to the next become one; sheets may be this far out of line, mm. */
const TRUE = 0.02;
export const joined = (lines: readonly Laid[]): readonly number[] => {
  const done: Laid[] = [];
  for (const line of [...lines].sort((a, b) => a.from - b.from)) {
    const at = done.findIndex(
      (d) => d.level === line.level && Math.abs(d.across - line.across) < TRUE && line.from <= d.to + TRUE,
    );
    if (at < 0) done.push(line);
    else done[at] = { ...done[at]!, to: Math.max(done[at]!.to, line.to) };
  }
  return done.map(({ from, to }) => to - from).sort((a, b) => b - a);
};
