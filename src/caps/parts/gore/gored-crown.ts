import { pathStart } from '../../../geometry/path.ts';
import type { Cloth, Figure, Piece, SeamKind } from '../../../pattern/piece.ts';
import type { EdgeUse, Seam } from '../../../pattern/seam.ts';
import type { Words } from '../../../words.ts';
import { back, one, plain } from '../seams/seam.ts';
import { gore } from './gore.ts';
import { type GoreReach, halfWidthPerReach } from './gore-reach.ts';

/** What stands at the centre front: a seam or the middle of a gore. */
export type FrontSeam = 'seam' | 'panel';

/** A kind of gore: gores of one kind are copies of one piece. */
export interface GoreKind {
  readonly id: string;
  readonly name: string;
  readonly cloths: readonly Cloth[];
  readonly notes?: readonly Words[];
}

export interface GoredCrownWish {
  readonly gores: number;
  readonly frontSeam: FrontSeam;
  readonly reach: GoreReach;
  /** Of which kind a gore is, counted as `goreAngle` does. */
  readonly kindOf: (gore: number) => GoreKind;
  /** What the lower edge is sewn as. */
  readonly lower: SeamKind;
  /** Where what is sewn to the lower edge has seams, in parts of the girth from the centre back. */
  readonly seamsBelow?: readonly number[];
  /** Before the names of the seams, as in "Lining, "; and before their ids. */
  readonly named?: { readonly id: string; readonly name: string };
  /** What the arithmetic calls the girth of the lower edge; the finished girth where left out. */
  readonly girthName?: string;
  readonly figures?: readonly Figure[];
}

/** A crown of gores in one layer of cloth. */
export interface GoredCrown {
  readonly pieces: readonly Piece[];
  /** The long seams in sewing order: in pairs, pairs to halves, the halves to each other in one run over the middle. */
  readonly seams: readonly Seam[];
  /** The lower edge all the way round, starting and ending at the centre back. */
  readonly lower: readonly EdgeUse[];
  /** Which copy of which piece each gore is, from the centre back to the wearer's right and on round. */
  readonly copies: readonly GoreCopy[];
}

export interface GoreCopy {
  readonly piece: string;
  readonly copy: number;
}

/** Whether the middle of a gore stands at the centre back: behind a seam where the gores are odd in number, and else behind a gore. */
export const goreAtBack = (gores: number, frontSeam: FrontSeam): boolean =>
  (frontSeam === 'panel') === (gores % 2 === 0);

/**
 * Where the middle of a gore stands, radians counter-clockwise from the wearer's right (the centre back is −π/2).
 * Gore 0 is the one at the centre back, or else the first beyond it on the wearer's right.
 */
export const goreAngle = (gore: number, gores: number, frontSeam: FrontSeam): number =>
  -Math.PI / 2 + ((gore + (goreAtBack(gores, frontSeam) ? 0 : 0.5)) * 2 * Math.PI) / gores;

export const goredCrown = (wish: GoredCrownWish): GoredCrown => {
  const { gores, frontSeam, reach } = wish;
  const kinds = Array.from({ length: gores }, (_, i) => wish.kindOf(i));
  const copies = kinds.map(
    ({ id }, i): GoreCopy => ({ piece: id, copy: kinds.slice(0, i).filter((k) => k.id === id).length }),
  );
  const ahead = goreAtBack(gores, frontSeam) ? 1 / 2 : 0;
  const places = kinds.map((_, i) => ({ from: (i - ahead) / gores, to: (i + 1 - ahead) / gores }));
  const distinct = kinds.filter((kind, i) => kinds.findIndex((k) => k.id === kind.id) === i);
  const pieces = distinct.map((kind) =>
    gore({
      ...kind,
      count: kinds.filter((k) => k.id === kind.id).length,
      reach,
      gores,
      lower: wish.lower,
      seamsBelow: wish.seamsBelow ?? [],
      places,
      girthName: wish.girthName ?? 'finished girth',
      figures: wish.figures ?? [],
    }),
  );
  const base = 2 * pathStart(reach).x * halfWidthPerReach(gores);
  return {
    pieces,
    seams: longSeams(copies, wish.named ?? { id: '', name: '' }),
    lower: lowerChain(copies, goreAtBack(gores, frontSeam), base),
    copies,
  };
};

/** A gore that straddles the centre back is walked in two halves. */
const lowerChain = (copies: readonly GoreCopy[], atBack: boolean, base: number): readonly EdgeUse[] => {
  const round = copies.map(({ piece, copy }) => one(piece, 'bottom', copy));
  if (!atBack) return round;
  const [first, ...rest] = round;
  return [{ ...first!, from: base / 2, to: base }, ...rest, { ...first!, from: 0, to: base / 2 }];
};

/** Up the right-hand edge of a gore, and up the left-hand edge of its neighbour. */
const rightUp = ({ piece, copy }: GoreCopy): EdgeUse => one(piece, 'right', copy);
const leftUp = ({ piece, copy }: GoreCopy): EdgeUse => back(piece, 'left', copy);
const rightDown = ({ piece, copy }: GoreCopy): EdgeUse => back(piece, 'right', copy);
const leftDown = ({ piece, copy }: GoreCopy): EdgeUse => one(piece, 'left', copy);

const longSeams = (
  copies: readonly GoreCopy[],
  named: { readonly id: string; readonly name: string },
): readonly Seam[] => {
  const half = Math.ceil(copies.length / 2);
  const halves = [copies.slice(0, half), copies.slice(half)] as const;
  // In a half, every second seam makes pairs; the others join the pairs.
  const joined = (parity: 0 | 1) =>
    halves.flatMap((gores) =>
      gores.slice(1).flatMap((next, i) => (i % 2 === parity ? [[gores[i]!, next] as const] : [])),
    );
  const seam = (id: string, name: string, a: readonly EdgeUse[], b: readonly EdgeUse[]): Seam =>
    plain(
      named.id ? `${named.id}${id}` : id[0]!.toLowerCase() + id.slice(1),
      `${named.name}${name}`,
      'gore',
      a,
      b,
    );
  const pairs = joined(0).map(([p, q], i) =>
    seam(`Pair${i + 1}`, `Gores in pairs, ${i + 1}`, [rightUp(p)], [leftUp(q)]),
  );
  const joins = joined(1).map(([p, q], i) =>
    seam(`Half${i + 1}`, `Pairs to halves, ${i + 1}`, [rightUp(p)], [leftUp(q)]),
  );
  const [a, b] = halves;
  const over = seam(
    'Over',
    'Halves together, over the middle',
    [rightUp(a.at(-1)!), leftDown(a[0]!)],
    [leftUp(b[0]!), rightDown(b.at(-1)!)],
  );
  return [...pairs, ...joins, over];
};
