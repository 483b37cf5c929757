import type { BirdsOfPlan } from "../../judge/birds/birds-for-plan.js";
import type { UnitSystem } from "../../units/quantity.js";
import { dayEntry } from "../day-entry.js";
import { birdCautions } from "./birds-text.js";
import { writePenDrinkers } from "./drinkers-needed-text.js";

/**
 * What the birds of a plan drink and need, as a plain document, SI throughout: m³ a day, m, °C.
 *
 * @example writeBirdsDocument("hen house", birds, "metric").format   // "headfall birds"
 */
export function writeBirdsDocument(name: string, birds: BirdsOfPlan, system: UnitSystem) {
  const { day, region, weather, hotDay, pens, weeks } = birds;
  return {
    format: "headfall birds",
    version: 1,
    plan: { name },
    ...dayEntry(day),
    region,
    weather,
    hotDay,
    pens: pens.map(({ index: _, drinkers, ...pen }) => {
      const { pen: __, index: ___, ...told } = drinkers;
      return { ...pen, drinkers: { ...told, sentences: writePenDrinkers(drinkers, region, system) } };
    }),
    weeks: weeks.map(({ day: then, ...week }) => ({ ...week, ...dayEntry(then) })),
    cautions: birdCautions(birds),
  };
}
