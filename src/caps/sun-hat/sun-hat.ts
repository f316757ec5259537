import { degrees } from '../../units.ts';
import { openingOf } from '../opening.ts';
import { brimFact } from '../parts/brim/brim-figures.ts';
import { brimmed } from '../parts/brimmed/brimmed.ts';
import { allowancesOf } from '../parts/seams/allowances.ts';
import type { CapDraft, Head, Style } from '../style.ts';
import { sunHatCrown } from './crown.ts';
import { sunHatForm } from './form.ts';
import { sunHatLining } from './lining.ts';
import { type SunHatValues, sunHatParameters } from './parameters.ts';
import { sunHatProblems } from './problems.ts';

/** A crown of gores or of tip and side with a wide, nearly level brim, equally wide all round the head's oval. */
export const sunHat: Style<SunHatValues> = {
  id: 'sun-hat',
  name: 'Sun hat',
  alsoCalled: ['beach hat', 'garden hat', 'floppy hat'],
  tells: 'A wide brim, nearly level and equally wide all round, on a close crown.',
  parameters: sunHatParameters,
  starts: [
    {
      name: 'Six gores, brim in halves',
      values: { crown: 'gored', gores: 6, brimPieces: '2', brimWidth: 110, brimDrop: degrees(15) },
    },
    {
      name: 'Flat top, drooping brim',
      values: { crown: 'tipped', brimWidth: 100, brimDrop: degrees(28), brimPieces: 'whole' },
    },
    {
      name: 'As wide as it goes, in sections',
      values: { brimWidth: 150, brimDrop: degrees(10), brimPieces: '3', brimBody: 'two' },
    },
    {
      name: 'For a child, with room to grow',
      values: { ease: 25, brimWidth: 70, brimDrop: degrees(25), gores: 6, crown: 'gored' },
    },
  ],
  problems: sunHatProblems,
  inside: ({ lining }) => (lining ? ['lining', 'lining'] : ['lining']),
  draft: (values, head) => draftSunHat(values, head),
  form: sunHatForm,
  lining: sunHatLining,
};

const draftSunHat = (values: SunHatValues, head: Head): CapDraft => {
  const girths = openingOf(head, values.ease);
  const { shell, lining, opening, fact } = sunHatCrown(values, head);
  const { slope, ...hat } = brimmed({
    shell,
    lining,
    girths,
    opening,
    values,
    reversible: false,
    sweatbandHeight: values.sweatbandHeight,
  });
  return {
    finishedGirth: girths.finished,
    facts: [fact, brimFact(slope)],
    insert: null,
    pattern: { ...hat, allowances: allowancesOf(values) },
  };
};
