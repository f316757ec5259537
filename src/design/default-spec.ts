import { flatTopParameters } from '../caps/flat-top/parameters.ts';
import { defaultsOf } from '../caps/parameter.ts';
import type { ClothSpec, Cloths } from '../cloth/cloth.ts';
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

/** Cloth that does not count until it is measured: without thickness and without shrinkage. Widths are the usual ones. */
const plainCloth = (width: number, cross: boolean): ClothSpec => ({
  kind: 'other',
  thickness: 0,
  width,
  nap: false,
  cross,
  bias: false,
  shrinkLength: 0,
  shrinkWidth: 0,
  washed: false,
  folded: false,
  length: null,
  scraps: [],
  price: null,
});

const plainCloths: Cloths = {
  outer: plainCloth(1400, false),
  lining: plainCloth(1400, true),
  interlining: plainCloth(900, true),
  stiffener: plainCloth(500, true),
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
export const defaultSpec: Spec = {
  head: cornet,
  cap: firstCap,
  cloths: plainCloths,
  paper: plainPaper,
  unit: 'cm',
};
