/** How the cap is shown on a head: where, how it is put on, and in what cloth. Kept, and no part of the pattern. */
export interface WornWish {
  readonly place: 'beside' | 'instead' | 'hidden';
  readonly tilted: boolean;
  /** What the cloth looks like, and its colour and the lining's as #rrggbb. */
  readonly weave: Weave;
  readonly colour: string;
  readonly lining: string;
}

export const weaves = ['plain', 'ribbed', 'checked'] as const;
export type Weave = (typeof weaves)[number];

/** Hidden at first: what is not asked for costs nothing, neither the fetching of it nor a moment of a drag. */
export const usualWorn: WornWish = {
  place: 'hidden',
  tilted: false,
  weave: 'plain',
  colour: '#e9e1d0',
  lining: '#cfc6b4',
};

/** Reads it back, leaving what is damaged at its usual value. */
export const decodeWorn = (data: unknown): WornWish => {
  const wish = { ...(data as Partial<Record<keyof WornWish, unknown>> | null) };
  const colourOf = (key: 'colour' | 'lining') => {
    const read = `${wish[key]}`;
    return /^#[0-9a-f]{6}$/.test(read) ? read : usualWorn[key];
  };
  return {
    place: wish.place === 'instead' || wish.place === 'beside' ? wish.place : usualWorn.place,
    tilted: wish.tilted === true,
    weave: weaves.find((one) => one === wish.weave) ?? usualWorn.weave,
    colour: colourOf('colour'),
    lining: colourOf('lining'),
  };
};
