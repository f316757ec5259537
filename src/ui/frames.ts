/** In one frame no work is begun after this, ms: the rest of a sixtieth of a second is the browser's, to lay out and paint. */
const ENOUGH = 0.3;

/** What is read rather than watched follows a hand no more often than it can be read, and no later than this, ms. */
const [PACE, LATEST] = [100, 200];

type Work = () => void;

/** What is ready to be painted, and what is new. */
const paints: Work[] = [];
const fresh: Work[] = [];
/** What waits for a frame to spare, since when, and when such a thing was last done. */
const spare: Work[] = [];
let [since, spared] = [0, Number.NEGATIVE_INFINITY];
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
 * Does what can wait in a frame in which nothing else is to be done, once however often it was asked for: a frame that paints
 * the pieces need not set texts too. Where every frame has something to do, one has this as well.
 */
export const inSpareFrame = (work: Work): void => {
  if (spare.length === 0) since = performance.now();
  if (!spare.includes(work)) spare.push(work);
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
  for (const list of [paints, fresh, spare]) {
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
    if (spare.length > 0 && begun - spared >= PACE && (!isWorkLeft() || begun - since >= LATEST)) {
      spared = begun;
      while (spare.length > 0) spare.shift()?.();
    }
    while (isWorkLeft() && performance.now() - begun < ENOUGH) workOnce();
  } finally {
    frame = isWorkLeft() || spare.length > 0 ? requestAnimationFrame(workOn) : 0;
    if (frame === 0 && awaited === 0) mark(false);
  }
};

const workOnce = (): void => {
  if (paints.length > 0) while (paints.length > 0) paints.shift()?.();
  else fresh.shift()?.();
};
