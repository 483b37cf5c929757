import type { YearEvent, YearOfPlan } from "../../judge/year/year-result.js";
import { writeDay } from "../../units/day.js";
import type { UnitSystem } from "../../units/quantity.js";
import {
  writeKitProof,
  writeLeastToBuy,
  writeShortage,
  writeYearEvent,
  YEAR_CAUTIONS,
} from "./year-sentences.js";

/**
 * A year of a plan as a plain document, SI throughout; described in docs/reference/year-result.md.
 *
 * @example writeYearDocument(year, { title: "The yard", money: undefined, system: "metric" }).format   // "headfall year"
 */
export function writeYearDocument(
  year: YearOfPlan,
  {
    title,
    money,
    system,
  }: { readonly title: string; readonly money: string | undefined; readonly system: UnitSystem },
) {
  const { from, to, region, weatherFrom, pens, periods, events } = year;
  return {
    format: "headfall year",
    version: 1,
    plan: { name: title },
    from: writeDay(from),
    to: writeDay(to),
    region,
    weatherFrom,
    periods: periods.map((period) => ({
      week: period.week,
      from: writeDay(period.from),
      to: writeDay(period.to),
      air: period.air,
      ...(period.hotAir === undefined
        ? {}
        : { hotAir: { high: period.hotAir.high, low: period.hotAir.low } }),
      pens: period.pens.map(({ drinkers, ...pen }, p) => ({
        pen: pens[p].pen,
        ...pen,
        drinkers: drinkers.devices.map(({ device, needed, has, because }) => ({
          device,
          needed,
          has,
          because,
        })),
      })),
    })),
    events: events.map(eventEntry),
    ...(year.kit === undefined ? {} : { kit: kitEntry(year, year.kit, money, system) }),
    cautions: YEAR_CAUTIONS,
  };
}

function eventEntry(event: YearEvent) {
  const { day, ...told } = event;
  return {
    day: writeDay(day),
    ...told,
    ...(event.code === "changeOver" ? { until: writeDay(event.until) } : {}),
    sentence: writeYearEvent(event),
  };
}

function kitEntry(
  { pens, periods }: YearOfPlan,
  kit: NonNullable<YearOfPlan["kit"]>,
  money: string | undefined,
  system: UnitSystem,
) {
  const { kinds, lent, serves, handed, shortages, buy, ...found } = kit;
  return {
    kinds,
    given: periods.map((period, t) => ({
      from: writeDay(period.from),
      pens: pens.map(({ pen }, p) => ({
        pen,
        pieces: kinds.flatMap(({ id }, k) => (lent[t][p][k] > 0 ? [{ kind: id, count: lent[t][p][k] }] : [])),
        serves: kinds.flatMap(({ id }, k) => {
          const serving = serves[t][p][k];
          return serving === undefined ? [] : [{ kind: id, ...serving }];
        }),
      })),
    })),
    putOut: handed.map(({ period: _, day, ...one }) => ({ day: writeDay(day), ...one })),
    shortages: shortages.map((shortage) => ({
      ...shortage,
      from: writeDay(shortage.from),
      to: writeDay(shortage.to),
      sentence: writeShortage(shortage),
    })),
    ...found,
    sentence: writeKitProof(kit, system),
    ...(buy === undefined
      ? {}
      : {
          buy: {
            ...buy,
            never: buy.never.map(({ pen, from }) => ({ pen, from: writeDay(from) })),
            sentences: writeLeastToBuy(buy, money),
          },
        }),
  };
}
