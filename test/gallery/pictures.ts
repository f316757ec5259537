import type { Picture } from './picture.ts';
import { flatTopPictures } from './styles/flat-top.ts';

/** Every style as it comes and at its extremes. */
export const pictures: readonly Picture[] = [...flatTopPictures];
