import { type QuantityKind, readQuantity } from "../units/quantity.js";

/** An option that is a quantity, and what it may be in SI. */
export interface Asking {
  readonly option: string;
  readonly kind: QuantityKind;
  readonly least: number;
  readonly most: number;
  readonly words: string;
  /** Unit of a bare number; none unless given. */
  readonly bare?: string;
}

/** Reads options that are quantities with their units, or says in one sentence what is wrong with the first. */
export function readAsked<Name extends string>(
  own: Readonly<Record<string, string | undefined>>,
  asked: Readonly<Record<Name, Asking>>,
): { readonly values: { readonly [name in Name]?: number } } | { readonly fault: string } {
  const values: { [name in Name]?: number } = {};
  for (const name of Object.keys(asked) as Name[]) {
    const { option, kind, least, most, words, bare } = asked[name];
    const typed = own[option];
    if (typed === undefined) continue;
    const read = readQuantity(
      bare !== undefined && /^[\d.]+$/.test(typed) ? `${typed} ${bare}` : typed,
      kind,
    );
    if (!read.ok) return { fault: `--${option}: found ${read.found}. ${read.allowed} ${read.mend}` };
    const { si } = read.quantity;
    if (si < least || si > most)
      return { fault: `--${option}: found ${JSON.stringify(typed)}. It is ${words}.` };
    values[name] = si;
  }
  return { values };
}
