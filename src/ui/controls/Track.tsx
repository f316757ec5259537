import {
  type CSSProperties,
  type KeyboardEvent,
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import type {
  AngleParameter,
  CountParameter,
  LengthParameter,
  RatioParameter,
} from '../../caps/parameter.ts';
import { change, put, settle } from '../../state/actions.ts';
import { type FieldId, readField } from '../../state/field.ts';
import { useStudio } from '../../state/studio.ts';
import { perFrame } from '../per-frame.ts';
import type { Notation } from './notation.ts';
import { draggedTo, stepOf, stepped } from './steps.ts';

export type Ranged = LengthParameter | AngleParameter | RatioParameter | CountParameter;

interface Props {
  readonly field: FieldId;
  readonly parameter: Ranged;
  readonly notation: Notation;
  readonly id: string;
  readonly describedBy: string;
  readonly wrong: boolean;
}

/**
 * The slider's track. The browser moves the thumb by itself and the wish follows once a frame, so that a slow frame
 * never tears the thumb from the finger.
 */
export const Track = ({ field, parameter, notation, id, describedBy, wrong }: Props) => {
  const input = useRef<HTMLInputElement>(null);
  const held = useRef(false);
  const value = useStudio((s) => Number(readField(s.wish, field)));
  // From there on the value is the browser's: see below.
  const [first] = useState(value);
  const unit = useStudio((s) => s.wish.unit);
  const moves = useMemo(() => perFrame((to: number) => change(field, to)), [field]);

  useLayoutEffect(() => {
    const { current } = input;
    if (current && !held.current && current.valueAsNumber !== value) current.value = String(value);
  }, [value]);

  const rest = () => {
    held.current = false;
    moves.flush();
    settle();
  };
  useEffect(() => {
    const { current } = input;
    // React's onChange is the browser's input event; the browser's own change event means that the slider rests.
    const onRest = () => {
      moves.flush();
      settle();
    };
    current?.addEventListener('change', onRest);
    return () => current?.removeEventListener('change', onRest);
  }, [moves]);

  const onKeyDown = (event: KeyboardEvent) => {
    const to = stepped(event, value, parameter, unit);
    if (to === null) return;
    event.preventDefault();
    moves.push(to);
  };

  return (
    <div className="track" style={usualStyle(parameter)}>
      <input
        ref={input}
        type="range"
        id={id}
        aria-describedby={describedBy}
        aria-invalid={wrong || undefined}
        aria-valuetext={notation.write(value, unit)}
        min={parameter.min}
        max={parameter.max}
        step="any"
        defaultValue={first}
        onChange={({ target }) => {
          const to = target.valueAsNumber;
          moves.push(held.current ? draggedTo(to, parameter, unit) : to);
        }}
        onPointerDown={() => {
          held.current = true;
        }}
        onPointerUp={rest}
        onPointerCancel={rest}
        onBlur={rest}
        onKeyDown={onKeyDown}
        onKeyUp={rest}
        onDoubleClick={() => put(field, parameter.default)}
        title={`Step ${notation.write(stepOf(parameter, unit), unit)}; double-click for the usual ${notation.write(parameter.default, unit)}`}
      />
    </div>
  );
};

/** Where along the track the range that most caps use begins and ends, as parts of one. */
const usualStyle = ({ usual, min, max }: Ranged): CSSProperties => {
  const [from, to] = usual ?? [min, min];
  const part = (n: number) => (n - min) / (max - min);
  return { '--from': part(from), '--to': part(to) } as CSSProperties;
};
