import type { Picture } from './picture.ts';
import { ballPictures } from './styles/ball.ts';
import { beretPictures } from './styles/beret.ts';
import { bucketPictures } from './styles/bucket.ts';
import { flatTopPictures } from './styles/flat-top.ts';
import { goredPictures } from './styles/gored.ts';
import { pillboxPictures } from './styles/pillbox.ts';
import { scrubPictures } from './styles/scrub.ts';
import { skullPictures } from './styles/skull.ts';
import { sunHatPictures } from './styles/sun-hat.ts';
import { threePiecePictures } from './styles/three-piece.ts';

/** Every style as it comes and at its extremes. */
export const pictures: readonly Picture[] = [
  ...flatTopPictures,
  ...goredPictures,
  ...threePiecePictures,
  ...ballPictures,
  ...bucketPictures,
  ...sunHatPictures,
  ...beretPictures,
  ...pillboxPictures,
  ...skullPictures,
  ...scrubPictures,
];
