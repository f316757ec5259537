import type { Cloth, Figure, PieceMark } from '../../../pattern/piece.ts';
import type { Words } from '../../../words.ts';
import type { OpeningCurve } from './opening-curve.ts';
import type { TopAndSidesShape } from './top-and-sides-shape.ts';

/** A top and two sides, as wished in one layer of cloth. */
export interface LayerWish {
  readonly layer: 'shell' | 'lining';
  readonly cloth: Cloth;
  readonly shape: TopAndSidesShape;
  readonly opening: OpeningCurve;
  /** What the trade calls the top of this cap. */
  readonly topName: string;
  /** The stretch of the edge, centred on the front, that a visor is sewn to, mm; 0 without one. */
  readonly visorStretch: number;
  readonly topMarks?: readonly PieceMark[];
  readonly topFigures?: readonly Figure[];
  readonly topNotes?: readonly Words[];
  readonly sideFigures?: readonly Figure[];
  readonly sideNotes?: readonly Words[];
}
