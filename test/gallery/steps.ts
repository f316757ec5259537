import { ball } from '../../src/caps/ball/ball.ts';
import { bucket } from '../../src/caps/bucket/bucket.ts';
import { flatTop } from '../../src/caps/flat-top/flat-top.ts';
import type { Values } from '../../src/caps/parameter.ts';
import { scrub } from '../../src/caps/scrub/scrub.ts';
import type { Style } from '../../src/caps/style.ts';
import { threePiece } from '../../src/caps/three-piece/three-piece.ts';
import type { Placed } from '../../src/drawing/arrange.ts';
import { STEP_WIDTH, stepDrawing } from '../../src/drawing/steps/step-drawing.ts';
import { point } from '../../src/geometry/point.ts';
import { joinedIn } from '../../src/guide/joined.ts';
import { head, written } from '../guide/caps.ts';
import { toSvg } from './svg.ts';

/** Drawings of some steps of one cap, side by side. */
export interface StepPicture {
  readonly name: string;
  readonly style: Style;
  readonly steps: readonly string[];
  readonly values?: Values;
}

const of = <V>(style: Style<V>, picture: Omit<StepPicture, 'style'>): StepPicture => ({
  ...picture,
  style: style as Style,
});

/** One of each sort of drawing: cloth, pieces, layers, what is slipped in, rows, gathers, the turned edge, the cap. */
export const stepPictures: readonly StepPicture[] = [
  of(flatTop, {
    name: 'steps-flat-top',
    steps: ['wash', 'mark', 'staystitch', 'interlining', 'visorEdge', 'stiffenVisor', 'crown', 'visorToBand'],
  }),
  of(flatTop, {
    name: 'steps-flat-top-to-the-end',
    steps: ['bandToSideGathers', 'lowerEdge', 'turn', 'lowerTopstitch', 'strapEdge', 'buttons', 'look'],
    values: { crownGather: 0.4 },
  }),
  of(ball, {
    name: 'steps-ball',
    steps: ['eyelets', 'over', 'backOpening', 'backStrap', 'strapOn', 'turnIn'],
  }),
  of(bucket, { name: 'steps-bucket', steps: ['brim', 'brimEdge', 'brimRows', 'lowerEdge', 'sweatbandEdge'] }),
  of(threePiece, { name: 'steps-three-piece', steps: ['long', 'liningEdge', 'tack'] }),
  of(scrub, { name: 'steps-scrub', steps: ['tie', 'lowerEdge', 'drawIn'], values: { backTie: 'ties' } }),
];

const GAP = 10;

export const stepsSvg = ({ name, style, steps, values = {} }: StepPicture): string => {
  const cap = written(style, values);
  if (cap === null) throw new Error(`${name}: not a cap that can be sewn`);
  const { guide, draft } = cap;
  const joined = joinedIn(guide.steps, draft.pattern.seams);
  const form = style.form(cap.values, head);
  const placed = steps.map((id, i): Placed => {
    const at = guide.steps.findIndex((step) => step.id === id);
    if (at < 0) throw new Error(`${name} has no step ${id}`);
    const step = guide.steps[at]!;
    const { settings, rows, held } = step;
    const drawn = stepDrawing(
      {
        ...step,
        ...joined[at]!,
        press: settings.press ?? null,
        topstitched: settings.topstitch !== undefined,
        rows: [...rows, ...held],
        form,
      },
      draft.pattern,
    )!;
    return {
      at: point(i * (STEP_WIDTH + GAP), -drawn.height),
      drawing: {
        id,
        name: step.title,
        marks: drawn.marks,
        silhouette: [],
        bounds: { min: point(0, 0), max: point(drawn.width, drawn.height) },
      },
    };
  });
  return toSvg(placed, name.replaceAll('-', ' '));
};
