import { useId } from 'react';
import type { Problem } from '../../pattern/problem.ts';
import type { PaperName } from '../../print/paper.ts';
import { paperProblems } from '../../print/paper-problems.ts';
import { papers } from '../../print/sheet-size.ts';
import { put } from '../../state/actions.ts';
import { useStudio } from '../../state/studio.ts';
import { Choice } from '../controls/Choice.tsx';
import { Measure } from '../controls/Measure.tsx';
import { lengthNotation } from '../controls/notation.ts';
import { Switch } from '../controls/Switch.tsx';
import { squareNotation } from '../controls/stage-notations.ts';
import { Download } from '../paper/Download.tsx';
import { PrintList } from '../paper/PrintList.tsx';

const orientation = {
  label: 'Orientation',
  help: 'Try both: one may take fewer sheets.',
  options: [
    { value: 'portrait', label: 'Upright' },
    { value: 'landscape', label: 'On its side' },
  ],
};

const join = {
  label: 'Joining',
  help: 'Overlapped sheets are trimmed on one side and glued; butted sheets are trimmed on both and taped.',
  options: [
    { value: 'overlap', label: 'Overlap' },
    { value: 'butt', label: 'Edge to edge' },
  ],
};

const halves = {
  label: 'Halves on the fold',
  help: 'Symmetrical pieces are printed as halves, to be laid on folded cloth.',
};

/** How the pattern is printed, and the file that prints it. */
export const PaperStage = () => {
  const paper = useStudio((s) => s.wish.paper);
  const problems = paperProblems(paper);
  const of = (field: string): readonly Problem[] => problems.filter((problem) => problem.field === field);
  const { kind } = papers[paper.paper];
  return (
    <>
      <PaperSize />
      {kind === 'sheets' && <Choice field="paper.orientation" parameter={orientation} />}
      <Measure
        field="paper.margin"
        label="Margin"
        notation={lengthNotation}
        help="Kept free on all four sides, where printers cannot reach."
        others={of('paper.margin')}
      />
      {kind !== 'one-page' && <Choice field="paper.join" parameter={join} />}
      {kind !== 'one-page' && paper.join === 'overlap' && (
        <Measure
          field="paper.overlap"
          label="Overlap"
          notation={lengthNotation}
          others={of('paper.overlap')}
        />
      )}
      <Switch field="paper.halves" parameter={halves} />
      <Correction across={of('paper.measuredAcross')} down={of('paper.measuredDown')} />
      <PrintList />
      <Download ready={problems.length === 0} />
    </>
  );
};

const groups: readonly (readonly [string, readonly PaperName[]])[] = [
  ['Sheets', ['a4', 'letter', 'a3', 'legal', 'tabloid']],
  ['Rolls', ['roll-594', 'roll-610', 'roll-841', 'roll-914', 'roll-1067']],
  ['For a print shop', ['one-page']],
];

const PaperSize = () => {
  const id = useId();
  const paper = useStudio((s) => s.wish.paper.paper);
  return (
    <div className="control">
      <label htmlFor={id}>Paper size</label>
      <select
        id={id}
        className="figures"
        value={paper}
        onChange={(event) => put('paper.paper', event.target.value)}
      >
        {groups.map(([title, names]) => (
          <optgroup key={title} label={title}>
            {names.map((name) => (
              <option key={name} value={name}>
                {papers[name].label}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
    </div>
  );
};

/** What the test square came out as on this printer. */
const Correction = ({
  across,
  down,
}: {
  readonly across: readonly Problem[];
  readonly down: readonly Problem[];
}) => {
  const unit = useStudio((s) => s.wish.unit);
  const square = unit === 'cm' ? '100 mm' : '4 in';
  return (
    <details>
      <summary>If the printer is a little off</summary>
      <p className="help">
        Print the first sheet at 100 % and measure its {square} square. Type what the ruler says and the
        pattern is drawn to come out true.
      </p>
      <Measure
        field="paper.measuredAcross"
        label={`${square} square, across`}
        notation={squareNotation}
        others={across}
      />
      <Measure
        field="paper.measuredDown"
        label={`${square} square, down`}
        notation={squareNotation}
        others={down}
      />
    </details>
  );
};
