import type { LineMark, Mark, TextMark } from '../../drawing/drawing.ts';
import { pathData } from '../../drawing/path-data.ts';
import { lineStyles, textStyles } from '../../drawing/roles.ts';
import type { Picture } from '../../drawing/steps/shown.ts';
import { placedLines } from '../../drawing/text-block.ts';

/** A drawing as the paper shows it, in the colours of the screen. */
export const Marks = ({ picture, name }: { readonly picture: Picture; readonly name: string }) => (
  <svg
    className="step-picture"
    viewBox={`-1 ${-picture.height - 1} ${picture.width + 2} ${picture.height + 2}`}
    role="img"
    aria-label={name}
  >
    {picture.marks.map((mark, i) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: the marks of a drawing have no other name than their place.
      <OneMark mark={mark} key={i} />
    ))}
  </svg>
);

const OneMark = ({ mark }: { readonly mark: Mark }) =>
  mark.kind === 'line' ? <Line mark={mark} /> : <Text mark={mark} />;

const Line = ({ mark: { role, path, filled, ground, tone } }: { readonly mark: LineMark }) => {
  const style = lineStyles[role];
  const ink = `var(--${tone ?? style.tone})`;
  return (
    <path
      d={pathData(path)}
      fill={filled ? ink : ground ? 'var(--ticket)' : 'none'}
      stroke={style.weight > 0 ? ink : 'none'}
      strokeWidth={style.weight}
      strokeDasharray={style.dash.join(' ')}
      strokeLinejoin="round"
    />
  );
};

const ANCHORS = { start: 'start', middle: 'middle', end: 'end' } as const;

const Text = ({ mark }: { readonly mark: TextMark }) =>
  placedLines(mark).map(({ text, at }) => (
    <text
      key={text}
      x={at.x}
      y={-at.y}
      fontSize={mark.size}
      textAnchor={ANCHORS[mark.align]}
      fontWeight={textStyles[mark.role].bold ? 600 : 400}
      fill="var(--ink)"
    >
      {text}
    </text>
  ));
