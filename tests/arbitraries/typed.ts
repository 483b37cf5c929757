import type { Random } from "../../packages/hydraulics/src/numerics/random.js";

/** Choices by number, and quantities written as keepers of either system would type them. */
export interface Chooser {
  uniform(low: number, high: number): number;
  /** Evenly in the logarithm. */
  spread(low: number, high: number): number;
  whole(low: number, high: number): number;
  chance(share: number): boolean;
  oneOf<T>(list: readonly T[]): T;
  length(metres: number): string;
  head(metres: number): string;
  flow(cubicMetresPerSecond: number): string;
  volume(cubicMetres: number): string;
  temperature(celsius: number): string;
  time(seconds: number): string;
  area(squareMetres: number): string;
  share(part: number): string;
}

const FOOT = 0.3048;
const INCH = 0.0254;
/** Pascals in a metre of conventional water; exact, nist-sp-811. */
const PASCALS = 9806.65;
const GALLON = 0.003785411784;

export function chooserOf(random: Random): Chooser {
  const uniform = (low: number, high: number) => low + (high - low) * random.uniform();
  const whole = (low: number, high: number) => low + random.integerBelow(high - low + 1);
  const oneOf = <T>(list: readonly T[]): T => list[random.integerBelow(list.length)] as T;
  const length = (m: number) =>
    oneOf([
      () => `${m.toFixed(4)} m`,
      () => `${(m * 100).toFixed(2)} cm`,
      () => `${(m * 1000).toFixed(1)} mm`,
      () => `${(m / FOOT).toFixed(4)} ft`,
      () => `${(m / INCH).toFixed(3)} in`,
      () => feetAndInches(m),
    ])();
  const head = (m: number) =>
    oneOf([() => length(m), () => `${(m * PASCALS).toFixed(2)} Pa`, () => `${m.toFixed(4)} mH2O`])();
  return {
    uniform,
    whole,
    oneOf,
    length,
    spread: (low, high) => low * (high / low) ** random.uniform(),
    chance: (share) => random.uniform() < share,
    head: (m) => (random.uniform() < 0.8 ? length(m) : head(m)),
    flow: (q) =>
      oneOf([
        () => `${(q * 6e7).toFixed(3)} mL/min`,
        () => `${(q * 3.6e6).toFixed(4)} L/h`,
        () => `${((q / GALLON) * 60).toFixed(6)} gpm`,
      ])(),
    volume: (v) => oneOf([() => `${(v * 1000).toFixed(4)} L`, () => `${(v / GALLON).toFixed(5)} gal`])(),
    time: (t) => oneOf([() => `${(t / 3600).toFixed(3)} h`, () => `${(t / 86_400).toFixed(4)} days`])(),
    area: (a) => oneOf([() => `${a.toFixed(3)} m2`, () => `${(a / FOOT ** 2).toFixed(2)} ft2`])(),
    share: (part) => `${(100 * part).toFixed(1)} %`,
    temperature: (c) => oneOf([() => `${c.toFixed(1)} degC`, () => `${((c * 9) / 5 + 32).toFixed(2)} °F`])(),
  };
}

/** "2 ft 6.25 in": feet and what is left in inches. */
function feetAndInches(metres: number): string {
  const inches = Number((Math.abs(metres) / INCH).toFixed(2));
  const feet = Math.floor(inches / 12);
  const rest = (inches - 12 * feet).toFixed(2);
  return `${metres < 0 ? "-" : ""}${feet} ft ${rest} in`;
}
