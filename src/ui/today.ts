/** The day on the wearer's own calendar, as 2026-11-25. */
export const today = (): string => {
  const day = new Date();
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
};
