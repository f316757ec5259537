export const a: number = 1;
