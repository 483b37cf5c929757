import { heatFactor, intakeOf } from "../../../packages/hydraulics/src/birds/intake.js";
import { birdById } from "../../../packages/hydraulics/src/tables/birds.js";
import { loadTable } from "../../../reference-tables/load-tables.mjs";
import { drawChart, type Series } from "./chart.js";
import { spread } from "./points.js";

type Row = Readonly<Record<string, string>>;

const LITRE = 1e-3;

/** Rows of a table of published figures: one source, told by a word of its class. */
const rowsOf = (table: string, source: string, holds: (row: Row) => boolean): readonly Row[] =>
  (loadTable(table).rows as readonly Row[]).filter(
    (row) => row["source"] === source && row["use"] === "published" && holds(row),
  );

interface Ages {
  readonly name: string;
  readonly source: string;
  readonly isOf: (row: Row) => boolean;
  /** A row's week is read as its end; else as its middle. */
  readonly isAtEnd?: boolean;
}

/** Points of one source by the days each row is for. */
function byAge({ name, source, isOf, isAtEnd }: Ages): Series {
  const rows = rowsOf("water-intake", source, (row) => isOf(row) && row["intake_ml"] !== "");
  const ages = rows.filter((row) => row["age_from_d"] !== "");
  return {
    name,
    isFromMemory: ages.every((row) => row["seen"] === "from memory"),
    points: ages.map((row) => {
      const [from, to] = [Number(row["age_from_d"]), Number(row["age_to_d"])];
      return { x: isAtEnd ? to : (from + to) / 2, y: Number(row["intake_ml"]) };
    }),
  };
}

/** What a kind drinks by age, as sized on and as expected, in mL a day. */
function ours(kind: string, to: number): Series[] {
  const bird = birdById(kind)!;
  const curve = (points: typeof bird.size) =>
    spread(1, to, to - 1).map((day) => [day, intakeOf(points, day, 0) / (LITRE * LITRE)] as const);
  return [
    { name: "ours, to size on", curve: curve(bird.size) },
    { name: "ours, to expect", curve: curve(bird.expect), isDashed: true },
  ];
}

const isTemperate = (row: Row) => row["air_temperature_c"] === "" || Number(row["air_temperature_c"]) < 25;
const isBroiler = (row: Row) => /^broiler( mixed| \d| 1990s|$)/.test(row["class"]!) && isTemperate(row);

export const drawIntakeByAge = (): string =>
  drawChart({
    title: "What a meat chicken drinks in a day, by age, at 20 to 22 °C",
    panels: [
      {
        x: { title: "age [days]", from: 0, to: 70 },
        y: { title: "water [mL a bird and day]", from: 0, to: 450 },
        height: 380,
        series: [
          ...ours("meat-chicken", 70),
          byAge({ name: "Poultry CRC, table 2", source: "poultryhub-water", isOf: isBroiler, isAtEnd: true }),
          byAge({ name: "5.28 mL a day of age (1985)", source: "pesti-1985", isOf: isBroiler }),
          byAge({ name: "NRC 1994", source: "nrc-poultry-1994", isOf: isBroiler }),
          byAge({ name: "table 2.29 (2005)", source: "leeson-summers-2005-table", isOf: isBroiler }),
          byAge({ name: "litter study, 1997", source: "georgia-litter-1997", isOf: isBroiler }),
        ],
      },
    ],
    under: [
      "Filled: read at the source; hollow: from memory. Rows of reference-tables/water-intake.csv, at the middle of their days; the",
      "weeks of Poultry CRC read as their ends, which is where our line to size on is from. Birds of 1985 and 1994 grew more",
      "slowly, and drank less at the same age; our line to expect stands above theirs, on purpose.",
    ],
  });

/** Heat rows of one source: times as much as at its own temperate air. */
function byHeat(name: string, source: string): Series {
  const rows = rowsOf(
    "temperature-factor",
    source,
    (row) => row["species"] !== "turkey" && row["temperature_c"] !== "" && row["factor"] !== "",
  );
  return {
    name,
    isFromMemory: rows.every((row) => row["seen"] === "from memory"),
    points: rows.map((row) => ({ x: Number(row["temperature_c"]), y: Number(row["factor"]) })),
  };
}

export const drawHeat = (): string =>
  drawChart({
    title: "How much more chickens drink in heat",
    panels: [
      {
        x: { title: "air [°C]", from: 5, to: 45 },
        y: { title: "times as much as in temperate air [-]", from: 0.5, to: 4 },
        height: 330,
        series: [
          { name: "ours: 6.5 % a degree", curve: spread(5, 45, 80).map((air) => [air, heatFactor(air)]) },
          byHeat("Kentucky, table 12.1", "kentucky-manual-12"),
          byHeat("Poultry CRC", "poultryhub-water"),
          byHeat("Leeson, Summers: at least", "leeson-summers-2005"),
          byHeat("Xin and others, 2002", "xin-2002-introduction"),
          { name: "rule: 7 % a degree", curve: ruleOf(21, 0.07), isDashed: true },
          { name: "rule: 4 % above 24", curve: ruleOf(24, 0.04), isDashed: true },
        ],
      },
    ],
    under: [
      "Points: ratio of the hot column of each source to its temperate one (20 to 22 °C; Xin: 4 °C). All seen; rows in",
      "reference-tables/temperature-factor.csv. Dashed: straight rules of NRC 1994 (from memory) and of a review (seen).",
      "Ours is 1.065 to the power of the degrees above 21, at most 3; two sources speak of 3 to 4 in extreme heat.",
    ],
  });

function ruleOf(above: number, perDegree: number): [number, number][] {
  return spread(above, 42, 40).map((air) => [air, 1 + perDegree * (air - above)]);
}
