import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import type { Spec } from '../design/spec.ts';
import type { Placed } from '../drawing/arrange.ts';
import type { Unit } from '../units.ts';
import { inFrame, notInFrame } from './frames.ts';
import { onTable } from './on-table.ts';

/** The pieces of a spec as they lie on the table. A change is drawn as a piece of work of its own, after it is drafted. */
export const useDrawn = (spec: Spec, unit: Unit): readonly Placed[] => {
  const [drawn, setDrawn] = useState(() => onTable(spec, unit));
  useEffect(() => {
    const draw = () => flushSync(() => setDrawn(onTable(spec, unit)));
    inFrame(draw);
    return () => notInFrame(draw);
  }, [spec, unit]);
  return drawn;
};
