/**
 * Words with each number in them kept beside its unit: "45.7 cm to 61 cm" may break before or after "to" only.
 *
 * @example wholeQuantities("45.7 cm to 61 cm")   // "45.7\u00a0cm to 61\u00a0cm"
 */
export const wholeQuantities = (words: string): string =>
  words.replace(/(\d) (?=[^\s\d])(?!to )/g, "$1\u00a0");
