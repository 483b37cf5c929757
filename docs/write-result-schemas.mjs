/**
 * Writes packages/hydraulics/schemas/: a JSON Schema of each document that the command prints, from the types of the
 * functions that write them.
 *   node docs/write-result-schemas.mjs
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { openTypes, schemaOfResult } from "./result-schema.mjs";

/** Each document: its name, the function that writes it, what it holds. */
export const DOCUMENTS = [
  ["check", "writeCheckDocument", "heads, flows and verdicts"],
  ["measure", "writeMeasureDocument", "which measurements to take again"],
  ["birds", "writeBirdsDocument", "what birds drink and need"],
  ["weeks", "writeWeeksDocument", "this week and each that comes"],
  ["year", "writeYearDocument", "a year and its kit"],
  ["yard", "writeYardDocument", "loose waterers"],
  ["day", "writeDayDocument", "one simulated day"],
  ["days", "writeDaysDocument", "many simulated days"],
  ["lasts", "writeLastingDocument", "how long the water lasts"],
  ["away", "writeAwayDocument", "going away"],
  ["mark", "writeMarkDocument", "the daily mark"],
  ["rain", "writeRainDocument", "a roof and a vessel through a record of rain"],
  ["frost", "writeFrostDocument", "a night of frost"],
  ["frost record", "writeFrostRecordDocument", "a record of nights"],
  ["heat record", "writeHeatRecordDocument", "a record of hot days"],
  ["heat", "writeHeatDocument", "a hot day"],
  ["mishaps", "writeMishapsDocument", "what any one mishap does"],
  ["trouble", "writeTroubleDocument", "what is likely wrong"],
  ["sizes", "writeSizesDocument", "pipe sizes compared"],
  ["cure", "writeCureDocument", "the smallest changes that make a plan work"],
  ["front", "writeFrontDocument", "what more margin costs, what more height saves"],
  ["build", "writeBuildDocument", "how to build it"],
  ["compare", "writeVariantsDocument", "plans side by side"],
];

export const fileOf = (name) => `${name.replace(" ", "-")}.schema.json`;

const at = (path) => fileURLToPath(new URL(path, import.meta.url));

/** One document's schema, with its name and version as they are printed. */
function schemaOf(types, [name, writer, what]) {
  const schema = schemaOfResult(types, at("../packages/hydraulics/src/index.ts"), writer);
  const { format: _, version: __, ...properties } = schema.properties;
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    $id: fileOf(name),
    title: `headfall ${name}, version 1: ${what}`,
    ...schema,
    properties: { format: { const: `headfall ${name}` }, version: { const: 1 }, ...properties },
  };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const types = openTypes(at("../packages/hydraulics/tsconfig.json"));
  mkdirSync(at("../packages/hydraulics/schemas"), { recursive: true });
  for (const document of DOCUMENTS) {
    const text = `${JSON.stringify(schemaOf(types, document), null, 1)}\n`;
    writeFileSync(at(`../packages/hydraulics/schemas/${fileOf(document[0])}`), text);
  }
  types.close();
}
