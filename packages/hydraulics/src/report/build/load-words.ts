import type { BuildSheet, StandLoad } from "../../judge/build/build-sheet.js";
import { GUST } from "../../judge/build/stand-loads.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import { writeAge } from "../birds/bird-sentences.js";
import { birdsCalled } from "../birds/birds-called.js";
import { writeRain } from "../time/rain-text.js";
import { POUND, writeMass, writeVolume } from "../words.js";
import { writeDrill } from "./build-words.js";

const PSF = (POUND * 9.80665) / 0.3048 ** 2;
const MPH = 1609.344 / 3600;

const figures = (value: number, digits: number): string => String(Number(value.toPrecision(digits)));

/** A pressure on soil: kPa, or pounds a square foot. */
const writePressure = (pressure: number, system: UnitSystem): string =>
  system === "us"
    ? `${Math.round(pressure / PSF).toLocaleString("en-GB")} lb/ft²`
    : `${figures(pressure / 1000, 2)} kPa`;

/** A wind: km/h, or miles an hour. */
const writeWind = (speed: number, system: UnitSystem): string =>
  system === "us" ? `${Math.round(speed / MPH)} mph` : `${Math.round(speed * 3.6)} km/h`;

/** A tilt: degrees. */
const writeTipAngle = (tilt: number): string => `${Math.round((tilt * 180) / Math.PI)} degrees`;

const CODES = "Local codes and licensed practice decide.";

/**
 * How a source stands, a sentence a figure, each with what it rests on.
 *
 * @example writeLoadLines(sheet.loads[0], "metric")[0]   // "Full, bucket weighs 21 kg (20 kg of water, 0.9 kg of ..."
 */
export function writeLoadLines(load: StandLoad, system: UnitSystem): string[] {
  return [
    massLine(load, system),
    ...soilLines(load, system),
    ...(load.centre === undefined || load.tilt === undefined
      ? []
      : [
          `Full, the middle of its mass is ${writeQuantity(load.centre, "length", system)} above the ground; the whole falls over at a tilt of ${writeTipAngle(load.tilt)}, less when water sways. Keep it level: one soft foot is enough.`,
        ]),
    ...windLines(load, system),
    ...rainLines(load, system),
    `Air gap where a ${writeDrill(load.airGap.bore, system)} hose fills it: ${writeDrill(load.airGap.us, system)} (twice the bore, at least 1 in) or ${writeDrill(load.airGap.uk, system)} (twice the bore, at least 20 mm) above the highest water, or an approved vacuum breaker. ${CODES}`,
    ...ventLines(load, system),
  ];
}

function massLine({ source, full, water, vessel, standMass, stand }: StandLoad, system: UnitSystem): string {
  const parts = [
    `${writeMass(water, system)} of water`,
    vessel === undefined ? "the vessel's own weight not known" : `${writeMass(vessel, system)} of vessel`,
    ...(standMass === undefined ? [] : [`${writeMass(standMass, system)} of stand`]),
  ];
  const height = stand > 0 ? ` and stands ${writeQuantity(stand, "length", system)} up` : "";
  return `Full, ${source} weighs ${writeMass(full, system)} (${parts.join(", ")})${height}. Nobody and no bird stays under or beside it.`;
}

function soilLines({ pressure, soil, on, feet, padSide }: StandLoad, system: UnitSystem): string[] {
  if (pressure === undefined)
    return ["What its bottom measures is not known: the load on the soil cannot be told."];
  const carriers = { pads: `its ${feet} pads`, feet: `its ${feet} bare feet`, bottom: "its own bottom" }[on];
  const share = pressure / soil.presumed;
  const presumed = `${soil.name} is presumed to bear ${writePressure(soil.presumed, system)}${soil.isTyped ? "" : " (no soil is named: the least that is presumed)"}`;
  const verdict =
    share > 1
      ? `${figures(share, 2)} times that: too much.`
      : share > 0.5
        ? `${Math.round(share * 100)} % of that: close.`
        : `${Math.round(share * 100)} % of that.`;
  const pad =
    on !== "bottom" && share > 0.5
      ? ` A pad of ${writeQuantity(padSide, "length", system, 2)} square under each foot brings it to half.`
      : "";
  return [
    `On ${carriers} it presses ${writePressure(pressure, system)}; ${presumed}: ${verdict}${pad} Wet, filled or frozen ground bears less. ${CODES}`,
  ];
}

function windLines({ wind, isTied, source }: StandLoad, system: UnitSystem): string[] {
  if (isTied) return [`${source} is tied down: look at its straps after each storm.`];
  if (wind === undefined)
    return [`Shape or weight of ${source} is not known well enough to tell what wind moves it: tie it down.`];
  const speed = (value: number) => writeWind(value, system);
  const whole =
    wind.withStand === undefined
      ? ""
      : ` Vessel and stand together go over from ${speed(wind.withStand)}, empty.`;
  const keep =
    wind.keep === undefined
      ? `Not even full does it stand in a gust of ${speed(GUST)} by the rule for tanks that nothing ties (two thirds of its weight's moment): tie it down.`
      : `With ${writeVolume(wind.keep, system)} in it, it stands in a gust of ${speed(GUST)} by the rule for tanks that nothing ties (two thirds of its weight's moment).`;
  return [
    `Empty it tips from a wind of ${speed(wind.empty)} (by the rule it is let stand to ${speed(wind.emptyAllowed)}); at its lowest level from ${speed(wind.lowest)}, full from ${speed(wind.full)}.${whole} ${keep} Tie it whatever these say: gusts are faster than forecasts.`,
  ];
}

function rainLines({ downpour }: StandLoad, system: UnitSystem): string[] {
  if (downpour === undefined) return [];
  const flow = (value: number) => writeQuantity(value, "flow", system, 2);
  const bore = (value: number) => writeQuantity(value, "length", system, 3);
  const pipe = `the overflow (${bore(downpour.overflow)}${downpour.isTyped ? "" : ", not in the plan: the usual one"})`;
  return [
    downpour.passes >= downpour.flow
      ? `In a downpour of ${writeRain(0.1, system)} an hour its roof sheds ${flow(downpour.flow)}; ${pipe} passes ${flow(downpour.passes)}. Lead it away from the stand's feet: wet soil bears less.`
      : `In a downpour of ${writeRain(0.1, system)} an hour its roof sheds ${flow(downpour.flow)}; ${pipe} passes only ${flow(downpour.passes)}: fit ${bore(Math.ceil(downpour.needed * 200) / 200)} or more, and lead it away from the stand's feet.`,
  ];
}

function ventLines({ vent }: StandLoad, system: UnitSystem): string[] {
  if (vent === undefined) return [];
  const bore = (value: number) => writeDrill(value, system);
  const now = vent.now === undefined ? "" : ` The plan has ${bore(vent.now)}.`;
  return [
    `Its vent does with ${bore(vent.bare)}, and with ${bore(vent.screened)} behind a mosquito screen (16 to 18 mesh, about two thirds open); dust and webs close it.${now}`,
  ];
}

/**
 * What can hurt besides, by what the plan has.
 *
 * @source bucket-drownings, children and five-gallon buckets, seen
 * @source mosquito-screens, every opening screened, emptied weekly else, seen
 * @source legionella-temperatures, grows from 25 to 45 degC, seen
 * @example writeBuildCautions({ openWater: [], deepWater: [], hasRoof: true }, "metric")[0]   // "These figures are no proof of a stand: a vessel that falls ..."
 */
export function writeBuildCautions(
  { openWater, deepWater, hasRoof }: Pick<BuildSheet, "openWater" | "deepWater" | "hasRoof">,
  system: UnitSystem,
): string[] {
  return [
    `These figures are no proof of a stand: a vessel that falls can kill. Posts seldom crush; stands fail by sway, loose joints, rot and soft ground. ${CODES}`,
    "Small children drown head first in a bucket: a lid that holds on all that stands open, and nothing to climb by a barrel.",
    "Use only food-grade vessels whose past contents are known, and fittings and hose sold as lead-free for drinking water.",
    "Screen every opening, overflow and vent included, against mosquitoes; where that cannot be, empty it weekly.",
    ...(hasRoof
      ? ["Roof water is not for people. No lead flashing, no old paint, no treated shingles above it."]
      : []),
    ...(openWater.length > 0
      ? [
          `${openWater.join(", ")}: open water drowns chicks and quail. Keep it shallow, or filled with pebbles, until they are grown.`,
        ]
      : []),
    ...deepWater.map(
      ({ pen, waterer, depth, birds, untilDays }) =>
        `${pen}: ${writeQuantity(depth, "length", system, 2)} of water stands open in "${waterer}", and the young there (${birdsCalled(birds)}) drown in it until ${writeAge(untilDays)}. Put pebbles in, so that only a few millimetres stand open.`,
    ),
    "Legionella grows in water of 25 to 45 °C (77 to 113 °F); the harm is in breathing its spray. Do not spray warm water that has stood.",
    "Cut and drill with eyes and hands guarded; let cement dry and rinse before birds drink.",
  ];
}

/** The round that keeps a line honest: what to look at, and how often. */
export const BUILD_ROUNDS: readonly (readonly [often: string, what: readonly string[]])[] = [
  [
    "Every day",
    [
      "Look at every bird.",
      "Press every drinker: a drop comes.",
      "Read the level against its mark, at the same hour.",
    ],
  ],
  [
    "Every week",
    [
      "Jug and watch at the farthest drinker.",
      "Rinse the line through its open end.",
      "Heights of hung lines.",
    ],
  ],
  ["Every month", ["Screens, lid and vent clear.", "Stand plumb, straps tight, soil firm."]],
  ["After storm or frost", ["All of it."]],
];
