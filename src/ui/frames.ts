/** In one frame no work is begun after this, ms: the rest of a sixtieth of a second is the browser's, to lay out and paint. */
const ENOUGH = 1;

type Work = () => void;

/** What is ready to be painted, and what is new. */
const paints: Work[] = [];
const fresh: Work[] = [];
/** How many things are being made beside the page. */
let awaited = 0;
let frame = 0;

/**
 * Paints in the next frame, with whatever else is to be painted, once nothing is being made any more: two views of a cap that
 * both asked are never seen one without the other, however slow the machine.
 */
export const paintInFrame = (paint: Work): void => {
  paints.push(paint);
  ask();
};

/**
 * Takes up something new once all is painted that was begun: in the same frame if there is time. On a slow machine work and
 * painting thus take turns, and no frame holds up the hand for long.
 */
export const inFrameAfterAll = (work: Work): void => {
  fresh.push(work);
  ask();
};

/**
 * Says that something to be painted is being made beside the page: until it is there, nothing is painted and nothing new is
 * taken up. Gives how to say that it is there.
 */
export const awaitInFrame = (): (() => void) => {
  awaited += 1;
  mark(true);
  let here = false;
  return () => {
    if (here) return;
    here = true;
    awaited -= 1;
    ask();
  };
};

/** Takes back what was asked for and has not been done yet. */
export const notInFrame = (work: Work): void => {
  for (const list of [paints, fresh]) {
    const at = list.indexOf(work);
    if (at >= 0) list.splice(at, 1);
  }
};

const ask = (): void => {
  if (frame !== 0) return;
  frame = requestAnimationFrame(workOn);
  mark(true);
};

const isWorkLeft = (): boolean => awaited === 0 && paints.length + fresh.length > 0;

/** The page says of itself whether what was asked for has yet to be painted: whoever looks at it can wait for that. */
const mark = (busy: boolean): void => void document.body.toggleAttribute('data-busy', busy);

const workOn = (): void => {
  const begun = performance.now();
  try {
    while (isWorkLeft() && performance.now() - begun < ENOUGH) workOnce();
  } finally {
    frame = isWorkLeft() ? requestAnimationFrame(workOn) : 0;
    if (frame === 0 && awaited === 0) mark(false);
  }
};

const workOnce = (): void => {
  if (paints.length > 0) while (paints.length > 0) paints.shift()?.();
  else fresh.shift()?.();
};
