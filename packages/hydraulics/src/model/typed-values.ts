import { DEFAULTS, type DefaultName } from "../document/defaults.js";
import { type QuantityKind, readQuantity } from "../units/quantity.js";

/** A default that was used, and where the plan would have said otherwise. */
export interface DefaultUsed {
  /** For instance `runs[0].pipe`. */
  readonly path: string;
  readonly value: string;
  readonly because: string;
}

/** Turns typed quantities into SI and keeps a list of the defaults that had to stand in. */
export interface TypedValues {
  readonly used: DefaultUsed[];
  /** SI of a typed quantity; the plan has been read, so it is readable. */
  si(typed: string, kind: QuantityKind): number;
  /** SI of what was typed, or of the default, which is then noted at `path`. */
  siOr(typed: string | undefined, kind: QuantityKind, fallback: DefaultName, path: string): number;
  note(fallback: DefaultName, path: string, value?: string): void;
}

export function createTypedValues(): TypedValues {
  const used: DefaultUsed[] = [];
  const si = (typed: string, kind: QuantityKind) => {
    const read = readQuantity(typed, kind);
    if (!read.ok)
      throw new TypeError(
        `buildLine: ${JSON.stringify(typed)} is no ${kind}; only plans from readPlan or checkDocument can be built`,
      );
    return read.quantity.si;
  };
  const note = (fallback: DefaultName, path: string, value: string = DEFAULTS[fallback].typed) => {
    used.push({ path, value, because: DEFAULTS[fallback].because });
  };
  const siOr = (typed: string | undefined, kind: QuantityKind, fallback: DefaultName, path: string) => {
    if (typed !== undefined) return si(typed, kind);
    note(fallback, path);
    return si(DEFAULTS[fallback].typed, kind);
  };
  return { used, si, siOr, note };
}
