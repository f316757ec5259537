import type { Face } from './faces.ts';

/** How long texts wait for their faces, ms. */
const LONGEST = 1000;

const { fonts } = self as unknown as { readonly fonts: FontFaceSet };

/** Makes faces known to a worker. Each is fetched when a text first needs it. */
export const takeFaces = (faces: readonly Face[]): void => {
  for (const { family, source, ...face } of faces) fonts.add(new FontFace(family, source, face));
};

/**
 * Resolves when the faces of a text are there, or after a while without them. To be asked before the text is set: a canvas
 * without a page goes on with the face that stood in, even when the right one has come.
 */
export const withFaces = async (family: string, text: string): Promise<void> => {
  const late = new Promise((resolve) => setTimeout(resolve, LONGEST));
  // A face that cannot be had is no reason to paint nothing.
  await Promise.race([fonts.load(`1em ${family}`, text), late]).catch(() => {});
};
