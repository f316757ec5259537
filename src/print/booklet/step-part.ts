import type { Mark } from '../../drawing/drawing.ts';
import { movedMarks } from '../../drawing/steps/moved-mark.ts';
import type { Picture } from '../../drawing/steps/shown.ts';
import { line, polygon } from '../../geometry/path.ts';
import { point } from '../../geometry/point.ts';
import type { Term } from '../../guide/glossary.ts';
import type { SettingLine } from '../../guide/settings-words.ts';
import type { Step } from '../../guide/step.ts';
import type { Unit } from '../../units.ts';
import { say, type Words } from '../../words.ts';
import { column, type Part, paragraph, space } from '../cover/flow.ts';

/** What one step is printed from. */
export interface PrintedStep {
  readonly step: Step;
  readonly picture: Picture | null;
  readonly settings: readonly SettingLine[];
  readonly terms: readonly Term[];
}

/** The tick box stands before the title, mm. */
const BOX = 4;
const IN = BOX + 2.5;

/**
 * A step: its title with a box to tick, its drawing, and all its words; kept together where a column as high as that (mm)
 * holds it.
 */
export const stepParts = (
  { step, picture, settings, terms }: PrintedStep,
  n: number,
  unit: Unit,
  width: number,
  most: number,
): readonly Part[] => {
  const said = (role: 'label' | 'note' | 'sheet', words: string, after = 0.7): Part =>
    paragraph(role, words, width, after);
  const all = (sentences: readonly Words[]): string => sentences.map((s) => say(s, unit)).join(' ');
  const head = [
    rule(width),
    titlePart(`${n}. ${step.title}`, width),
    ...(picture ? [pictureIn(picture, width)] : []),
  ];
  const rest = [
    ...step.words.map((sentence) => said('label', say(sentence, unit))),
    ...(settings.length > 0
      ? [said('note', settings.map(({ name, value }) => `${name}: ${value}`).join(' · '), 1)]
      : []),
    ...(step.cautions.length > 0 ? [said('sheet', `Take care: ${all(step.cautions)}`, 1)] : []),
    ...(step.checks.length > 0 ? [said('note', `Check: ${all(step.checks)}`, 1)] : []),
    ...terms.map(({ word, meaning }) => said('note', `“${word}”: ${meaning}`, 0.4)),
    space(3),
  ];
  const whole = column([...head, ...rest]);
  return whole(point(0, 0)).height <= most ? [whole] : [column(head), ...rest];
};

const rule =
  (width: number): Part =>
  (at) => ({
    marks: [{ kind: 'line', role: 'dimension', path: [line(at, point(at.x + width, at.y))] }],
    height: 1.5,
  });

const titlePart =
  (title: string, width: number): Part =>
  (at) => {
    const laid = paragraph('title', title, width - IN, 1)(point(at.x + IN, at.y));
    const [x0, y1] = [at.x, at.y - 1];
    const [x1, y0] = [x0 + BOX, y1 - BOX];
    const box: Mark = {
      kind: 'line',
      role: 'mark',
      path: polygon([point(x0, y0), point(x1, y0), point(x1, y1), point(x0, y1)]),
    };
    return { ...laid, marks: [box, ...laid.marks] };
  };

/** A drawing as wide as it is; a column is wider. */
const pictureIn =
  (picture: Picture, width: number): Part =>
  (at) => {
    const left = at.x + Math.max(0, (width - picture.width) / 2);
    const marks = movedMarks(picture.marks, point(left, at.y - picture.height - 1));
    return { marks, height: picture.height + 3 };
  };
