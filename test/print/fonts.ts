import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const { resolve } = createRequire(import.meta.url);
const font = (path: string): Uint8Array =>
  new Uint8Array(readFileSync(resolve(`@expo-google-fonts/source-sans-3/${path}`)));

/** The typeface as the browser would fetch it. */
export const fonts = {
  regular: font('400Regular/SourceSans3_400Regular.ttf'),
  bold: font('600SemiBold/SourceSans3_600SemiBold.ttf'),
};
