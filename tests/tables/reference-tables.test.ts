import { describe, expect, it } from "vitest";
import {
  loadSources,
  loadTable,
  type Table,
  type TableRow,
  tableNames,
} from "../../reference-tables/load-tables.mjs";
import { checkRows, inches } from "../../reference-tables/table-rules.mjs";

/** "by row" is for a table that measures many things: its column `unit` says which. */
const UNITS = ["text", "1", "by row", "mm", "m", "kg", "L", "mL", "mL/min", "kPa", "d", "h", "C", "%"];
const UNIT_WORDS: Readonly<Record<string, string>> = { "mL/min": "ml_min", "%": "percent" };
const sources = loadSources();
const tables = tableNames.map(loadTable);

/** Before, same place or after, by the columns the table says it is sorted by. */
function compareRows(table: Table, one: TableRow, other: TableRow): number {
  for (const column of table.about.sorted) {
    const [left, right] = [one[column]!, other[column]!];
    if (left === right) continue;
    if (column === "default") return left === "yes" ? -1 : 1;
    const isText = table.about.columns[column]!.unit === "text";
    return (isText ? left < right : Number(left) < Number(right)) ? -1 : 1;
  }
  return 0;
}

describe.each(tables)("$name.csv", (table) => {
  const { about, columns, rows } = table;

  it("has rows, and the same number of cells in each", () => {
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) expect(Object.keys(row)).toEqual([...columns]);
  });

  it("has a unit and a meaning for each column, and no column that is not there", () => {
    expect(Object.keys(about.columns)).toEqual([...columns]);
    for (const { unit, means } of Object.values(about.columns)) {
      expect(UNITS).toContain(unit);
      expect(means).not.toBe("");
    }
  });

  it("writes the unit into the name of every column that is not in SI", () => {
    for (const [column, { unit }] of Object.entries(about.columns)) {
      if (["text", "1", "by row"].includes(unit)) continue;
      expect(column.endsWith(`_${UNIT_WORDS[unit] ?? unit.toLowerCase()}`), column).toBe(true);
    }
  });

  it("holds a number or nothing in every column with a unit", () => {
    for (const row of rows) {
      for (const [column, { unit }] of Object.entries(about.columns)) {
        if (unit !== "text" && row[column] !== "")
          expect(Number(row[column]), `${row["id"]} ${column}`).not.toBeNaN();
      }
    }
  });

  it("keeps every rule, and every rule speaks of some row", () => {
    const { broken, spokenOf } = checkRows(about.rules, rows);
    expect(broken).toEqual([]);
    expect([...spokenOf].filter(([, count]) => count === 0).map(([rule]) => rule)).toEqual([]);
  });

  it("cites a known source, a place in it, and how it is known, on each row", () => {
    for (const row of rows) {
      expect(Object.keys(sources), `${row["id"]}`).toContain(row["source"]);
      expect(row["where"]).not.toBe("");
    }
  });

  it("never says seen of a source that was not opened", () => {
    const unopened = rows.filter(
      (row) => row["seen"] === "seen" && sources[row["source"]!]!["opened"] === "from memory",
    );
    expect(unopened.map((row) => row["id"])).toEqual([]);
  });

  it("is sorted as it says", () => {
    const sorted = [...rows].sort((one, other) => compareRows(table, one, other));
    expect(rows.map((row) => row["id"])).toEqual(sorted.map((row) => row["id"]));
  });

  it("has no row twice, and exactly one default row for each id", () => {
    expect(new Set(rows.map((row) => JSON.stringify(row))).size).toBe(rows.length);
    // Tables of facts side by side have no defaults: there each row has its own id.
    const defaults = rows.filter((row) => (row["default"] ?? "yes") === "yes").map((row) => row["id"]);
    expect(new Set(defaults).size).toBe(defaults.length);
    expect(new Set(rows.map((row) => row["id"]))).toEqual(new Set(defaults));
  });
});

describe("tables together", () => {
  const defaultsOf = (name: string) =>
    new Map(
      loadTable(name)
        .rows.filter((row) => row["default"] === "yes")
        .map((row) => [row["id"], row] as const),
    );

  it("pipes take roughness and coefficient from the default row of their material", () => {
    const [roughness, coefficients] = [defaultsOf("roughness"), defaultsOf("hazen-williams")];
    for (const pipe of loadTable("pipes").rows) {
      expect(pipe["roughness_mm"], pipe["id"]).toBe(roughness.get(pipe["material"])?.["roughness_mm"]);
      expect(pipe["hazen_williams_c"], pipe["id"]).toBe(
        coefficients.get(pipe["material"])?.["hazen_williams_c"],
      );
    }
  });

  it("bores grow along the order of every family of pipe", () => {
    const last = new Map<string, number>();
    for (const pipe of defaultsOf("pipes").values()) {
      expect(Number(pipe["bore_mm"]), pipe["id"]).toBeGreaterThan(last.get(pipe["family"]!) ?? 0);
      last.set(pipe["family"]!, Number(pipe["bore_mm"]));
    }
  });

  it("every published bore of a pipe lies in the range its default row gives", () => {
    const defaults = defaultsOf("pipes");
    for (const row of loadTable("pipes").rows) {
      const pipe = defaults.get(row["id"])!;
      expect(Number(row["bore_mm"]), row["id"]).toBeGreaterThanOrEqual(Number(pipe["bore_low_mm"]));
      expect(Number(row["bore_mm"]), row["id"]).toBeLessThanOrEqual(Number(pipe["bore_high_mm"]));
    }
  });

  it("the flow law of each drinker stays inside the range charted for it at every head", () => {
    const drinkers = defaultsOf("drinkers");
    for (const point of loadTable("drinker-charts").rows) {
      const drinker = drinkers.get(point["drinker"])!;
      const ratio = Number(point["head_mm"]) / Number(drinker["head_mm"]);
      const flow = Number(drinker["flow_ml_min"]) * ratio ** Number(drinker["exponent"]);
      expect(flow, point["id"]).toBeGreaterThanOrEqual(Number(point["flow_low_ml_min"]));
      expect(flow, point["id"]).toBeLessThanOrEqual(Number(point["flow_high_ml_min"]));
    }
  });

  it("fittings: other published constants lie inside the scatter of the default at the size they name", () => {
    const defaults = defaultsOf("fittings");
    // Partly closed valves, and bends whose radius the general tables leave open, are other things under one name.
    const rows = loadTable("fittings").rows.filter(
      (row) => row["form"] === "constant" && !/closed/.test(row["note"]!),
    );
    for (const row of rows) {
      const fitting = defaults.get(row["id"])!;
      const bore = row["size"] === "any" ? 1 : inches(row["size"]!.replace(" in", ""));
      const correction = 1 + Number(fitting["size_correction_mm"]) / 25.4 / bore;
      const k = Number(fitting["k1"]) / 1e5 + Number(fitting["k_infinity"]) * correction;
      const ratio = Number(row["k"]) / k;
      const label = `${row["id"]} ${row["size"]} K ${row["k"]} (${row["source"]}) is ${ratio.toFixed(2)} of the default`;
      expect(ratio, label).toBeGreaterThanOrEqual(Number(fitting["low_factor"]));
      expect(ratio, label).toBeLessThanOrEqual(Number(fitting["high_factor"]));
    }
  });
});

describe("sources.json", () => {
  it("is sorted by key and says of each source what it is and when it was opened", () => {
    expect(Object.keys(sources)).toEqual(Object.keys(sources).sort());
    for (const [key, source] of Object.entries(sources)) {
      expect(key).toMatch(/^[a-z0-9][a-z0-9-]*$/);
      expect(Object.keys(source)).toEqual([
        "authors",
        "title",
        "publisher",
        "year",
        "edition",
        "link",
        "opened",
      ]);
      expect(source["title"], key).not.toBe("");
      expect(source["opened"], key).toMatch(/^(from memory|\d{4}-\d\d-\d\d)$/);
      expect(source["link"], key).toMatch(/^(https?:\/\/\S+)?$/);
    }
  });
});
