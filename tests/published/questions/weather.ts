import {
  conductanceOfPipe,
  filmOfWind,
  HEAT_OF_WATER,
  timeToCool,
} from "../../../packages/hydraulics/src/physics/cooling.js";
import { iceAfter } from "../../../packages/hydraulics/src/physics/freezing.js";
import { sunRiseOfPipe } from "../../../packages/hydraulics/src/physics/sun.js";
import { plain, type Question } from "./question.js";

/** k of the handbook, Btu in per hour, square foot and degree F [W/(m K)]: 1055.05585 J × 0.0254 m/(3600 s × 0.3048² m² × 5/9 K). */
const BTU_INCH = (1055.05585 * 0.0254) / (3600 * 0.3048 ** 2 * (5 / 9));

/** Water in a lagged pipe cools to freezing; the film of air is left out, as the handbook does. */
const timeToFreezing: Question = (given) => {
  const outside = given.measure("outside", "length");
  const lagging = (given.measure("overLagging", "length") - outside) / 2;
  const conductance = conductanceOfPipe(
    { outside, lagging, film: Number.POSITIVE_INFINITY },
    given.number("conductivity") * BTU_INCH,
  );
  const capacity = (HEAT_OF_WATER * Math.PI * given.measure("bore", "length") ** 2) / 4;
  const cooling = {
    capacity,
    conductance,
    from: given.measure("water", "temperature"),
    air: given.measure("air", "temperature"),
  };
  return { time: { kind: "time", si: timeToCool(cooling, 0) } };
};

/** Ice that grows under so many days of a frost of so many degrees. */
const iceGrowth: Question = (given) => {
  const from = given.has("ice") ? given.measure("ice", "length") : 0;
  const cold = { film: given.number("film"), air: given.measure("air", "temperature") };
  const ice = iceAfter({ from, time: given.measure("time", "time") }, cold);
  return { growth: { kind: "length", si: ice - from } };
};

/** Still water in a hose in the sun: kelvins above the air. */
const sunnyHose: Question = (given) => {
  const pipe = { absorptance: given.number("absorptance"), film: given.number("film") };
  return { rise: plain(sunRiseOfPipe(pipe, given.measure("sun", "sunshine"))) };
};

/** Heat that moving air takes from a wall [W/(m² K)]. */
const filmInWind: Question = (given) => ({ film: plain(filmOfWind(given.number("wind"))) });

export const WEATHER_QUESTIONS: Readonly<Record<string, Question>> = {
  timeToFreezing,
  iceGrowth,
  sunnyHose,
  filmInWind,
};
