/** How lengths are shown and typed. Inside the program a length is always millimetres. */
export type Unit = 'cm' | 'in';

export const MM_PER_INCH = 25.4;
export const inches = (n: number): number => n * MM_PER_INCH;
export const degrees = (n: number): number => (n * Math.PI) / 180;
