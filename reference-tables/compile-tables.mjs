/**
 * Compiles the reference tables to typed modules, in SI units: `node reference-tables/compile-tables.mjs`.
 * The output is committed; a test holds it to what this file makes. Only default rows travel, and of a
 * citation only key, place and how it is known: notes and other published values stay in the tables.
 */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { compileWaterers } from "./compile-waterers.mjs";
import { loadSources, loadTable } from "./load-tables.mjs";
import { cellOf, citationOf, defaultRows, field, moduleOf, objectOf, siValue, words } from "./table-rows.mjs";

const shapeColumns = {
  upright: ["diameter_mm", "height_mm"],
  lying: ["diameter_mm", "length_mm"],
  tapered: ["bottom_diameter_mm", "top_diameter_mm", "height_mm"],
  box: ["length_mm", "width_mm", "height_mm"],
};

function vesselOf(table, row) {
  const shape = { kind: row.shape };
  for (const column of shapeColumns[row.shape]) shape[field(column, "mm")] = cellOf(table, row, column);
  const { id, name, also, citation, nominalL, ...rest } = {
    ...objectOf(table, row, ["id", "name", "outlet_height_mm", "empty_mass_kg"]),
    nominalVolume: cellOf(table, row, "nominal_l"),
  };
  return { id, name, shape, ...rest, also, citation };
}

const pipeColumns =
  "id name family nominal material outside_mm wall_mm bore_mm bore_low_mm bore_high_mm hazen_williams_c roughness_mm order";
const drinkerColumns =
  "id name kind worked_by head_mm flow_ml_min flow_low_ml_min flow_high_ml_min exponent opening_head_mm seals_from_mm " +
  "holds_up_to_mm need_ml_min held_ml birds";

/** A hose has no wall of its own in any standard: outside and wall are then left out. */
function pipeOf(table, row) {
  const columns = pipeColumns
    .split(" ")
    .filter((column) => !(/^(outside|wall)_mm$/.test(column) && row[column] === ""));
  const { hazenWilliamsC, ...rest } = objectOf(table, row, columns);
  const { roughness, order, citation, ...first } = rest;
  return { ...first, hazenWilliams: hazenWilliamsC, roughness, order, citation };
}

/**
 * Pipes are many and alike: what a family shares is written once, and each size as a row of figures, for the sake of
 * the page's first load. `pipes.ts` puts them together again.
 */
function pipesModule() {
  const table = loadTable("pipes");
  const families = new Map();
  for (const row of defaultRows(table)) {
    const pipe = pipeOf(table, row);
    const shared = [pipe.family, pipe.material, pipe.hazenWilliams, pipe.roughness, pipe.citation];
    const key = JSON.stringify(shared);
    const group = families.get(key) ?? { shared, sizes: [] };
    families.set(key, group);
    const { id, name, nominal, outside = 0, wall = 0, bore, boreLow, boreHigh, order } = pipe;
    group.sizes.push([id, name, nominal, outside, wall, bore, boreLow, boreHigh, order]);
  }
  return [
    "// Made from reference-tables/pipes.csv by reference-tables/compile-tables.mjs. Edit the table, not this file.",
    'import type { PipeGroup } from "./row-types.js";',
    "",
    "export const pipeGroups: readonly PipeGroup[] = [",
    ...[...families.values()].flatMap(
      ({ shared: [family, material, hazenWilliams, roughness, citation], sizes }) => [
        `  {${Object.entries({ family, material, hazenWilliams, roughness, citation })
          .map(([key, value]) => `"${key}":${JSON.stringify(value)}`)
          .join(",")},"sizes":[`,
        ...sizes.map((size) => `    ${JSON.stringify(size)},`),
        "  ]},",
      ],
    ),
    "];",
    "",
  ].join("\n");
}

/** Allowances of drinkers that give a number. */
function allowancesModule() {
  const table = loadTable("drinker-allowance");
  const days = (text, blank) => (text === "" ? blank : Number(text));
  const rows = table.rows
    .filter((row) => row.counts !== "")
    .map((row) => ({
      id: row.id,
      regions: words(row.regions),
      birds: words(row.birds),
      of: row.class,
      fromDays: days(row.age_from_d, 0),
      toDays: days(row.age_to_d, 36_500),
      devices: words(row.devices_meant),
      counts: row.counts,
      figure:
        row.counts === "edge" ? siValue(row.edge_mm, "mm") : Number(row.birds_per_device || row.devices),
      bindsFrom: row.binding === "yes" ? Number(row.binding_from_birds) : 0,
      ...(row.to_birds === "" ? {} : { toBirds: Number(row.to_birds) }),
      status: row.status,
      citation: citationOf(row),
    }));
  return moduleOf("drinker-allowance.csv", "Allowance", rows).replace(
    "const drinker-allowance",
    "const allowances",
  );
}

/** Roofs that a plan can name: those with a middling runoff. */
function roofsModule() {
  const table = loadTable("roofs");
  const rows = table.rows
    .filter((row) => row.runoff !== "")
    .map((row) => ({
      id: row.id,
      name: row.roof,
      runoff: Number(row.runoff),
      runoffLow: Number(row.runoff_low || row.runoff),
      runoffHigh: Number(row.runoff_high || row.runoff),
      wetting: siValue(row.first_loss_high_mm === "" ? "0.5" : row.first_loss_high_mm, "mm"),
      citation: citationOf(row),
    }))
    .map(({ id, name, runoff, runoffLow, runoffHigh, wetting, citation: { source, where, seen } }) => [
      id,
      name,
      runoff,
      runoffLow,
      runoffHigh,
      wetting,
      source,
      where,
      seen,
    ]);
  return moduleOf("roofs.csv", "RoofRow", rows);
}

/** What building a line asks of tables: soils, threads, holes, lengths sold. Blanks become 0. */
function buildingModule() {
  const rowsOf = (name, columns) => {
    const table = loadTable(name);
    return table.rows.map((row) => ({
      ...Object.fromEntries(
        columns.split(" ").map((column) => {
          const { unit } = table.about.columns[column];
          return [
            field(column, unit),
            row[column] === "" && unit !== "text" ? 0 : cellOf(table, row, column),
          ];
        }),
      ),
      citation: citationOf(row),
    }));
  };
  const listOf = (name, type, rows) => [
    `export const ${name}: readonly ${type}[] = [`,
    ...rows.map((row) => `  ${JSON.stringify(row)},`),
    "];",
  ];
  return [
    "// Made from reference-tables/soils, threads, holes and stock-lengths.csv by reference-tables/compile-tables.mjs. Edit the tables, not this file.",
    'import type { Hole, Soil, StockLength, Thread } from "./building-types.js";',
    "",
    ...listOf("soils", "Soil", rowsOf("soils", "id name pressure_kpa")),
    "",
    ...listOf("threads", "Thread", rowsOf("threads", "id kind size name major_mm per_inch hole_mm tap_mm")),
    "",
    ...listOf("holes", "Hole", rowsOf("holes", "id part name thread hole_mm hole_low_mm hole_high_mm")),
    "",
    ...listOf("stockLengths", "StockLength", rowsOf("stock-lengths", "id family form length_mm")),
    "",
  ].join("\n");
}

function spilledModule() {
  const table = loadTable("spilled-share");
  const columns = "id device spilled spilled_low spilled_high".split(" ");
  const rows = table.rows.map((row) => objectOf(table, row, columns));
  return moduleOf("spilled-share.csv", "SpilledShare", rows).replace(
    "const spilled-share",
    "const spilledShares",
  );
}

/** Frost materials: degrees are left out where the material has no such limit. */
function frostMaterialsModule() {
  const degrees = (row, column, name) => (row[column] === "" ? {} : { [name]: Number(row[column]) });
  const rows = loadTable("frost-materials").rows.map((row) => ({
    id: row.id,
    name: row.name,
    pipes: words(row.pipes),
    ...degrees(row, "brittle_below_c", "brittleBelow"),
    ...degrees(row, "softens_above_c", "softensAbove"),
    bursts: row.bursts === "yes",
    note: row.note,
    citation: citationOf(row),
  }));
  return weatherModuleOf("frost-materials", "FrostMaterial", rows, "frostMaterials");
}

function coloursModule() {
  const columns = "id name absorptance absorptance_low absorptance_high".split(" ");
  const table = loadTable("colours");
  const rows = table.rows.map((row) => objectOf(table, row, columns));
  return weatherModuleOf("colours", "SunColour", rows, "sunColours");
}

/** Types of the tables of weather stand apart from those that come with the page's first load. */
const weatherModuleOf = (table, type, rows, name) =>
  moduleOf(`${table}.csv`, type, rows)
    .replace("./row-types.js", "./weather-types.js")
    .replace(`const ${table}`, `const ${name}`);

const fittingOf = (table, row) => {
  const { lowFactor, highFactor, also, citation, ...rest } = objectOf(
    table,
    row,
    "id name k1 k_infinity size_correction_mm low_factor high_factor".split(" "),
  );
  return { ...rest, low: lowFactor, high: highFactor, also, citation };
};

/** Rows of one bird, the youngest first. */
const rowsOfBird = (table, bird) =>
  table.rows.filter((row) => row.bird === bird).sort((a, b) => Number(a.age_d) - Number(b.age_d));

/** A list of citations, each once, and the place of a row's in it. */
function citationList() {
  const citations = [];
  const cite = (row) => {
    const citation = [row.source, row.where, row.seen];
    const at = citations.findIndex((one) => one.join() === citation.join());
    return at < 0 ? citations.push(citation) - 1 : at;
  };
  return { citations, cite };
}

/** How high drinkers hang for each bird; apart from the birds, since only what is told of them needs it. */
function birdHeightsModule() {
  const table = loadTable("bird-height");
  const { citations, cite } = citationList();
  const rows = [...new Set(table.rows.map((row) => row.bird))].map((bird) => [
    bird,
    rowsOfBird(table, bird).map((row) => [
      row.device,
      Number(row.age_d),
      ...["height_mm", "height_low_mm", "height_high_mm"].map((column) => siValue(row[column], "mm")),
      cite(row),
    ]),
  ]);
  return [
    "// Made from reference-tables/bird-height.csv by reference-tables/compile-tables.mjs. Edit the table, not this file.",
    'import type { CitationRow, HangRow } from "./bird-types.js";',
    "",
    "export const hangCitations: readonly CitationRow[] = [",
    ...citations.map((citation) => `  ${JSON.stringify(citation)},`),
    "];",
    "",
    "export const hangRows: readonly (readonly [string, readonly HangRow[]])[] = [",
    ...rows.map((row) => `  ${JSON.stringify(row)},`),
    "];",
    "",
  ].join("\n");
}

/**
 * Birds with what they drink: rows of figures, and each citation once, as they come with the page's first load.
 * `birds.ts` puts them together again.
 */
function birdsModule() {
  const table = loadTable("birds");
  const intake = loadTable("bird-intake");
  const { citations, cite } = citationList();
  const drunk = (bird, figure) =>
    rowsOfBird(intake, bird)
      .filter((row) => row.figure === figure)
      .map((row) => [
        Number(row.age_d),
        row.lay_percent === "" ? -1 : Number(row.lay_percent) / 100,
        Number(row.intake_ml),
        row.confidence[0],
        cite(row),
      ]);
  const rows = table.rows.map((row) => {
    const figure = (column) => Number(row[column]);
    return {
      id: row.id,
      name: row.name,
      many: row.many,
      species: row.species,
      also: words(row.also),
      grownDays: Number(row.grown_d),
      lays: row.lays === "yes",
      boutsClosed: Number(row.bouts_closed),
      boutsOpen: Number(row.bouts_open),
      fastest: figure("fastest_ml_min"),
      dayShape: row.day_shape,
      flowNeed: {
        atHatching: figure("need_hatching_ml_min"),
        perWeek: figure("need_week_ml_min"),
        most: figure("need_most_ml_min"),
      },
      drownsUntilDays: Number(row.drowns_until_d),
      size: drunk(row.id, "size"),
      expect: drunk(row.id, "expect"),
    };
  });
  return [
    "// Made from reference-tables/birds.csv and bird-intake.csv by reference-tables/compile-tables.mjs. Edit the tables, not this file.",
    'import type { BirdRow, CitationRow } from "./bird-types.js";',
    "",
    "export const birdCitations: readonly CitationRow[] = [",
    ...citations.map((citation) => `  ${JSON.stringify(citation)},`),
    "];",
    "",
    "export const birds: readonly BirdRow[] = [",
    ...rows.map((row) => `  ${JSON.stringify(row)},`),
    "];",
    "",
  ].join("\n");
}

function tableModule(name, type, make) {
  const table = loadTable(name);
  return moduleOf(
    `${name}.csv`,
    type,
    defaultRows(table).map((row) => make(table, row)),
  );
}

const compiled = ["pipes", "fittings", "drinkers", "vessels", "waterers"];
/** Compiled whole: no row of theirs is chosen among others. */
const compiledWhole = [
  "bird-height",
  "bird-intake",
  "birds",
  "colours",
  "drinker-allowance",
  "frost-materials",
  "holes",
  "roofs",
  "soils",
  "spilled-share",
  "stock-lengths",
  "threads",
];

/** Keys after `@source` in the library: the sources of its formulas. */
function keysOfFormulas() {
  const src = new URL("../packages/hydraulics/src/", import.meta.url);
  return readdirSync(src, { recursive: true })
    .filter((file) => file.endsWith(".ts") && !file.endsWith(".generated.ts"))
    .flatMap((file) => [...readFileSync(new URL(file, src), "utf8").matchAll(/@source\s+([\w-]+)/g)])
    .map(([, key]) => key);
}

/** Sources of compiled rows and of formulas. Those of tests and of tables not compiled stay behind. */
function sourcesThatTravel() {
  const ofRows = compiled.flatMap((name) => defaultRows(loadTable(name)).map((row) => row.source));
  const ofWhole = compiledWhole.flatMap((name) => loadTable(name).rows.map((row) => row.source));
  const cited = new Set([...ofRows, ...ofWhole, ...keysOfFormulas()]);
  return Object.entries(loadSources()).filter(([key]) => cited.has(key));
}

/** Empty fields of a source are left out. */
function sourcesModule() {
  const rows = sourcesThatTravel().map(([key, source]) => ({
    key,
    ...Object.fromEntries(Object.entries(source).filter(([, value]) => value !== "")),
  }));
  return moduleOf("sources.json", "Source", rows);
}

/** File name to text, for every module the tables give. */
export function compileTables() {
  return new Map([
    ["pipes.generated.ts", pipesModule()],
    ["fittings.generated.ts", tableModule("fittings", "FittingKind", fittingOf)],
    [
      "drinkers.generated.ts",
      tableModule("drinkers", "DrinkerKind", (table, row) => objectOf(table, row, drinkerColumns.split(" "))),
    ],
    ["vessels.generated.ts", tableModule("vessels", "VesselKind", vesselOf)],
    ["bird-heights.generated.ts", birdHeightsModule()],
    ["birds.generated.ts", birdsModule()],
    ["allowances.generated.ts", allowancesModule()],
    ["colours.generated.ts", coloursModule()],
    ["frost-materials.generated.ts", frostMaterialsModule()],
    ["roofs.generated.ts", roofsModule()],
    ["spilled-share.generated.ts", spilledModule()],
    ["building.generated.ts", buildingModule()],
    ...compileWaterers(),
    ["sources.generated.ts", sourcesModule()],
  ]);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const folder = new URL("../packages/hydraulics/src/tables/", import.meta.url);
  for (const [file, text] of compileTables()) writeFileSync(new URL(file, folder), text);
}
