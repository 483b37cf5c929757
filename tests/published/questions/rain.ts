import {
  balanceRain,
  type RainConvention,
  runOff,
  sequentPeak,
} from "../../../packages/hydraulics/src/simulate/rain.js";
import type { Figure, Givens } from "../figures.js";
import { plain, type Question } from "./question.js";

const volumeOf = (si: number): Figure => ({ kind: "volume", si });

const roofOf = (given: Givens) => ({
  area: given.measure("area", "area"),
  runoff: given.has("runoff") ? given.number("runoff") : 1,
  wetting: given.has("wetting") ? given.measure("wetting", "length") : 0,
  firstFlush: given.has("firstFlush") ? given.measure("firstFlush", "volume") : 0,
});

/** What one fall of rain brings off a roof. */
const roofYield: Question = (given) => ({
  volume: volumeOf(runOff(roofOf(given), [given.measure("rain", "length")])[0]!),
});

const numbersOf = (given: Givens, name: string) => given.raw(name) as readonly number[];

/** What is drawn and what is left, step by step, in the case's own unit of volume. */
const rainStore: Question = (given) => {
  const { given: drawn, stored } = balanceRain(
    {
      inflow: numbersOf(given, "inflow"),
      demand: numbersOf(given, "demand"),
      capacity: given.number("capacity"),
      start: given.number("start"),
    },
    given.text("convention") as RainConvention,
  );
  return Object.fromEntries(
    [...drawn].flatMap((volume, k) => [
      [`drawn${k + 1}`, plain(volume)],
      [`left${k + 1}`, plain(stored[k]!)],
    ]),
  );
};

/** A roof and a tank without a brim, month by month. */
const monthlyStore: Question = (given) => {
  const months = given.list("months");
  const inflow = runOff(
    roofOf(given),
    months.map((month) => month.measure("rain", "length")),
  );
  const demand = months.map((month) => month.measure("demand", "volume"));
  const start = given.measure("start", "volume");
  const { stored } = balanceRain({ inflow, demand, capacity: 1e6, start }, "rainFirst");
  return Object.fromEntries(
    [...inflow].flatMap((volume, k) => [
      [`in${k + 1}`, volumeOf(volume)],
      [`left${k + 1}`, volumeOf(stored[k]!)],
    ]),
  );
};

/** The size that never fails, in the case's own unit of volume. */
const neverFails: Question = (given) => ({
  size: plain(sequentPeak(numbersOf(given, "inflow"), numbersOf(given, "demand")) ?? Number.NaN),
});

/** A dry spell of so many days after which all is filled again. */
const drySpell: Question = (given) => {
  const each = given.measure("each", "volume") * given.number("count");
  const days = given.number("days");
  const demand = Array.from({ length: days }, () => each);
  return { size: volumeOf(sequentPeak([...demand.map(() => 0), days * each], [...demand, 0])!) };
};

export const RAIN_QUESTIONS: Readonly<Record<string, Question>> = {
  roofYield,
  rainStore,
  monthlyStore,
  neverFails,
  drySpell,
};
