import type { Pattern } from '../pattern/pattern.ts';

/** Whether a crown has a lining; a band's facing alone is none. */
export const isLined = ({ pieces }: Pattern): boolean =>
  pieces.some(({ id }) => id.startsWith('lining') && id !== 'liningBand');
