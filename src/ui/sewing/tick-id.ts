/** Another style is another cap: its steps are ticked off for themselves. */
export const tickId = (style: string, step: string): string => `${style}/${step}`;
