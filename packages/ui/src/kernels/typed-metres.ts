import { readQuantity } from "@headfall/hydraulics";

/** A typed length in metres; undefined when it cannot be read or is not there. */
export function readMetres(typed: unknown): number | undefined {
  const read = readQuantity(typed, "length");
  return read.ok ? read.quantity.si : undefined;
}

/** A typed length in metres; 0 when it cannot be read or is not there. */
export const metresOf = (typed: unknown): number => readMetres(typed) ?? 0;
