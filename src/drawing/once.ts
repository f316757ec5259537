/** What is made only if it is asked for, and then once. */
export const once = <T>(make: () => T): (() => T) => {
  let made: { readonly it: T } | null = null;
  return () => {
    made ??= { it: make() };
    return made.it;
  };
};
