import { gored } from '../../src/caps/gored/gored.ts';
import { describeFamily } from './family.ts';

// Refused only: too full for a short crown, a visor longer than half of every head, …
describeFamily(gored, {
  mostRefused: 200,
  also: [{}, { edge: 'sweatband', visorSource: 'insert' }, { gores: 5, frontSeam: 'panel', strap: true }],
});
