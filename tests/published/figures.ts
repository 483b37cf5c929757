import { type QuantityKind, readQuantity } from "../../packages/hydraulics/src/units/quantity.js";

/** What a figure measures: the library's kinds, and those only books need. */
export type Kind = QuantityKind | keyof typeof BOOK_UNITS | "plain";

/** A computed figure, SI. */
export interface Figure {
  readonly kind: Kind;
  readonly si: number;
}

const POUND = 0.45359237;
const FOOT = 0.3048;

/** Units that appear in books but in no plan, by what they measure; factors to SI exact by definition (nist-sp-811). */
const BOOK_UNITS = {
  velocity: { "m/s": 1, "ft/s": FOOT },
  viscosity: { "m2/s": 1, "ft2/s": FOOT ** 2 },
  viscosityDynamic: { "Pa s": 1, cP: 1e-3, "uPa s": 1e-6, "lb/ft/s": POUND / FOOT },
  density: { "kg/m3": 1, "lb/ft3": POUND / FOOT ** 3 },
  pressure: {
    Pa: 1,
    kPa: 1e3,
    bar: 1e5,
    psi: (POUND * 9.80665) / 0.0254 ** 2,
    psf: (POUND * 9.80665) / FOOT ** 2,
  },
  surfaceTension: { "mN/m": 1e-3 },
  mass: { kg: 1, lb: POUND },
} as const satisfies Record<string, Record<string, number>>;

const isBookKind = (kind: Kind): kind is keyof typeof BOOK_UNITS => kind in BOOK_UNITS;

/** One unit of a kind, in SI. */
function unitSize(unit: string, kind: Kind): number {
  if (kind === "plain") {
    if (unit !== "") throw new Error(`a plain number has no unit, found "${unit}"`);
    return 1;
  }
  if (isBookKind(kind)) {
    const size = (BOOK_UNITS[kind] as Record<string, number>)[unit];
    if (size === undefined) throw new Error(`"${unit}" is no unit of ${kind}`);
    return size;
  }
  return siOf(`1 ${unit}`, kind);
}

function siOf(typed: string, kind: QuantityKind): number {
  const read = readQuantity(typed, kind);
  if (!read.ok) throw new Error(`"${typed}" is no ${kind}: ${read.mend}`);
  return read.quantity.si;
}

/** A printed figure as number and unit. */
export function splitFigure(printed: number | string): { readonly value: number; readonly unit: string } {
  if (typeof printed === "number") return { value: printed, unit: "" };
  const found = /^([-+]?[\d.]+(?:e[-+]?\d+)?)\s+(.+)$/.exec(printed);
  if (found === null) throw new Error(`"${printed}" is not a number and a unit`);
  return { value: Number(found[1]), unit: found[2]! };
}

/** A computed figure in the unit of a printed one. */
export function inUnit(figure: Figure, unit: string): number {
  return figure.si / unitSize(unit, figure.kind);
}

/** What a case gives, read by name. A name that is missing or of another kind is an error of the case. */
export class Givens {
  constructor(private readonly given: Readonly<Record<string, unknown>>) {}

  has(name: string): boolean {
    return this.given[name] !== undefined;
  }

  number(name: string): number {
    const value = this.given[name];
    if (typeof value !== "number")
      throw new Error(`${name}: expected a number, found ${JSON.stringify(value)}`);
    return value;
  }

  text(name: string): string {
    const value = this.given[name];
    if (typeof value !== "string")
      throw new Error(`${name}: expected a text, found ${JSON.stringify(value)}`);
    return value;
  }

  /** In SI. */
  measure(name: string, kind: Exclude<Kind, "plain">): number {
    const typed = this.text(name);
    if (!isBookKind(kind)) return siOf(typed, kind);
    const { value, unit } = splitFigure(typed);
    return value * unitSize(unit, kind);
  }

  list(name: string): readonly Givens[] {
    return ((this.given[name] ?? []) as Record<string, unknown>[]).map((one) => new Givens(one));
  }

  members(name: string): readonly string[] {
    return Object.keys((this.given[name] ?? {}) as object);
  }

  of(name: string): Givens {
    return new Givens((this.given[name] ?? {}) as Record<string, unknown>);
  }

  raw(name: string): unknown {
    return this.given[name];
  }
}
