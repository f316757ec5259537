/** What a library may replace for all that runs beside it, by its own: slower, and not what the app runs on. */
export const natives = [
  [Array.prototype, 'push'],
  [Function.prototype, 'toString'],
  [JSON, 'parse'],
  [JSON, 'stringify'],
] as const;

/** Loads something, then puts back what that has replaced. */
export const keepingNatives = async <T>(load: () => Promise<T>): Promise<T> => {
  const before = natives.map(([of, name]) => Object.getOwnPropertyDescriptor(of, name)!);
  const loaded = await load();
  natives.forEach(([of, name], i) => {
    Object.defineProperty(of, name, before[i]!);
  });
  return loaded;
};
