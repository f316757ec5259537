/** The strip that a stem is sewn from, as it is cut, mm: our own measure. Sewn lengthwise and turned it is a loop about 10 mm wide. */
export const STEM = { length: 60, width: 30 };
