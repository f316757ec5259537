import { ball } from '../../src/caps/ball/ball.ts';
import { describeFamily } from './family.ts';

// Refused only: gores too short to reach the middle, an opening too high or too narrow for what is wished of its strap, a visor longer than
// half of every head.
describeFamily(ball, {
  mostRefused: 58,
  also: [{}, { backFastening: 'elastic' }],
});
