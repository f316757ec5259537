/** In one frame no work is begun after this, ms: the rest of a sixtieth of a second is the browser's, to lay out and paint. */
const ENOUGH = 4;

type Work = () => void;

/** What follows from work that is done, what is ready to be painted, and what is new. */
const following: Work[] = [];
const paints: Work[] = [];
const fresh: Work[] = [];
/** How many things are being made beside the page. */
let awaited = 0;
let frame = 0;

/**
 * Does a piece of work in the next frame, and what it asks for in turn in the same frame if there is time. On a slow
 * machine drafting, drawing and painting thus take turns, and no frame holds up the hand for long.
 */
export const inFrame = (work: Work): void => {
  following.push(work);
  ask();
};

/**
 * Paints once all that follows from earlier work is done, and in one frame with whatever else is to be painted: two views
 * of a cap that both asked are never seen one without the other, however slow the machine.
 */
export const paintInFrame = (paint: Work): void => {
  paints.push(paint);
  ask();
};

/** Does a piece of work once all that follows from earlier work is done: a new wish is taken up when the last one is painted. */
export const inFrameAfterAll = (work: Work): void => {
  fresh.push(work);
  ask();
};

/**
 * Says that something to be painted is being made beside the page: until it is there, nothing is painted and no new work is
 * begun. Gives how to say that it is there.
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
  for (const list of [following, paints, fresh]) {
    const at = list.indexOf(work);
    if (at >= 0) list.splice(at, 1);
  }
};

const ask = (): void => {
  if (frame !== 0) return;
  frame = requestAnimationFrame(workOn);
  mark(true);
};

const isWorkLeft = (): boolean => following.length > 0 || (awaited === 0 && paints.length + fresh.length > 0);

/** The page says of itself whether what was asked for has yet to be painted: whoever looks at it can wait for that. */
const mark = (busy: boolean): void => void document.body.toggleAttribute('data-busy', busy);

const workOn = (): void => {
  const begun = performance.now();
  try {
    do workOnce();
    while (isWorkLeft() && performance.now() - begun < ENOUGH);
  } finally {
    frame = isWorkLeft() ? requestAnimationFrame(workOn) : 0;
    if (frame === 0 && awaited === 0) mark(false);
  }
};

const workOnce = (): void => {
  const next = following.shift();
  if (next) next();
  else if (awaited > 0) return;
  else if (paints.length > 0) while (paints.length > 0) paints.shift()?.();
  else fresh.shift()?.();
};
