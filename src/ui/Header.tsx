import { LONGEST_NAME } from '../design/reading.ts';
import { change, putTheme, putUnit, redo, settle, undo } from '../state/actions.ts';
import { useStudio } from '../state/studio.ts';
import { useSteps } from '../state/use-steps.ts';
import type { Unit } from '../units.ts';
import { openDetail } from './details/DetailPanel.tsx';
import { isDark, useDarkSystem } from './use-theme.ts';

/** The name of the workshop and of the cap, and what is always at hand. */
export const Header = () => (
  <header>
    <h1>
      <Mark />
      Capwright
    </h1>
    <CapName />
    <ShelfButton />
    <Units />
    <Steps />
    <Light />
  </header>
);

/** Our mark: a flat-top cap from the side. */
const Mark = () => (
  <svg className="mark" viewBox="0 0 32 32" aria-hidden="true">
    <path d="M4.500 11C4.500 8.500 9.500 6.500 16 6.500S27.500 8.500 27.500 11L24.500 17.500V22.500H9V17.500Z" />
    <path d="M9 17.500H24.500M9 22.500C5.500 22.500 2.500 24 1.500 26.500C5 25.500 9.500 25 14 25.200" />
  </svg>
);

const CapName = () => {
  const name = useStudio((s) => s.wish.cap.name);
  return (
    <span className="cap-name" data-text={name}>
      <input
        type="text"
        aria-label="Name of the cap"
        autoComplete="off"
        spellCheck={false}
        maxLength={LONGEST_NAME}
        size={1}
        value={name}
        onChange={(event) => change('cap.name', event.target.value)}
        onBlur={settle}
      />
    </span>
  );
};

/** The way to the other caps. */
const ShelfButton = () => {
  const isOpen = useStudio((s) => s.detail === 'shelf');
  return (
    <button
      type="button"
      className="to-shelf"
      aria-expanded={isOpen}
      aria-controls="detail"
      onClick={() => void openDetail(isOpen ? null : 'shelf')}
    >
      Shelf
    </button>
  );
};

const units: readonly (readonly [Unit, string])[] = [
  ['cm', 'cm'],
  ['in', 'in'],
];

const Units = () => {
  const current = useStudio((s) => s.wish.unit);
  return (
    <div className="units" role="radiogroup" aria-label="Units">
      {units.map(([unit, name]) => (
        <label key={unit}>
          <input
            type="radio"
            name="units"
            value={unit}
            checked={unit === current}
            onChange={() => putUnit(unit)}
          />
          <span>{name}</span>
        </label>
      ))}
    </div>
  );
};

const Steps = () => {
  const { back, forward } = useSteps();
  // What is tried on is no step, and can be put back all the same.
  const tried = useStudio((s) => s.trial !== null);
  return (
    <div className="steps">
      <button type="button" onClick={undo} aria-disabled={back === 0 && !tried} title="Undo (Ctrl Z)">
        <svg viewBox="0 0 20 20" aria-hidden="true">
          <path d="M7 4L3 8L7 12M3 8H12A4.500 4.500 0 0 1 12 17H8" />
        </svg>
        <span>Undo</span>
      </button>
      <button type="button" onClick={redo} aria-disabled={forward === 0} title="Redo (Ctrl Shift Z)">
        <svg viewBox="0 0 20 20" aria-hidden="true">
          <path d="M13 4L17 8L13 12M17 8H8A4.500 4.500 0 0 0 8 17H12" />
        </svg>
        <span>Redo</span>
      </button>
    </div>
  );
};

const Light = () => {
  const theme = useStudio((s) => s.theme);
  const dark = isDark(theme, useDarkSystem());
  const name = dark ? 'Light room' : 'Dark room';
  return (
    <button type="button" className="light" title={name} onClick={() => putTheme(dark ? 'light' : 'dark')}>
      <svg viewBox="0 0 20 20" aria-hidden="true">
        <circle cx="10" cy="10" r="7" />
        <path className="solid" d="M10 3A7 7 0 0 1 10 17Z" />
      </svg>
      <span className="unseen">{name}</span>
    </button>
  );
};
