/** Whether two pieces of plain data say the same, all the way down. */
export const sameData = (a: unknown, b: unknown): boolean => {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a)) {
    if (!Array.isArray(b) || a.length !== b.length) return false;
    for (let i = 0; i < a.length; i++) if (!sameData(a[i], b[i])) return false;
    return true;
  }
  if (Array.isArray(b)) return false;
  const [p, q] = [a as Record<string, unknown>, b as Record<string, unknown>];
  for (const key in p) if (!sameData(p[key], q[key])) return false;
  for (const key in q) if (!(key in p)) return false;
  return true;
};
