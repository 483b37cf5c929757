/** A number read from the front of a text, or why none could be. */
export type NumberRead =
  | { readonly ok: true; readonly value: number; readonly length: number }
  | { readonly ok: false; readonly why: "none" | "ambiguous-comma" | "too-large" };

/** Larger numbers, and exponents beyond, are slips of the hand. */
const LARGEST = 1e15;
const LARGEST_EXPONENT = 15;

const MIXED = /^(\d{1,9})(?: +| ?- ?)(\d{1,9}) ?\/ ?(\d{1,9})(?![\d.,])/;
const FRACTION = /^(\d{1,9}) ?\/ ?(\d{1,9})(?![\d.,])/;
const SPACED = /^\d{1,3}(?: \d{3})+(?!\d)(?:[.,]\d+)?/;
const PLAIN = /^(?:\d[\d.,]*|\.\d+)/;
const EXPONENT = /^e([+-]?\d+)/i;

/**
 * The number, without sign, at the front of a text.
 *
 * Read: 3, 3.5, .5, 3/4, 1 1/4, 1-1/4, 1 000, 1e3, and commas by this rule. A comma is a decimal comma unless exactly
 * three digits follow it. Before exactly three digits it is a thousands comma when they are 000, when another
 * comma or a decimal point makes that plain ("1,250,500", "1,250.5"), and a decimal comma after a lone 0 ("0,125").
 * Anything else ("1,250") could be either and is refused. With thousands points the comma is decimal ("1.250,5").
 *
 * @param text  normalised: ASCII digits, plain spaces, "/" for fractions
 * @returns the value with the count of characters used, or why not
 */
export function readNumber(text: string): NumberRead {
  const mixed = MIXED.exec(text);
  if (mixed) return withFraction(Number(mixed[1]), [Number(mixed[2]), Number(mixed[3])], mixed[0]);
  const part = FRACTION.exec(text);
  if (part) return withFraction(0, [Number(part[1]), Number(part[2])], part[0]);
  const spaced = SPACED.exec(text);
  if (spaced) return plain(spaced[0].replaceAll(" ", "").replace(",", "."), spaced[0].length, text);
  const written = PLAIN.exec(text)?.[0].replace(/[.,]+$/, "");
  if (!written) return { ok: false, why: "none" };
  const settled = settleCommas(written);
  if (settled === "ambiguous") return { ok: false, why: "ambiguous-comma" };
  return settled === undefined ? { ok: false, why: "none" } : plain(settled, written.length, text);
}

function withFraction(
  whole: number,
  [top, bottom]: readonly [number, number],
  { length }: string,
): NumberRead {
  if (bottom === 0) return { ok: false, why: "none" };
  return { ok: true, value: whole + top / bottom, length };
}

/** The text with a decimal point and no thousands marks; undefined when it is no number. */
function settleCommas(written: string): string | "ambiguous" | undefined {
  if (/^\d*\.?\d+$/.test(written)) return written;
  if (/^\d{1,3}(\.\d{3})+,\d+$/.test(written)) return written.replaceAll(".", "").replace(",", ".");
  if (/^[1-9]\d{0,2}(,\d{3})+\.\d+$/.test(written)) return written.replaceAll(",", "");
  if (/^[1-9]\d{0,2}(,\d{3}){2,}$/.test(written)) return written.replaceAll(",", "");
  if (/^[1-9]\d{0,2},000$/.test(written)) return written.replace(",", "");
  if (/^[1-9]\d{0,2},\d{3}$/.test(written)) return "ambiguous";
  return /^\d+,\d+$/.test(written) ? written.replace(",", ".") : undefined;
}

function plain(written: string, length: number, text: string): NumberRead {
  const exponent = EXPONENT.exec(text.slice(length));
  if (exponent && Math.abs(Number(exponent[1])) > LARGEST_EXPONENT) return { ok: false, why: "too-large" };
  const value = Number(`${written}${exponent?.[0] ?? ""}`);
  if (!Number.isFinite(value) || value > LARGEST) return { ok: false, why: "too-large" };
  return { ok: true, value, length: length + (exponent?.[0].length ?? 0) };
}
