import type { Form, FormStrip } from '../../form.ts';

/** What a piece of the shell is called in the lining. */
const names: Readonly<Record<string, string>> = {
  tip: 'liningTip',
  sideBand: 'liningSide',
  sideBandFront: 'liningSideFront',
  sideBandBack: 'liningSideBack',
  band: 'liningBand',
  gore: 'liningGore',
  top: 'liningTop',
  side: 'liningSide',
};

/** Strips that stand as a shell does, of the lining's measures, by the names of the lining's pieces. */
export const asLining = (strips: readonly FormStrip[]): Form => ({
  strips: strips.map((strip) => ({ ...strip, piece: names[strip.piece] ?? strip.piece })),
});

/** The form of a lining where there is none. */
export const UNLINED: Form = { strips: [] };
