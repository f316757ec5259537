/**
 * Traces of the machine a file was made on, or of the place its packages were fetched from: such a file
 * works for its writer alone.
 */
export const tracksIn = (text: string): readonly string[] =>
  [
    ...text.matchAll(
      /(?<![\w.$}/-])\/(?:work|tmp|root|home|Users)\/[\w.-]|\bregistry\.[\w-]+\.\w|"resolved"\s*:/g,
    ),
  ].map((found) => text.slice(found.index, found.index + 40).split('\n')[0] ?? '');
