/** Whether two pieces of plain data say the same. */
export const same = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const [left, right] = [Object.entries(a), b as Readonly<Record<string, unknown>>];
  return (
    left.length === Object.keys(b).length &&
    left.every(([key, value]) => key in right && same(value, right[key]))
  );
};
