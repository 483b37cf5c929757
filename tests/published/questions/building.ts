import { cutStock } from "../../../packages/hydraulics/src/numerics/cutting/cut-stock.js";
import { airGapFor } from "../../../packages/hydraulics/src/physics/air-gap.js";
import { bearingPressure } from "../../../packages/hydraulics/src/physics/load.js";
import { UNTIED_SHARE, windThatTips } from "../../../packages/hydraulics/src/physics/wind.js";
import { soilById } from "../../../packages/hydraulics/src/tables/building.js";
import { plain, pressureOf, type Question, velocityOf } from "./question.js";

const bearing: Question = (given) => {
  const area = given.measure("length", "length") * given.measure("width", "length") * given.number("feet");
  return { pressure: pressureOf(bearingPressure({ mass: given.measure("mass", "mass"), area })) };
};

/** The same load on bare feet and on pads, beside what a soil is presumed to bear. */
const footing: Question = (given) => {
  const [mass, feet] = [given.measure("mass", "mass"), given.number("feet")];
  const soil = soilById(given.text("soil"));
  if (soil === undefined) throw new Error(`no soil is called ${given.text("soil")}`);
  const foot = bearingPressure({ mass, area: feet * given.measure("foot", "length") ** 2 });
  const padArea = given.measure("padLength", "length") * given.measure("padWidth", "length");
  return {
    soil: pressureOf(soil.pressure),
    foot: pressureOf(foot),
    pad: pressureOf(bearingPressure({ mass, area: feet * padArea })),
    over: plain(foot / soil.pressure),
  };
};

const overturning: Question = (given) => {
  const [width, height] = [given.measure("diameter", "length"), given.measure("height", "length")];
  const tips = (mass: number) =>
    windThatTips({ mass, width, area: width * height, height: height / 2, drag: given.number("drag") });
  const mass = given.measure("mass", "mass");
  return {
    tips: velocityOf(tips(mass)),
    allowed: velocityOf(tips(mass * UNTIED_SHARE)),
    withWater: velocityOf(tips(mass + given.measure("water", "mass"))),
  };
};

const airGap: Question = (given) => ({
  gap: {
    kind: "length",
    si: airGapFor(given.measure("bore", "length"), given.text("rule") === "uk" ? "uk" : "us"),
  },
});

const cutting: Question = (given) => {
  const sold = given.measure("sold", "length");
  const pieces = given
    .list("pieces")
    .map((piece) => ({ length: piece.measure("length", "length"), count: piece.number("count") }));
  const { bars, bound, bought } = cutStock({ pieces, sold: [sold], leftovers: [], kerf: 0 });
  const wanted = pieces.reduce((sum, { length, count }) => sum + length * count, 0);
  return { bars: plain(bars.length), bound: plain(bound / sold), waste: plain(1 - wanted / bought) };
};

export const BUILDING_QUESTIONS: Readonly<Record<string, Question>> = {
  bearing,
  footing,
  overturning,
  airGap,
  cutting,
};
