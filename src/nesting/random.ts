/** Numbers from 0 up to but without 1, the same for the same seed. */
export type Random = () => number;

/**
 * xoshiro128++ of Blackman and Vigna (Scrambled linear pseudorandom number generators, 2021), its state filled from
 * the seed by a splitting mix of multiplications.
 */
export const randomFrom = (seed: number): Random => {
  let mixed = seed | 0;
  const next = (): number => {
    mixed = (mixed + 0x9e3779b9) | 0;
    const first = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
    const second = Math.imul(first ^ (first >>> 13), 0xc2b2ae35);
    return second ^ (second >>> 16);
  };
  const state = Int32Array.of(next(), next(), next(), next());
  return () => {
    const [a, b, c, d] = state as unknown as [number, number, number, number];
    const sum = (a + d) | 0;
    const result = (((sum << 7) | (sum >>> 25)) + a) | 0;
    state[2] = c ^ a;
    state[3] = d ^ b;
    state[1] = b ^ state[2];
    state[0] = a ^ state[3];
    state[2] ^= b << 9;
    state[3] = (state[3] << 11) | (state[3] >>> 21);
    return (result >>> 0) / 0x1_0000_0000;
  };
};
