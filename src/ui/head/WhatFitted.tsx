import type { Values } from '../../caps/parameter.ts';
import { styleOf } from '../../caps/registry.ts';
import { valuesThatFit } from '../../design/decode.ts';
import { fittedValues } from '../../design/head-cards.ts';
import { putValues } from '../../state/cap-actions.ts';
import { useStudio } from '../../state/studio.ts';
import { Going } from '../Going.tsx';
import { rowValue } from '../row-value.ts';
import { Figures } from '../Said.tsx';

/** What fitted this head last, where the cap on the table has it otherwise. */
export const WhatFitted = () => {
  const head = useStudio((s) => s.wish.head);
  const { style, values } = useStudio((s) => s.wish.cap);
  const unit = useStudio((s) => s.wish.unit);
  const { parameters } = styleOf(style);
  const others: Values = Object.fromEntries(
    Object.entries(valuesThatFit(parameters, fittedValues(head))).filter(
      ([key, value]) => values[key] !== value,
    ),
  );
  const keys = Object.keys(others);
  if (keys.length === 0) return null;
  return (
    <div className="remark">
      <p>
        What fitted last:{' '}
        {keys.map((key, i) => {
          const row = parameters[key]!;
          const value = (n: unknown): string => rowValue(row, Number(n), unit);
          return (
            <span key={key}>
              {i > 0 && ', '}
              {row.label.toLowerCase()} <Figures text={`${value(others[key])} (now ${value(values[key])})`} />
            </span>
          );
        })}
        .
      </p>
      <Going onPress={() => putValues(others)}>Use what fitted</Going>
    </div>
  );
};
