import { flatTopParameters } from '../caps/flat-top/parameters.ts';
import { defaultsOf } from '../caps/parameter.ts';
import type { PaperSpec } from '../print/paper.ts';
import { inches } from '../units.ts';
import type { CapSpec, HeadSpec, Spec } from './spec.ts';

/** The demo's first head: an invented player of the brass band by the canal. */
const cornet: HeadSpec = {
  name: 'Cornet',
  readings: [inches(21.5)],
  length: null,
  breadth: null,
  arc: null,
};

const firstCap: CapSpec = {
  style: 'flat-top',
  name: 'Cornet’s cap',
  values: defaultsOf(flatTopParameters),
};

const plainPaper: PaperSpec = {
  paper: 'a4',
  orientation: 'portrait',
  margin: 10,
  join: 'overlap',
  overlap: 10,
  halves: false,
  measuredAcross: 100,
  measuredDown: 100,
};

/** What lies on the table on a first visit: a finished cap, ready to be changed. */
export const defaultSpec: Spec = { head: cornet, cap: firstCap, paper: plainPaper, unit: 'cm' };
