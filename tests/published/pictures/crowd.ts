import type { PublishedCase } from "../case-file.js";
import { drawChart, type Series } from "./chart.js";
import { answerTo, casesOf, comparisonOf, percentApart, spread } from "./points.js";

const placesOf = (one: PublishedCase) => one.given["places"] as number;
const loadOf = (one: PublishedCase) => one.given["load"] as number;

/** Rows of the tables of loss: chance that all places are taken, over the load, a line for each number of places. */
export function drawErlang(): string {
  const cases = casesOf("erlang-1917", "loss");
  const places = [...new Set(cases.map(placesOf))].sort((a, b) => a - b);
  const of = (count: number) => cases.filter((one) => placesOf(one) === count);
  const load = { title: "load: birds that would drink at once [-]", from: 0.005, to: 200, isLog: true };
  const losing = places.map(
    (count): Series => ({
      name: count === 1 ? "1 place" : `${count} places`,
      curve: spread(0.005, 200, 200, true).map((at) => [
        at,
        answerTo(of(count)[0]!, { load: at }, { figure: "chance", unit: "" }),
      ]),
      isFromMemory: true,
      points: of(count).map((one) => ({ x: loadOf(one), y: comparisonOf(one, "chance")!.printed })),
    }),
  );
  return drawChart({
    title: "Chance that a bird finds every place taken: Erlang's tables and ours",
    panels: [
      {
        x: load,
        y: { title: "chance [-]", from: 5e-4, to: 1, isLog: true },
        height: 300,
        series: losing,
      },
      {
        x: load,
        y: { title: "ours less printed [%]", from: -1.5, to: 1.5 },
        height: 110,
        series: places.map((count) => ({
          name: `${count}`,
          isFromMemory: true,
          points: of(count).map((one) => ({
            x: loadOf(one),
            y: percentApart(comparisonOf(one, "chance")!),
          })),
        })),
        isKeyless: true,
      },
    ],
    under: [
      "Points: tables of loss at 0.1, 1, 2 and 5 % (Erlang 1917). Hollow, since all are from memory: none was read at the source.",
      "Lines: erlangB. The tables print loads to three or four digits, which moves the chance by up to 1 %.",
    ],
  });
}
