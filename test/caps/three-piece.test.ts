import { threePiece } from '../../src/caps/three-piece/three-piece.ts';
import { describeFamily } from './family.ts';

describeFamily(threePiece, {
  mostRefused: 60,
  also: [{}, { visorSource: 'none', lining: false }, { visorSource: 'insert' }],
});
