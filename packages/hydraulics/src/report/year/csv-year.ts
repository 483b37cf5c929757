import type { YearOfPlan } from "../../judge/year/year-result.js";
import { writeDay } from "../../units/day.js";
import type { UnitSystem } from "../../units/quantity.js";
import { writeCsv } from "../csv.js";
import { inUnits, titled } from "../csv-units.js";

/**
 * A year as a table: a row for each period and pen, the kit in a column each.
 *
 * @example writeYearCsv(year, "metric").split(",")[3]   // "pen"
 */
export function writeYearCsv({ periods, pens, kit }: YearOfPlan, units: UnitSystem): string {
  const volume = (title: string) => titled(title, "volume", units);
  const kinds = kit?.kinds ?? [];
  return writeCsv([
    [
      "week",
      "from",
      "to",
      "pen",
      "birds",
      "age [days]",
      volume("a day, to size on"),
      volume("a day, to expect"),
      volume("hot day, to size on"),
      "met by the line [share]",
      "met by its own waterers [share]",
      ...kinds.map(({ name }) => `${name} [pieces]`),
    ],
    ...periods.flatMap((period, t) =>
      period.pens.map((pen, p) => [
        period.week,
        writeDay(period.from),
        writeDay(period.to - 1),
        pens[p].pen,
        pen.birds,
        pen.batches.length === 0 ? undefined : Math.min(...pen.batches.map(({ ageTo }) => ageTo)),
        inUnits(pen.draw.size, "volume", units),
        inUnits(pen.draw.expect, "volume", units),
        inUnits(pen.hotDraw?.size, "volume", units),
        pen.byLine,
        pen.byWaterers,
        ...kinds.map((_, k) => kit?.lent[t][p][k]),
      ]),
    ),
  ]);
}
