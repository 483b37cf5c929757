import { type MomentName, writeMargin, writeMass, writeQuantity, writeVelocity } from "@headfall/hydraulics";
import { trimmed, type UnitSystem } from "../typed-quantity.js";
import { FOOT, INCH, POUND, US_GALLON } from "../us-units.js";

/** What stands where a line that could not be solved has no figure. */
const NO_FIGURE = "no figure";

/** The moments, as they stand behind a comma. */
export const AT_MOMENT: Readonly<Record<MomentName, string>> = {
  fullIdle: "full and idle",
  fullBusiest: "full and busiest",
  lowestBusiest: "lowest and busiest",
  ordinary: "in an ordinary hour",
};

/** Numbers with their units, in the system asked for; more figures than on the page, so that a sum can be followed. */
export interface Figures {
  readonly system: UnitSystem;
  /** As the page shows it. */
  head(value: number): string;
  flow(value: number): string;
  length(value: number): string;
  volume(value: number): string;
  area(value: number): string;
  mass(value: number): string;
  velocity(value: number): string;
  margin(value: number): string;
  /** What one law gives more or less than the other. */
  headDifference(value: number): string;
  flowDifference(value: number): string;
  /** For use inside a formula. */
  lengthIn(value: number): string;
  flowIn(value: number): string;
  volumeIn(value: number): string;
  velocityIn(value: number): string;
  viscosity(value: number): string;
  viscosityDynamic(value: number): string;
  density(value: number): string;
  gravity(value: number): string;
  temperature(valueC: number): string;
  /** A writer for lengths that are added up: all in one unit, chosen by the largest. */
  alike(...values: number[]): (value: number) => string;
  /** The unit that laws of head are stated at: 1 m, or 1 ft. */
  readonly unitHead: number;
}

/** A bare number to so many significant figures, without a power of ten. */
export function bare(value: number, figures = 4): string {
  if (!Number.isFinite(value)) return NO_FIGURE;
  const rounded = Number(value.toPrecision(figures));
  const size = Math.abs(rounded);
  return size !== 0 && (size < 1e-4 || size >= 1e6) ? withPowerOfTen(rounded) : plain(rounded);
}

function withPowerOfTen(value: number): string {
  const exponent = Math.floor(Math.log10(Math.abs(value)));
  const digits = Number((value / 10 ** exponent).toPrecision(4));
  return `${digits} × 10^${exponent < 0 ? `(−${-exponent})` : exponent}`;
}

/** With a comma between thousands, as long numbers are read. */
function plain(value: number): string {
  const [whole = "0", decimals] = String(value === 0 ? 0 : value).split(".");
  const grouped = whole.replace(/\B(?=(\d{3})+(?!\d))/g, ",");
  return decimals === undefined ? grouped : `${grouped}.${decimals}`;
}

/** A share as per cent, rounded down so that nothing short of all is called 100 %. */
export const percent = (share: number): string => `${Math.floor(share * 100 + 1e-9)} %`;

export const figuresIn = (system: UnitSystem): Figures => ({
  system,
  ...shownFigures(system),
  ...figuresInFormulas(system, system === "us"),
});

type Writer = (value: number) => string;

const orNone =
  (write: Writer): Writer =>
  (value) =>
    Number.isFinite(value) ? write(value) : NO_FIGURE;

/** Figures as the page shows them. */
const shownFigures = (system: UnitSystem) => ({
  head: orNone((value) => writeQuantity(value, "head", system)),
  flow: orNone((value) => writeQuantity(Math.abs(value), "flow", system, 2)),
  length: orNone((value) => writeQuantity(value, "length", system)),
  volume: orNone((value) => writeQuantity(value, "volume", system)),
  area: orNone((value) => writeQuantity(value, "area", system)),
  mass: orNone((value) => writeMass(value, system)),
  velocity: orNone((value) => writeVelocity(value, system)),
  margin: orNone((value) => writeMargin(value, system)),
  headDifference: orNone((value) => (Math.abs(value) < 1e-7 ? "the same" : writeMargin(value, system))),
  flowDifference: orNone((value) =>
    Math.abs(value) < 1e-12
      ? "the same"
      : `${value < 0 ? "-" : "+"}${writeQuantity(Math.abs(value), "flow", system, 2)}`,
  ),
});

/** Figures with more places than are shown, so that a sum can be followed. */
function figuresInFormulas(system: UnitSystem, isUs: boolean) {
  const unit = (metric: [string, number], us: [string, number]) => {
    const [symbol, size] = isUs ? us : metric;
    return orNone((value) => `${bare(value / size)} ${symbol}`);
  };
  return {
    lengthIn: orNone((value) =>
      isUs && Math.abs(value) >= FOOT
        ? `${bare(value / FOOT)} ft`
        : writeQuantity(value, "length", system, 4),
    ),
    flowIn: orNone((value) => writeQuantity(Math.abs(value), "flow", system, 4)),
    volumeIn: orNone((value) => writeQuantity(value, "volume", system, 4)),
    velocityIn: unit(["m/s", 1], ["ft/s", FOOT]),
    viscosity: unit(["mm²/s", 1e-6], ["in²/s", INCH ** 2]),
    viscosityDynamic: unit(["mPa s", 1e-3], ["lb/(ft s)", POUND / FOOT]),
    density: unit(["kg/m³", 1], ["lb/gal", POUND / US_GALLON]),
    gravity: unit(["m/s²", 1], ["ft/s²", FOOT]),
    temperature: orNone((value) => writeQuantity(value, "temperature", system)),
    alike: (...values: number[]): Writer => {
      const most = Math.max(0, ...values.filter(Number.isFinite).map(Math.abs));
      const [symbol, size, decimals] = unitOfSum(most, isUs);
      return orNone((value) => `${trimmed(value / size, decimals).replace(/^-0$/, "0")} ${symbol}`);
    },
    unitHead: isUs ? FOOT : 1,
  };
}

function unitOfSum(most: number, isUs: boolean): [string, number, number] {
  if (isUs) return most < 10 ? ["in", INCH, most < 4 * INCH ? 3 : 2] : ["ft", FOOT, 3];
  if (most < 0.1) return ["mm", 1e-3, 2];
  return most < 10 ? ["cm", 0.01, 2] : ["m", 1, 3];
}
