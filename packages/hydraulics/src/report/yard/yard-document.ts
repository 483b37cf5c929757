import type { YardOfPlan } from "../../judge/yard/yard-result.js";
import { writeDay } from "../../units/day.js";
import type { UnitSystem } from "../../units/quantity.js";
import { dayEntry } from "../day-entry.js";
import {
  writeChangeOver,
  writeOpenings,
  writeShareOfLoose,
  writeTilt,
  writeYardFinding,
  YARD_CAUTIONS,
} from "./yard-sentences.js";

/**
 * The loose waterers of a plan as a plain document, SI throughout: m, m³, kg, s, °C; slopes as rise over run.
 *
 * @example writeYardDocument("yard", yard, "metric").format   // "headfall yard"
 */
export function writeYardDocument(name: string, yard: YardOfPlan, system: UnitSystem) {
  const { day, region, weather, hotDay, pens } = yard;
  return {
    format: "headfall yard",
    version: 1,
    plan: { name },
    ...dayEntry(day),
    region,
    weather,
    hotDay,
    pens: pens.map(({ index: _, waterers, changeOvers, findings, ...pen }) => ({
      ...pen,
      share: writeShareOfLoose({ index: _, waterers, changeOvers, findings, ...pen }),
      waterers: waterers.map((report) => {
        const { index: __, waterer, weeks, reach, ...told } = report;
        const { kind, index: ___, id: ____, holds: _____, ...placed } = waterer;
        return {
          ...told,
          kind: kind.id,
          kindName: kind.name,
          works: kind.works,
          ...placed,
          reach: { ...reach, rules: reach.rules.map((rule) => rule.id) },
          weeks: weeks.map(({ day: then, ...week }) => ({ ...week, ...dayEntry(then) })),
          sentences: [writeTilt(report, system), ...writeOpenings(report, system)],
        };
      }),
      changeOvers: changeOvers.map(({ bothFromDay, untilDay, ...change }) => ({
        ...change,
        ...(bothFromDay === undefined ? {} : { bothFrom: writeDay(bothFromDay) }),
        ...(untilDay === undefined ? {} : { until: writeDay(untilDay) }),
        sentence: writeChangeOver({ bothFromDay, untilDay, ...change }),
      })),
      findings: findings.map((finding) => ({ ...finding, sentence: writeYardFinding(finding, system) })),
    })),
    cautions: YARD_CAUTIONS,
  };
}
