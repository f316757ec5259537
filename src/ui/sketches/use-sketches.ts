import { useEffect, useState } from 'react';
import type { StyleId } from '../../caps/registry.ts';
import type { Spec } from '../../design/spec.ts';
import type { FormPicture } from '../../drawing/form-picture.ts';
import { useShownAtRest } from '../use-shown-at-rest.ts';
import type { FromSketcher, ToSketcher } from './sketches.worker.ts';
import address from './sketches.worker.ts?beside';

/** The sketches of the cap on the table follow a change once it has rested this long, ms. */
const REST = 250;

type Show = (pictures: readonly FormPicture[]) => void;

/** Sketches of a cap as it is, or in some styles in that order: none before they are made, the last ones while new ones are. */
export const useSketches = (spec: Spec, styles?: readonly StyleId[]): readonly FormPicture[] => {
  const [pictures, setPictures] = useState<readonly FormPicture[]>([]);
  useEffect(() => ask({ spec, styles }, setPictures), [spec, styles]);
  return pictures;
};

/** The same of the last cap on the table that can be sewn. */
export const useSketchesOfTable = (styles?: readonly StyleId[]): readonly FormPicture[] =>
  useSketches(useShownAtRest(REST), styles);

let worker: Worker | null = null;
const awaited = new Map<number, Show>();
let turns = 0;

/** Asks for sketches; gives how to say that they are no longer wanted. */
const ask = (order: ToSketcher['order'], show: Show): (() => void) => {
  turns += 1;
  const turn = turns;
  awaited.set(turn, show);
  worker ??= open();
  worker.postMessage({ turn, order } satisfies ToSketcher);
  return () => void awaited.delete(turn);
};

const open = (): Worker => {
  const opened = new Worker(address, { type: 'module' });
  opened.addEventListener('message', ({ data: { turn, pictures } }: MessageEvent<FromSketcher>) => {
    awaited.get(turn)?.(pictures);
    awaited.delete(turn);
  });
  // A list without sketches still does its work, and perhaps the next one can be had.
  opened.addEventListener('error', () => {
    opened.terminate();
    worker = null;
    awaited.clear();
  });
  return opened;
};
