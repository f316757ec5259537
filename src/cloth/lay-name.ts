import type { LayPiece } from './lay-pieces.ts';

/** What a piece on the cloth is called: by its cap too where several are cut together, "Cornet’s cap: side band". */
export const layName = ({ cap, piece: { name } }: LayPiece): string =>
  cap === null ? name : `${cap}: ${name.charAt(0).toLowerCase()}${name.slice(1)}`;

/** The same in as many lines as there are things to say. */
export const layNameLines = ({ cap, piece: { name } }: LayPiece): readonly string[] =>
  cap === null ? [name] : [cap, name];
