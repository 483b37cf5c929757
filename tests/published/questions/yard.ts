import { evaporated, evaporationFromPan } from "../../../packages/hydraulics/src/physics/evaporation.js";
import { slopeThatDrains } from "../../../packages/hydraulics/src/physics/tilted-fount.js";
import {
  waterInTiltedPan,
  waterInTiltedTrough,
} from "../../../packages/hydraulics/src/physics/tilted-pan.js";
import type { Figure } from "../figures.js";
import { plain, type Question } from "./question.js";

const DAY = 86_400;
const volumeOf = (si: number): Figure => ({ kind: "volume", si });
const lengthOf = (si: number): Figure => ({ kind: "length", si });

/** Slope at which a fount with one hole drains, its hole each way. */
const fountTilt: Question = (given) => {
  const limit = (facing: number) =>
    slopeThatDrains({
      rim: given.measure("rim", "length"),
      hole: given.measure("hole", "length"),
      lipOverHole: given.measure("lipOverHole", "length"),
      holes: 1,
      facing,
      hasSpouts: false,
    });
  const told = (name: string, facing: number) => ({
    [`${name}Degrees`]: plain((Math.atan(limit(facing)) * 180) / Math.PI),
  });
  return { ...told("uphill", Math.PI), ...told("sideways", Math.PI / 2), ...told("downhill", 0) };
};

/** A round pan with upright walls. */
const tiltedPan: Question = (given) => ({
  volume: volumeOf(
    waterInTiltedPan({
      radius: given.measure("radius", "length"),
      depth: given.measure("depth", "length"),
      slope: given.has("slope") ? given.measure("slope", "slope") : 0,
    }),
  ),
});

/** A trough along the slope. */
const tiltedTrough: Question = (given) => ({
  volume: volumeOf(
    waterInTiltedTrough({
      length: given.measure("length", "length"),
      width: given.measure("width", "length"),
      depth: given.measure("depth", "length"),
      slope: given.has("slope") ? given.measure("slope", "slope") : 0,
    }),
  ),
});

/** A week of readings of an evaporation pan. */
const panWeek: Question = (given) => {
  const readings = given.raw("daysMm") as readonly number[];
  const mean = readings.reduce((sum, mm) => sum + mm, 0) / readings.length / 1000;
  return {
    perDay: lengthOf(evaporationFromPan({ pan: mean / DAY, coefficient: given.number("coefficient") }) * DAY),
  };
};

/** What a round surface loses in a day. */
const openLoss: Question = (given) => ({
  volume: volumeOf(
    evaporated({
      rate: given.measure("perDay", "length") / DAY,
      area: (Math.PI / 4) * given.measure("across", "length") ** 2,
      time: DAY,
    }),
  ),
});

export const YARD_QUESTIONS = { fountTilt, tiltedPan, tiltedTrough, panWeek, openLoss };
