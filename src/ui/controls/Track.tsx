import {
  type CSSProperties,
  type KeyboardEvent,
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import { change, put, settle } from '../../state/actions.ts';
import { type FieldId, readField } from '../../state/field.ts';
import { useStudio } from '../../state/studio.ts';
import { perFrame } from '../per-frame.ts';
import { withCommandKey } from '../with-command-key.ts';
import type { Notation } from './notation.ts';
import { draggedTo, type Ranged, stepOf, stepped } from './steps.ts';

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
  // What moves the thumb besides our own keys: a hand, or a key of the browser's, such as its way back.
  const mover = useRef<'hand' | 'browser' | null>(null);
  const value = useStudio((s) => Number(readField(s.wish, field)));
  // From there on the value is the browser's: see below.
  const [first] = useState(value);
  const unit = useStudio((s) => s.wish.unit);
  const moves = useMemo(() => perFrame((to: number) => change(field, to)), [field]);

  const putThumb = (to: number) => {
    const { current } = input;
    if (current && mover.current !== 'hand' && current.valueAsNumber !== to) current.value = String(to);
  };
  useLayoutEffect(() => putThumb(value));

  const rest = () => {
    mover.current = null;
    moves.flush();
    settle();
    // While it was held, the value may have been rounded or taken back.
    putThumb(Number(readField(useStudio.getState().wish, field)));
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
    if (mover.current !== 'hand') mover.current = withCommandKey(event) ? 'browser' : null;
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
          if (mover.current === 'browser') return putThumb(value);
          const to = target.valueAsNumber;
          moves.push(mover.current === 'hand' ? draggedTo(to, parameter, unit) : to);
        }}
        onPointerDown={() => {
          mover.current = 'hand';
        }}
        onPointerUp={rest}
        onPointerCancel={rest}
        onBlur={rest}
        onKeyDown={onKeyDown}
        onKeyUp={() => mover.current !== 'hand' && rest()}
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
