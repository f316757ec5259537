import { skull } from '../../src/caps/skull/skull.ts';
import { describeFamily } from './family.ts';

// Refused only: too short, or widest too high up, for a close crown to reach its middle.
describeFamily(skull, {
  mostRefused: 40,
  also: [{}, { gores: 5 }, { edge: 'facing', frontSeam: 'panel', topButton: true }],
});
