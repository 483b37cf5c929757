import type { BuildSheet, BuildStep, HeightMark, JugTest } from "../../judge/build/build-sheet.js";
import type { HoleToDrill, Part } from "../../judge/build/part-list.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import { writeNames } from "../name-ranges.js";
import { writeVolume } from "../words.js";

const PART_WORDS: Readonly<Record<Part["kind"], string>> = {
  vessel: "vessel",
  bulkhead: "bulkhead fitting for the outlet",
  vent: "vent",
  screen: "mosquito screen, 16 to 18 mesh",
  tap: "tap",
  oneWay: "one-way valve",
  regulator: "low-pressure regulator",
  floatValve: "float valve",
  fitting: "fitting",
  tee: "tee",
  joiner: "coupling",
  endCap: "end cap or plug, to be opened for rinsing",
  bleed: "bleed or riser vent",
  drinker: "drinker",
  waterer: "loose waterer",
};

/**
 * What a part is called, with its size.
 *
 * @example writePart(sheet.parts[0])   // "Bucket, 5 US gal, outlet in the bottom"
 */
export function writePart({ kind, name, size, id }: Part): string {
  const words =
    kind === "joiner" && id.startsWith("reducer") ? "reducing coupling" : (name ?? PART_WORDS[kind]);
  return size === undefined ? words : `${words}, ${size}`;
}

/** Why a part is in the list, in words. */
export const BASIS_WORDS: Readonly<Record<Part["basis"], string>> = {
  typed: "in the plan",
  implied: "the line needs it",
  advised: "advised: air stays there without it",
};

/**
 * Why this part is in the list: what is advised says what it is for.
 *
 * @example writeBasis({ kind: "tap", basis: "advised" })   // "advised: without it the vessel cannot be shut"
 */
export const writeBasis = ({ kind, basis }: Pick<Part, "kind" | "basis">): string =>
  kind === "tap" && basis === "advised"
    ? "advised: without it the vessel cannot be shut"
    : BASIS_WORDS[basis];

/**
 * A price with its money.
 *
 * @example writePrice(12.5, "EUR")   // "12.50 EUR"
 */
export const writePrice = (price: number, money: string | undefined): string =>
  `${price.toFixed(2)}${money === undefined ? "" : ` ${money}`}`;

/**
 * What all costs, and what has no price.
 *
 * @example writePriceLine(sheet)   // []
 */
export function writePriceLine({ price, strayPrices }: BuildSheet): string[] {
  if (price.sum === 0 && strayPrices.length === 0) return [];
  const left =
    price.unpriced === 0
      ? ""
      : `, without ${price.unpriced} that ${price.unpriced === 1 ? "has" : "have"} no price in the plan`;
  return [
    ...(price.sum === 0
      ? []
      : [
          `All that is to be bought: ${writePrice(price.sum, price.money)}${left}. What is advised is not in it.`,
        ]),
    ...(strayPrices.length === 0
      ? []
      : [`No part of this plan is called ${strayPrices.join(", ")}: that price is not used.`]),
  ];
}

/** A drill: mm, or inches to 1/64. */
export function writeDrill(metres: number, system: UnitSystem): string {
  if (system === "metric") return `${Number((metres * 1000).toFixed(1))} mm`;
  const parts = Math.round((metres / 0.0254) * 64);
  let [top, bottom] = [parts % 64, 64];
  const whole = Math.floor(parts / 64);
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  if (top === 0) return `${whole} in`;
  return whole === 0 ? `${top}/${bottom} in` : `${whole} ${top}/${bottom} in`;
}

/**
 * A hole to drill, its thread, and where.
 *
 * @example writeHole(sheet.holes[0], "metric")   // "1 of 32 mm for bulkhead fitting, 1/2 in (bucket); patterns ..."
 */
export function writeHole({ hole, thread, count, where }: HoleToDrill, system: UnitSystem): string {
  const drill = (metres: number) => writeDrill(metres, system);
  const threaded =
    thread === undefined
      ? ""
      : ` Its thread: ${thread.name}, ${drill(thread.major)} outside, ${thread.perInch} to the inch.`;
  return `${count} of ${drill(hole.hole)} for ${hole.name} (${where.join(", ")}); patterns want ${drill(hole.holeLow)} to ${drill(hole.holeHigh)}.${threaded}`;
}

/** What holes and threads rest on. */
export const HOLES_NOTE =
  "Holes and threads are from memory and patterns differ: measure the fitting in your hand before you drill. Inch pipe threads and hose threads do not fit each other.";

const MARK_NAMES: Readonly<Record<HeightMark["kind"], string>> = {
  standTop: "top of the stand of",
  outlet: "outlet of",
  end: "pipe at",
  survey: "pipe at",
  drinker: "drinker",
};

/**
 * Drinkers at one height on one run are one line; everything else is told one by one.
 *
 * @example gatherMarks(sheet.heights).length   // 7
 */
export function gatherMarks(
  heights: readonly HeightMark[],
): { readonly words: string; readonly mark: HeightMark }[] {
  const groups = new Map<string, HeightMark[]>();
  for (const mark of heights) {
    const height = `${Math.round(mark.height * 1000)} ${Math.round(mark.aboveGround * 1000)}`;
    const key = mark.kind === "drinker" ? `${mark.run} ${height}` : `${mark.kind} ${mark.name} ${height}`;
    groups.set(key, [...(groups.get(key) ?? []), mark]);
  }
  return [...groups.values()].map((marks) => {
    const [mark] = marks;
    const name = mark.kind === "drinker" ? writeNames(marks.map((each) => each.name)) : mark.name;
    return {
      words: `${mark.kind === "drinker" && marks.length > 1 ? "drinkers" : MARK_NAMES[mark.kind]} ${name}`,
      mark,
    };
  });
}

const DEVICE_WORDS = { tap: "tap", oneWay: "one-way valve", regulator: "regulator" } as const;

/**
 * One step, as an order.
 *
 * @example writeStep({ code: "rinse", ends: ["line"] }, "metric")   // "Leave line open, let a first bucketful of water run through ..."
 */
export function writeStep(step: BuildStep, system: UnitSystem): string {
  const length = (metres: number) => writeQuantity(metres, "length", system);
  switch (step.code) {
    case "setStand":
      return `Set the stand of ${step.source} level and firm, ${length(step.stand)} high${step.feet > 0 ? `, on ${step.feet} feet` : ""}. Brace it before anything stands on it.`;
    case "drillVessel":
      return `Drill ${step.source} with its outlet's middle ${length(step.outlet)} above the inside bottom${step.outlets > 1 ? ` (${step.outlets} outlets)` : ""}, fit the bulkhead, and tie the empty vessel down.`;
    case "layRun":
      return `Lay ${step.run} from ${step.from} to ${step.to}: ${length(step.length)} of ${step.pipe}${step.pieces > 1 ? ` in ${step.pieces} pieces` : ""}${devices(step)}.`;
    case "setDrinkers":
      return step.group === step.run
        ? `Set the ${step.count} drinkers of ${step.run}.`
        : `Set the ${step.count} drinkers of ${step.group} on ${step.run}.`;
    case "closeRing":
      return `${step.run} closes a ring: join its last end when both sides lie at their marks.`;
    case "rinse":
      return `Leave ${step.ends.length === 0 ? "the ends" : writeNames(step.ends)} open, let a first bucketful of water run through until no chips or dust come, then close ${step.ends.length === 1 ? "it" : "from upstream to downstream"}.`;
    case "fill":
      return `Fill ${writeNames(step.sources)} slowly, the hose's mouth above the water.`;
    case "bleed":
      return step.hasBleed
        ? `Open the bleed at ${step.point} until water comes without air, then shut it.`
        : `Let the air out at ${step.point}: it stays there by itself. Loosen a joint or fit a bleed.`;
    case "leakTest":
      return `Wait an hour with all taps open and nobody drinking (the line holds ${writeVolume(step.volume, system)}): no joint is wet, no drinker drips, the level stands.`;
    case "jugTest":
      return `Hold ${writeNames(step.drinkers)} open one after the other with jug and watch, and compare.`;
    case "letBirdsIn":
      return "Only then let the birds to it, and watch until each has drunk.";
  }
}

function devices(step: Extract<BuildStep, { code: "layRun" }>): string {
  const list = [
    ...step.devices.map((each) => DEVICE_WORDS[each]),
    ...step.fittings.map(({ name, count }) => (count === 1 ? name : `${count} of ${name}`)),
  ];
  return list.length === 0 ? "" : `, with ${list.join("; ")}`;
}

const ROLE_WORDS = { first: "nearest", last: "farthest", worst: "worst" } as const;

/** Whole jugs are read to about a twentieth. */
const jugful = (volume: number, system: UnitSystem): string => writeQuantity(volume, "volume", system, 2);

/**
 * One drinker held open: what to expect, and what would be wrong.
 *
 * @example writeJug(sheet.jugs[0], "metric")   // "line 1 (nearest, worst): 190 mL in 2 min; between 140 mL ..."
 */
export function writeJug(
  { drinker, roles, seconds, volume, low, high, needed }: JugTest,
  system: UnitSystem,
): string {
  const role = roles.map((each) => ROLE_WORDS[each]).join(", ");
  const time = seconds < 120 ? `${seconds} s` : `${seconds / 60} min`;
  if (volume <= 0) return `${drinker} (${role}): nothing comes, as the plan stands.`;
  const need = needed <= 0 ? "" : ` It needs ${jugful(needed, system)}.`;
  return `${drinker} (${role}): ${jugful(volume, system)} in ${time}; between ${jugful(low, system)} and ${jugful(high, system)} is as it should be.${need}`;
}

/** How the test with jug and watch is done, and what its band means. */
export const JUG_NOTE =
  "Source full, line bled, one drinker held open and nobody at the others. The band holds nine of ten lines that fit the measurements.";
