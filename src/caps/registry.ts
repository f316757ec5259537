import { flatTop } from './flat-top/flat-top.ts';
import type { Style } from './style.ts';

/** Every style of the family, in the order in which they are offered. All but the first visit's are fetched on demand. */
const fetching = {
  'flat-top': () => Promise.resolve(flatTop),
  gored: () => import('./gored/gored.ts').then((m) => m.gored),
  'three-piece': () => import('./three-piece/three-piece.ts').then((m) => m.threePiece),
  ball: () => import('./ball/ball.ts').then((m) => m.ball),
  bucket: () => import('./bucket/bucket.ts').then((m) => m.bucket),
  'sun-hat': () => import('./sun-hat/sun-hat.ts').then((m) => m.sunHat),
  beret: () => import('./beret/beret.ts').then((m) => m.beret),
  pillbox: () => import('./pillbox/pillbox.ts').then((m) => m.pillbox),
  skull: () => import('./skull/skull.ts').then((m) => m.skull),
  scrub: () => import('./scrub/scrub.ts').then((m) => m.scrub),
} as const satisfies Readonly<Record<string, () => Promise<Style>>>;

export type StyleId = keyof typeof fetching;
export const styleIds = Object.keys(fetching) as readonly StyleId[];

export const isStyleId = (value: unknown): value is StyleId => styleIds.some((id) => id === value);

const fetched = new Map<StyleId, Style>([['flat-top', flatTop]]);

/** Fetches a style's rules, once. */
export const fetchStyle = async (id: StyleId): Promise<Style> => {
  const style = fetched.get(id) ?? (await fetching[id]());
  fetched.set(id, style);
  return style;
};

/** All that can be had, in their order. */
export const fetchStyles = async (): Promise<readonly Style[]> =>
  (await Promise.allSettled(styleIds.map(fetchStyle))).flatMap((one) =>
    one.status === 'fulfilled' ? [one.value] : [],
  );

export const isFetched = (id: StyleId): boolean => fetched.has(id);

/** A style that has been fetched. To ask for another is a programmer's error: a spec comes to the table after its style. */
export const styleOf = (id: StyleId): Style => {
  const style = fetched.get(id);
  if (!style) throw new Error(`the style ${id} has not been fetched`);
  return style;
};
