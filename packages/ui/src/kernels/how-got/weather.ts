import {
  colourById,
  DRUNK_LESS_ABOVE,
  type Frost,
  type FrostPart,
  filmOfWind,
  type HeatPart,
  REFUSED_ABOVE,
  STILL_AIR_FILM,
  STOPPING_ICE,
  sunRiseOfPipe,
  writeClock,
  writeDegrees,
  writeDuration,
  writeFrostBand,
  writeQuantity,
} from "@headfall/hydraulics";
import { sum, term } from "./expression.js";
import { type HowGot, soundSteps, stepOf, untold } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import type { HowSubject } from "./subject.js";
import { alwaysValid } from "./validity.js";

type FrostSubject = Extract<HowSubject, { of: "frostTime" }>;
type HeatSubject = Extract<HowSubject, { of: "heatPeak" }>;

const WHAT: Readonly<Record<FrostSubject["what"], string>> = {
  cold: "until its water is at the freezing point",
  blocked: "until it stops",
  solid: "until it is frozen through",
};

/** Hours of a part in the night of frost: cooling, then ice. */
export function howFrost(
  { room, figures: { system } }: HowRequest,
  { part: at, what }: FrostSubject,
): HowGot {
  const part = room.frost?.parts[at];
  const title = part === undefined ? WHAT[what] : `${quoted(part.id)}, ${WHAT[what]}`;
  const band = part?.[what];
  if (room.frost === undefined || part === undefined || band === undefined) return untold(title);
  const ice = band.soonest - part.cold.soonest;
  const write = (seconds: number) => writeDuration(seconds);
  const step = stepOf(
    WHAT[what],
    sum(
      term("cooling to the freezing point", part.cold.soonest, write(part.cold.soonest)),
      term("ice", ice, write(ice)),
    ),
    write,
  );
  return {
    title,
    result: writeFrostBand(band),
    steps: what === "cold" ? [] : soundSteps(step),
    valid: [alwaysValid("One air temperature all night", "the lowest, which errs on the cautious side")],
    notes: [...nightNotes(room.frost, system), ...lawNotes(part, what, system)],
    sources: sourcesOf(part, what),
  };
}

function nightNotes({ night, waterTemperature }: Frost, system: "metric" | "us"): string[] {
  const wind = writeQuantity(night.wind, "speed", system, 2);
  return [
    `Air ${writeDegrees(night.low, system)}, water ${writeDegrees(waterTemperature, system)} at dusk. The shorter time is for a wind of ${wind}, whose film takes ${filmOfWind(night.wind).toFixed(0)} W/(m² K), and little water; the longer for still air, ${STILL_AIR_FILM} W/(m² K), and full.`,
  ];
}

function lawNotes({ kind }: FrostPart, what: FrostSubject["what"], system: "metric" | "us"): string[] {
  const cooling = "Cooling: t = C/(U A) ln[(t_i − t_a)/(0 − t_a)], the water well mixed.";
  if (what === "cold") return [cooling];
  if (kind === "pipe")
    return [
      cooling,
      "Freezing through from the wall: t = ρ L/(−t_a) [D/(4 h) + D²/(16 k)] (Planck). In the ground: how fast a frost comes down to its depth.",
    ];
  if (what === "blocked" && kind !== "pin" && kind !== "bucket")
    return [
      cooling,
      `Ice of ${writeQuantity(STOPPING_ICE, "length", system, 2)} stops a beak: t = ρ L/(−t_a) [X/h + X²/(2 k)] (Stefan, with the film of air).`,
    ];
  return [
    cooling,
    "Least time to freeze through: t = ρ L V/(U A (−t_a)); ice that grows keeps the cold out, so it takes longer.",
  ];
}

function sourcesOf({ kind }: FrostPart, what: FrostSubject["what"]): string[] {
  if (what === "cold") return ["ashrae-fundamentals-2009"];
  if (kind === "pipe") return ["ashrae-fundamentals-2009", "planck-1913"];
  return ["ashrae-fundamentals-2009", what === "blocked" ? "stefan-1891" : "closed-form"];
}

/** How warm still water comes to be: the air and what the sun adds, late. */
export function howHeat(
  { room, figures: { system }, checked }: HowRequest,
  { part: at, side }: HeatSubject,
): HowGot {
  const part = room.heat?.parts[at];
  const words = side === "hottest" ? "at worst" : "to expect";
  const title =
    part === undefined ? `Warmest water, ${words}` : `Warmest water standing in ${quoted(part.id)}, ${words}`;
  if (room.heat === undefined || part === undefined) return untold(title);
  const { day } = room.heat;
  const { peak, at: when } = part[side];
  return {
    title,
    result: writeDegrees(peak, system),
    steps: [],
    valid: [
      alwaysValid("A clear day like the day before", "still water; birds that draw bring cooler water in"),
    ],
    notes: [
      ...(part.kind === "pipe" && checked !== undefined ? [riseNote(part, day, side)] : []),
      ...(part.waterer === undefined ? [] : [standingNote(part, side)]),
      `It follows the air and the sun ${writeDuration(part.timeConstant)} late (C/(U A)), and is warmest at ${writeClock(when)}.`,
      `Above ${writeDegrees(DRUNK_LESS_ABOVE, system)} birds drink less, above ${writeDegrees(REFUSED_ABOVE, system)} they refuse it.`,
    ],
    sources: ["kentucky-water-temperature", colourById(part.colour).citation.source, "closed-form"],
  };
}

/** Of a loose waterer: which water, and what sun, air and drying do to it. */
function standingNote({ kind }: HeatPart, side: HeatSubject["side"]): string {
  const which =
    kind === "fount"
      ? side === "hottest"
        ? "The water in its ring alone, as while nobody drinks, or all of it where that is warmer. "
        : "All of its water, mixed. "
      : "";
  return `${which}Step by step: sun on its open water and its walls, air all around, and what drying takes, with the night's lowest as dew point.`;
}

function riseNote(
  part: HeatPart,
  day: { readonly sun: number; readonly wind: number },
  side: HeatSubject["side"],
): string {
  const colour = colourById(part.colour);
  const film = side === "hottest" ? STILL_AIR_FILM : filmOfWind(day.wind);
  const absorptance = side === "hottest" ? colour.absorptanceHigh : colour.absorptance;
  const rise = sunRiseOfPipe({ absorptance, film }, (1 - part.shade) * day.sun);
  return `Over ground the noon sun adds a G/(π h) = ${absorptance} × ${Math.round((1 - part.shade) * day.sun)} W/m² / (π × ${film.toFixed(0)} W/(m² K)) = ${rise.toFixed(0)} K to the air; under ground the day's wave is damped with depth.`;
}
