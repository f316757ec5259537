/** How the cap is shown on a head: where, how it is put on, and in what cloth. Kept, and no part of the pattern. */
export interface WornWish {
  readonly place: 'beside' | 'instead' | 'hidden';
  readonly tilted: boolean;
  /** What the cloth looks like, and its colour as #rrggbb. */
  readonly weave: Weave;
  readonly colour: string;
}

export const weaves = ['plain', 'ribbed', 'checked'] as const;
export type Weave = (typeof weaves)[number];

/** Hidden at first: what is not asked for costs nothing, neither the fetching of it nor a moment of a drag. */
export const usualWorn: WornWish = { place: 'hidden', tilted: false, weave: 'plain', colour: '#e9e1d0' };

/** Reads it back, leaving what is damaged at its usual value. */
export const decodeWorn = (data: unknown): WornWish => {
  const { place, tilted, weave, colour } = (typeof data === 'object' && data !== null ? data : {}) as Partial<
    Record<keyof WornWish, unknown>
  >;
  return {
    place: place === 'instead' || place === 'beside' ? place : usualWorn.place,
    tilted: tilted === true,
    weave: weaves.find((one) => one === weave) ?? usualWorn.weave,
    colour: typeof colour === 'string' && /^#[0-9a-f]{6}$/.test(colour) ? colour : usualWorn.colour,
  };
};
