import type { PublishedCase } from "../case-file.js";
import { drawChart, type Panel, type Series } from "./chart.js";
import { answerTo, casesOf, comparisonOf, givenNumber, percentApart, spread } from "./points.js";

const SOURCES: readonly (readonly [string, string])[] = [
  ["chaplin-water-data", "water data page"],
  ["hydraulic-institute-edb", "Engineering Data Book"],
  ["crc-handbook", "CRC Handbook"],
  ["tanaka-2001", "Tanaka and others, 2001"],
];

const UNITS: Readonly<Record<string, string>> = {
  density: "kg/m3",
  viscosityDynamic: "cP",
  vapourPressure: "kPa",
};

/** Printed points of one property, by source; ours as the first series. */
function property(figure: string): Series[] {
  const unit = UNITS[figure]!;
  const any = casesOf("chaplin-water-data", "water")[0]!;
  return [
    {
      name: "ours",
      curve: spread(0, 50, 100).map((at) => [
        at,
        answerTo(any, { temperature: `${at} degC` }, { figure, unit }),
      ]),
    },
    ...SOURCES.map(([source, name]) => pointsOf(source, name, (one) => printedIn(one, figure, unit))),
  ];
}

/** The printed figure in a unit, by way of ours in both. */
function printedIn(one: PublishedCase, figure: string, unit: string): number | undefined {
  const found = comparisonOf(one, figure);
  if (found === undefined) return undefined;
  return (found.printed / found.computed) * answerTo(one, {}, { figure, unit });
}

function pointsOf(
  source: string,
  name: string,
  figureOf: (one: PublishedCase) => number | undefined,
): Series {
  const cases = casesOf(source, "water");
  return {
    name,
    isFromMemory: cases.every(({ seen }) => seen === "from memory"),
    points: cases.flatMap((one) => {
      const y = figureOf(one);
      return y === undefined ? [] : [{ x: givenNumber(one, "temperature"), y }];
    }),
  };
}

const TEMPERATURE = { title: "water [°C]", from: 0, to: 50 };

/** How far each point stands from the line, all three properties by source. */
const apart = (): Panel => ({
  x: TEMPERATURE,
  y: { title: "ours less printed [%]", from: -0.2, to: 0.2 },
  height: 130,
  isKeyless: true,
  series: [
    { name: "ours", curve: [[0, 0] as const, [50, 0] as const] },
    ...SOURCES.map(([source, name]): Series => {
      const each = Object.keys(UNITS).map((figure) =>
        pointsOf(source, name, (one) => {
          const found = comparisonOf(one, figure);
          return found === undefined ? undefined : percentApart(found);
        }),
      );
      return { ...each[0]!, points: each.flatMap(({ points }) => points ?? []) };
    }),
  ],
});

export const drawWater = (): string =>
  drawChart({
    title: "Water from 0 to 50 °C: density, viscosity, vapour pressure; below, all three against print",
    panels: [
      {
        x: TEMPERATURE,
        y: { title: "density [kg/m³]", from: 986, to: 1001 },
        height: 150,
        series: property("density"),
      },
      {
        x: TEMPERATURE,
        y: { title: "viscosity [mPa s]", from: 0.4, to: 1.9 },
        height: 150,
        series: property("viscosityDynamic"),
        isKeyless: true,
      },
      {
        x: TEMPERATURE,
        y: { title: "vapour pressure [kPa]", from: 0, to: 13 },
        height: 150,
        series: property("vapourPressure"),
        isKeyless: true,
      },
      apart(),
    ],
    under: [
      "Lines: the formulations of IAPWS for liquid water at 0.1 MPa (SR6-08) and its saturation (SR1-86), whose own check",
      "values are met to all their digits. Points: printed tables, in three to seven digits; filled: seen, hollow: from memory.",
    ],
  });
