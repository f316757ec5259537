/** Advance widths of the printable ASCII characters in Source Sans 3, in thousandths of an em, from the space on. */
const REGULAR = widths(`
  200 289 426 497 497 824 609 249 303 303 418 497 249 311 249 350
  497 497 497 497 497 497 497 497 497 497 249 249 497 497 497 425
  847 543 588 571 615 527 494 617 652 263 479 579 486 727 647 664
  566 664 569 534 536 645 515 786 513 476 539 303 350 303 497 500
  542 504 553 456 555 496 292 504 544 246 247 495 255 829 547 542
  555 555 347 419 338 544 467 719 446 467 425 303 241 303 497`);

const SEMIBOLD = widths(`
  200 315 482 513 513 841 639 275 324 324 438 513 275 322 275 344
  513 513 513 513 513 513 513 513 513 513 275 275 513 513 513 444
  875 558 597 576 625 538 510 628 663 282 494 597 502 745 657 674
  582 674 592 545 546 655 536 800 541 501 540 324 344 324 513 500
  549 516 563 462 564 507 317 520 558 262 263 522 271 843 560 549
  564 564 373 431 361 556 495 748 481 495 443 324 255 324 513`);

/** Letters beyond ASCII are taken as wide as a broad lower-case letter, and those of East Asia as a full em. */
const OTHER = 0.65;
const FULL = 1;
const FULL_FROM = 0x2e80;

/**
 * How long a line of text runs, in ems. Exact but for kerning where the letters are ASCII and the typeface is the
 * project's own; beyond that an estimate on the wide side.
 */
export const textWidth = (text: string, bold = false): number => {
  const table = bold ? SEMIBOLD : REGULAR;
  let sum = 0;
  for (const character of text) {
    const code = character.codePointAt(0)!;
    sum += table[code - 32] ?? (code === 0xb7 ? 0.275 : code >= FULL_FROM ? FULL : OTHER);
  }
  return sum;
};

function widths(list: string): readonly number[] {
  return list
    .trim()
    .split(/\s+/)
    .map((n) => Number(n) / 1000);
}
