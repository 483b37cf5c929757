import { expect, test } from "vitest";
import { readPlan } from "../../packages/hydraulics/src/document/read-plan.js";
import { buildSheetOf, yearForPlan } from "../../packages/hydraulics/src/index.js";
import { writePartsCsv } from "../../packages/hydraulics/src/report/build/csv-parts.js";
import { writeYearCsv } from "../../packages/hydraulics/src/report/year/csv-year.js";
import { writeYearCalendar } from "../../packages/hydraulics/src/report/year/year-calendar.js";

const NAMES = [
  "=HYPERLINK(1+1)",
  "@SUM(1+1)*cmd|' /C calc'!A0",
  '",=1+1,"',
  "<img src=x onerror=alert(1)>",
  "END:VEVENT;END:VCALENDAR,\\nX",
  "דלי 🐔👩‍🌾 hens",
];

/** A line, a pen and a year, with one strange name for all that can have one. */
function named(name: string) {
  const reading = readPlan(
    JSON.stringify({
      headfall: 1,
      name,
      day: "2026-03-02",
      sources: [{ id: name, vessel: "drum-55gal-plastic", stand: "80 cm" }],
      runs: [
        {
          id: `${name} r`,
          from: name,
          length: "6 m",
          pipe: { name: `${name} pipe`, bore: "13 mm" },
          fittings: [{ name, k: 2 }],
          drinkers: { id: `${name} g`, kind: "nipple-side-action", count: 4, every: "50 cm" },
        },
      ],
      pens: [{ id: name, birds: { kind: "layer", count: 9, age: "6 weeks", leaves: "2026-04-20" } }],
      kit: [{ kind: "fount-1gal", count: 1 }],
    }),
  );
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems, null, 1));
  return reading.plan;
}

/** Cells of a table, quotes taken off. */
const cellsOf = (table: string) =>
  [...table.matchAll(/(?:^|,|\r\n)(?:"((?:[^"]|"")*)"|([^",\r\n]*))/g)].map(([, quoted, plain]) =>
    (quoted?.replaceAll('""', '"') ?? plain ?? "").trim(),
  );
const isFormula = (cell: string) => /^[=+\-@]/.test(cell) && !/^-?\d+(\.\d+)?$/.test(cell);

test.each(NAMES)(
  "parts, year and calendar of a plan that calls everything %j are files like any other",
  (name) => {
    const plan = named(name);
    const building = buildSheetOf(plan, { samples: 4, weeks: 1 });
    const answer = yearForPlan(plan, { weeks: 8 });
    if (!building.ok || !answer.ok) throw new Error("no answer");
    for (const table of [writePartsCsv(building.sheet, "metric"), writeYearCsv(answer.year, "metric")]) {
      expect(table).toContain("\r\n");
      expect(cellsOf(table).filter(isFormula)).toEqual([]);
    }
    const calendar = writeYearCalendar(answer.year, name).replaceAll("\r\n ", "").split("\r\n");
    const begun = calendar.filter((line) => line === "BEGIN:VEVENT").length;
    expect(begun).toBeGreaterThan(0);
    expect(calendar.filter((line) => line.startsWith("END:VEVENT"))).toHaveLength(begun);
    expect(calendar.filter((line) => line.startsWith("END:VCALENDAR"))).toHaveLength(1);
    for (const line of calendar.slice(0, -1)) expect(line).toMatch(/^[A-Z-]+[:;]/);
  },
);
