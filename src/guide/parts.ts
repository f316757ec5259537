/** What a piece is a part of. */
export type Part =
  | 'visor'
  | 'brim'
  | 'strap'
  | 'backStrap'
  | 'elasticCasing'
  | 'casing'
  | 'tie'
  | 'binding'
  | 'topButton'
  | 'band'
  | 'innerBand'
  | 'sweatband'
  | 'lining'
  | 'crown';

const named: Readonly<Record<string, Part>> = {
  visor: 'visor',
  visorUnder: 'visor',
  stiffener: 'visor',
  strap: 'strap',
  backStrap: 'backStrap',
  elasticCasing: 'elasticCasing',
  casing: 'casing',
  tie: 'tie',
  archBinding: 'binding',
  topButton: 'topButton',
  band: 'band',
  liningBand: 'innerBand',
  sweatband: 'sweatband',
};

/** By the piece's id, which every style gives to the same part alike; what is not named is a piece of the crown. */
export const partOf = (piece: string): Part =>
  named[piece] ?? (piece.startsWith('brim') ? 'brim' : piece.startsWith('lining') ? 'lining' : 'crown');
