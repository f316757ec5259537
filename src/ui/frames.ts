/** In one frame no work is begun after this, ms: the rest of a sixtieth of a second is the browser's, to lay out and paint. */
const ENOUGH = 4;

const waiting: (() => void)[] = [];
let frame = 0;

/**
 * Does a piece of work in the next frame, in the order of asking; what one piece asks for comes in the same frame if
 * there is time. On a slow machine drafting and painting thus take turns, and no frame holds up the hand for long.
 */
export const inFrame = (work: () => void): void => {
  waiting.push(work);
  if (frame === 0) frame = requestAnimationFrame(workOn);
};

/** Takes back what was asked for and has not been done yet. */
export const notInFrame = (work: () => void): void => {
  const at = waiting.indexOf(work);
  if (at >= 0) waiting.splice(at, 1);
};

const workOn = (): void => {
  const begun = performance.now();
  try {
    do waiting.shift()?.();
    while (waiting.length > 0 && performance.now() - begun < ENOUGH);
  } finally {
    frame = waiting.length > 0 ? requestAnimationFrame(workOn) : 0;
  }
};
