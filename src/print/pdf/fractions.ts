const WHOLE_SIGNS: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};
const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const LOWERED = '₀₁₂₃₄₅₆₇₈₉';
const FRACTION_SLASH = '⁄';

/** Fractions of an inch as a ruler has them (halves to thirty-seconds), set as fractions: "21 1/2 in" as "21½ in". */
export const setFractions = (text: string): string =>
  text.replace(FRACTION, (all, whole: string | undefined, over: string, under: string) => {
    if (Number(over) >= Number(under)) return all;
    const sign = WHOLE_SIGNS[`${over}/${under}`];
    return (
      (whole?.trim() ?? '') + (sign ?? `${shifted(over, RAISED)}${FRACTION_SLASH}${shifted(under, LOWERED)}`)
    );
  });
const FRACTION = /(?<![\d/.])(\d+ )?(\d{1,2})\/(2|4|8|16|32)(?= in\b)/g;

const shifted = (figures: string, alphabet: string): string =>
  [...figures].map((figure) => alphabet[Number(figure)]).join('');

/** A line of text as it is printed: letters and their accents in one, fractions as fractions. */
export const setText = (text: string): string => setFractions(text.normalize('NFC'));
