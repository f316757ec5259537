import { keepingNatives } from '../house/natives.ts';

const { getDocument, OPS } = await keepingNatives(async () => {
  // Else it fetches its worker with the first file, and that replaces them again.
  await import('pdfjs-dist/legacy/build/pdf.worker.mjs' as string);
  return import('pdfjs-dist/legacy/build/pdf.mjs');
});

/** A PDF as pdf.js reads it: an independent reader of what was written. Millimetres, y up. */
export interface ReadPdf {
  readonly pages: readonly ReadPage[];
  readonly info: Readonly<Record<string, unknown>>;
  readonly viewerPreferences: Readonly<Record<string, unknown>> | null;
}

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly paths: readonly ReadPath[];
  readonly texts: readonly ReadText[];
  readonly images: number;
}

export interface XY {
  readonly x: number;
  readonly y: number;
}

/** One drawn line, curves as many short chords. */
export interface ReadPath {
  readonly points: readonly XY[];
  readonly painted: 'stroke' | 'fill' | 'clip';
  readonly weight: number;
  readonly dashed: boolean;
  readonly curves: number;
}

export interface ReadText {
  readonly text: string;
  /** Height of an em. */
  readonly size: number;
  readonly corners: readonly XY[];
}

type Matrix = readonly [number, number, number, number, number, number];

const MM = 25.4 / 72;
/** Chords for each cubic. */
export const CHORDS = 128;

export const readPdf = async (bytes: Uint8Array): Promise<ReadPdf> => {
  // pdf.js takes the bytes it is given away.
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: ReadPage[] = [];
  for (let n = 1; n <= document.numPages; n++) {
    const page = await document.getPage(n);
    const { fnArray, argsArray } = await page.getOperatorList();
    const content = await page.getTextContent();
    const [x0, y0, x1, y1] = page.view as [number, number, number, number];
    pages.push({
      width: (x1 - x0) * MM,
      height: (y1 - y0) * MM,
      ...drawnBy(fnArray, argsArray),
      texts: content.items.flatMap((item) => ('str' in item && item.str.trim() !== '' ? [textOf(item)] : [])),
    });
  }
  const { info } = await document.getMetadata();
  const viewerPreferences = (await document.getViewerPreferences()) as ReadPdf['viewerPreferences'];
  await document.destroy();
  return { pages, info: info as ReadPdf['info'], viewerPreferences };
};

const times = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
  a * g + c * h,
  b * g + d * h,
  a * i + c * j,
  b * i + d * j,
  a * k + c * l + e,
  b * k + d * l + f,
];

const moved = ([a, b, c, d, e, f]: Matrix, x: number, y: number): XY => ({
  x: (a * x + c * y + e) * MM,
  y: (b * x + d * y + f) * MM,
});

/** Follows the page's operators, keeping the state that matters for where lines lie and how they are drawn. */
const drawnBy = (operators: readonly number[], args: readonly unknown[]) => {
  const paths: ReadPath[] = [];
  let images = 0;
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  const saved: Matrix[] = [];
  let [weight, dashed] = [1, false];
  for (const [i, operator] of operators.entries()) {
    const given = args[i] as readonly unknown[];
    if (operator === OPS.save) saved.push(matrix);
    else if (operator === OPS.restore) matrix = saved.pop() ?? matrix;
    else if (operator === OPS.transform) matrix = times(matrix, given as unknown as Matrix);
    else if (operator === OPS.setLineWidth) weight = given[0] as number;
    else if (operator === OPS.setDash) dashed = (given[0] as readonly number[]).length > 0;
    else if (operator === OPS.paintImageXObject || operator === OPS.paintImageMaskXObject) images++;
    else if (operator === OPS.constructPath) {
      const painter = given[0] as number;
      const painted =
        painter === OPS.endPath ? 'clip' : painter === OPS.fill || painter === OPS.eoFill ? 'fill' : 'stroke';
      const size = Math.sqrt(Math.abs(matrix[0] * matrix[3] - matrix[1] * matrix[2]));
      for (const data of given[1] as readonly (Float32Array | null)[]) {
        if (data === null) continue;
        for (const run of runsOf(data, matrix))
          paths.push({ ...run, painted, weight: weight * size * MM, dashed });
      }
    }
  }
  return { paths, images };
};

/** pdf.js packs a path as numbers: 0 move, 1 line, 2 cubic, 4 close, each with its points. */
const runsOf = (data: Float32Array, matrix: Matrix): { points: XY[]; curves: number }[] => {
  const runs: { points: XY[]; curves: number }[] = [];
  let [x, y] = [0, 0];
  for (let i = 0; i < data.length; ) {
    const verb = data[i++];
    const run = runs.at(-1);
    if (verb === 0) {
      [x, y] = [data[i++]!, data[i++]!];
      runs.push({ points: [moved(matrix, x, y)], curves: 0 });
    } else if (verb === 1) {
      [x, y] = [data[i++]!, data[i++]!];
      run!.points.push(moved(matrix, x, y));
    } else if (verb === 2) {
      const [x1, y1, x2, y2, x3, y3] = data.slice(i, i + 6) as unknown as number[] as [
        number,
        number,
        number,
        number,
        number,
        number,
      ];
      for (let k = 1; k <= CHORDS; k++) {
        const t = k / CHORDS;
        const s = 1 - t;
        const at = (p0: number, p1: number, p2: number, p3: number): number =>
          s * s * s * p0 + 3 * s * s * t * p1 + 3 * s * t * t * p2 + t * t * t * p3;
        run!.points.push(moved(matrix, at(x, x1, x2, x3), at(y, y1, y2, y3)));
      }
      run!.curves++;
      [x, y] = [x3, y3];
      i += 6;
    } else if (verb === 4) run!.points.push(run!.points[0]!);
    else throw new Error(`a path verb that is not known here: ${verb}`);
  }
  return runs;
};

/** The box of a text: its advance along the baseline, from a quarter em below it to three quarters above. */
const textOf = (item: { str: string; width: number; transform: number[] }): ReadText => {
  const [a, b, c, d, e, f] = item.transform as unknown as Matrix;
  const [along, up] = [Math.hypot(a, b), Math.hypot(c, d)];
  const corner = (forward: number, rise: number): XY => ({
    x: (e + (a / along) * forward + c * rise) * MM,
    y: (f + (b / along) * forward + d * rise) * MM,
  });
  return {
    text: item.str,
    size: up * MM,
    corners: [corner(0, -0.25), corner(item.width, -0.25), corner(item.width, 0.75), corner(0, 0.75)],
  };
};
