import type { jsPDF } from 'jspdf';
import { drawSheet } from './pdf/draw-sheet.ts';
import { type Face, faceOf, kerned, type Metadata, typefaceOf } from './pdf/face.ts';
import { documentFacts } from './pdf/facts.ts';
import type { Pen, TextLine } from './pdf/pen.ts';
import { picturesFor } from './pdf/picture.ts';
import { type Pictures, pictureKey, type TextPicture } from './pdf/pictures.ts';
import type { SheetSet } from './sheet.ts';

/** The two cuts of the typeface, as TrueType files. */
export interface Fonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

const POINTS = 72 / 25.4;
const FAMILY = 'SourceSans3';

/**
 * The sheets as a PDF: vector, true to scale, the same bytes for the same set. Says after each sheet how many are
 * drawn. Throws RangeError for a set with problems, or without sheets.
 */
export const writePdf = async (
  set: SheetSet,
  fonts: Fonts,
  onSheet: (drawn: number) => void = () => {},
): Promise<Uint8Array> => {
  if (set.problems.length > 0 || set.sheets.length === 0)
    throw new RangeError('this set of sheets cannot be printed');
  const { jsPDF } = await import('jspdf');
  const format = [set.page.width, set.page.height];
  const orientation = set.page.width > set.page.height ? 'landscape' : 'portrait';
  const doc = new jsPDF({
    unit: 'mm',
    format,
    orientation,
    compress: true,
    putOnlyUsedFonts: true,
    floatPrecision: 5,
    userUnit: 1,
  });
  const faces = { normal: addFace(doc, 'normal', fonts.regular), bold: addFace(doc, 'bold', fonts.bold) };
  describe(doc, set);
  const pictures = await picturesFor(set.sheets, faces.normal, faces.bold);
  const typeface = typefaceOf(faces.normal, faces.bold, pictures);
  const pen = penOf(doc, set.page.height, faces, pictures);
  for (const [i, sheet] of set.sheets.entries()) {
    if (i > 0) doc.addPage(format, orientation);
    boxPage(doc, set);
    doc.setLineJoin('round');
    drawSheet(pen, typeface, sheet, set);
    onSheet(i + 1);
  }
  return new Uint8Array(doc.output('arraybuffer'));
};

type Faces = Readonly<Record<'normal' | 'bold', Face>>;

const addFace = (doc: jsPDF, style: 'normal' | 'bold', file: Uint8Array): Face => {
  const name = `${FAMILY}-${style}.ttf`;
  doc.addFileToVFS(name, binaryString(file));
  doc.addFont(name, FAMILY, style);
  doc.setFont(FAMILY, style);
  const { metadata } = doc.getFont() as unknown as { readonly metadata: Metadata };
  return faceOf(metadata, file);
};

const binaryString = (bytes: Uint8Array): string => {
  const parts: string[] = [];
  for (let i = 0; i < bytes.length; i += 8192)
    parts.push(String.fromCharCode(...bytes.subarray(i, i + 8192)));
  return parts.join('');
};

const describe = (doc: jsPDF, set: SheetSet): void => {
  const { title, subject, keywords, created, id } = documentFacts(set);
  doc.setProperties({
    title,
    subject,
    author: 'Capwright',
    creator: 'Capwright',
    keywords,
  });
  doc.setCreationDate(created as unknown as Date);
  doc.setFileId(id);
  doc.setLanguage('en');
  doc.setDisplayMode('fullpage', 'continuous');
  doc.viewerPreferences({ PrintScaling: 'None', DisplayDocTitle: true });
  (doc as unknown as { __private__: { setPdfVersion(v: string): void } }).__private__.setPdfVersion('1.7');
};

/** The page is all there is: nothing is trimmed, and the margins hold everything that is drawn. */
const boxPage = (doc: jsPDF, { page, paper }: SheetSet): void => {
  const box = (inset: number) => ({
    bottomLeftX: inset * POINTS,
    bottomLeftY: inset * POINTS,
    topRightX: (page.width - inset) * POINTS,
    topRightY: (page.height - inset) * POINTS,
  });
  const { pageContext } = doc.getCurrentPageInfo();
  Object.assign(pageContext, { cropBox: box(0), trimBox: box(0), artBox: box(paper.margin) });
};

const penOf = (doc: jsPDF, height: number, faces: Faces, pictures: Pictures): Pen => ({
  moveTo: (x, y) => void doc.moveTo(x, height - y),
  lineTo: (x, y) => void doc.lineTo(x, height - y),
  curveTo: (x1, y1, x2, y2, x, y) => void doc.curveTo(x1, height - y1, x2, height - y2, x, height - y),
  close: () => void doc.close(),
  stroke: (weight, dash) => {
    doc.setLineWidth(weight);
    doc.setLineDashPattern([...dash], 0);
    doc.stroke();
  },
  fill: () => void doc.fill(),
  cover: (weight, dash) => {
    doc.setLineWidth(weight);
    doc.setLineDashPattern([...dash], 0);
    doc.setFillColor('#ffffff');
    if (weight > 0) doc.fillStroke();
    else doc.fill();
    doc.setFillColor('#000000');
  },
  clip: () => void doc.clip().discardPath(),
  stretch: (across, up, about) => {
    const [x, y] = [about.x * (1 - across) * POINTS, about.y * (1 - up) * POINTS];
    // Written here because jsPDF keeps five decimals, which over a long page is a hundredth of a millimetre.
    internals(doc).write([across, 0, 0, up, x, y].map((n) => n.toFixed(9)).join(' '), 'cm');
  },
  text: (line) => {
    const picture = pictures.get(pictureKey(line.text, line.bold));
    if (picture === undefined) setLine(doc, faces[line.bold ? 'bold' : 'normal'], line, height);
    else setPicture(doc, picture, line, height);
  },
});

const setLine = (doc: jsPDF, { kerning }: Face, line: TextLine, height: number): void => {
  doc.setFont(FAMILY, line.bold ? 'bold' : 'normal');
  doc.setFontSize(Math.round(line.size * POINTS * 1000) / 1000);
  const angle = (line.angle * 180) / Math.PI;
  doc.text(line.text, line.x, height - line.y, angle === 0 ? {} : { angle });
  // jsPDF sets glyphs without kerning: what it wrote last is written again with it.
  const page = internals(doc).pages[doc.getCurrentPageInfo().pageNumber]!;
  page.push(kerned(page.pop()!, kerning));
};

const setPicture = (doc: jsPDF, picture: TextPicture, line: TextLine, height: number): void => {
  const [width, tall] = [picture.width * line.size, picture.height * line.size];
  // Turned about the picture's lower left corner, which hangs below the baseline.
  const drop = picture.below * line.size;
  const x = line.x + drop * Math.sin(line.angle);
  const y = line.y - drop * Math.cos(line.angle);
  const alias = pictureKey(line.text, line.bold);
  doc.addImage(
    picture.png,
    'PNG',
    x,
    height - y - tall,
    width,
    tall,
    alias,
    'SLOW',
    (line.angle * 180) / Math.PI,
  );
};

/** What jsPDF offers its plugins, and its types do not say. */
const internals = (doc: jsPDF) =>
  doc.internal as unknown as { readonly pages: string[][]; write(...operators: string[]): void };
