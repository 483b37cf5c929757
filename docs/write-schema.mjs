/**
 * Writes what the docs say of the plan file from its one definition, packages/hydraulics/src/document/:
 * plan.schema.json (here and in the package), and the tables of keys in reference/plan-file.md. Needs the packages to be built.
 *   npm run schema                      write
 *   node docs/write-schema.mjs --check  write nothing; exit status 1 when something is out of date
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import * as z from "zod/mini";
import { planSchema } from "../packages/hydraulics/dist/document/plan-schema.js";

/** How the end of a description tells what the text is, and what the table calls it. */
const TEXTS = [
  [
    / An? (length|area|head|volume|flow|temperature|time|slope|speed|sunshine), ([\s\S]*)\.$/,
    ([, kind, range]) => `${kind}, ${range}`,
  ],
  [/ Year, month, day: (`[^`]*`)\.$/, ([, example]) => `a day: ${example}`],
  [/ Hours and minutes: (`[^`]*`)\.$/, ([, example]) => `a time of day: ${example}`],
  [/ A share such as (`[^`]*`)\.$/, ([, example]) => `a share such as ${example}`],
];

const schema = finished(z.toJSONSchema(planSchema, { io: "input", target: "draft-2020-12" }));
const page = new URL("reference/plan-file.md", import.meta.url);
const schemaText = `${compact(JSON.stringify(schema, null, 2))}\n`;
const outputs = [
  [new URL("plan.schema.json", import.meta.url), schemaText],
  [new URL("../packages/hydraulics/schemas/plan.schema.json", import.meta.url), schemaText],
  [page, withTables(readFileSync(page, "utf8"))],
];

const isCheck = process.argv.includes("--check");
for (const [url, text] of outputs) {
  const before = existsSync(url) ? readFileSync(url, "utf8") : undefined;
  if (before === text) continue;
  if (isCheck) {
    process.stderr.write(
      `${url.pathname.split("/").slice(-2).join("/")} is out of date: run npm run schema\n`,
    );
    process.exitCode = 1;
  } else writeFileSync(url, text);
}

/** The schema with a title, and defaults of the type their key has (a count is typed "1" and means 1). */
function finished(raw) {
  const { $schema, ...rest } = raw;
  const typed = (part) => {
    if (typeof part !== "object" || part === null) return part;
    if (Array.isArray(part)) return part.map(typed);
    const entries = Object.entries(part).map(([key, value]) => [key, typed(value)]);
    const result = Object.fromEntries(entries);
    if (result.type === "integer" && typeof result.default === "string")
      result.default = Number(result.default);
    return result;
  };
  const title = "Headfall plan, version 1";
  const description = "Quantities are text with their unit, as typed: 55 gal, 3/4 in, 2 ft 6 in, 40 mL/min.";
  return { $schema, $id: "plan.schema.json", title, description, ...typed(rest) };
}

/** Lists of words on one line where they fit, as the formatter has them. */
function compact(json) {
  return json.replace(/^(.*)\[\n\s+("[^"\n]*"(?:,\n\s+"[^"\n]*")*)\n\s+\]/gm, (whole, before, words) => {
    const line = `${before}[${words.replace(/,\n\s+/g, ", ")}]`;
    return line.length <= 109 ? line : whole;
  });
}

/** The page with the table after each `<!-- keys: name -->` made anew; it ends at `<!-- end -->`. */
function withTables(markdown) {
  const parts = objectsOf(schema);
  const asked = new Set();
  const text = markdown.replace(/(<!-- keys: (\w+) -->\n)[\s\S]*?(<!-- end -->)/g, (_, start, name, end) => {
    if (parts[name] === undefined)
      throw new Error(`plan-file.md asks for the keys of "${name}"; there is no such part.`);
    asked.add(name);
    return `${start}\n${tableOf(parts[name])}\n\n${end}`;
  });
  const missing = Object.keys(parts).filter((name) => !asked.has(name));
  if (missing.length > 0) throw new Error(`plan-file.md has no table for: ${missing.join(", ")}.`);
  return text;
}

/** Every object of the format, by the name its table is asked for with. */
function objectsOf(plan) {
  const { sources, points, runs, pens, weather, carry, ownDrinkers, shelf, prices, doubts, contacts, kit } =
    plan.properties;
  const object = (part, which = 0) => flat(part).filter((one) => one.type === "object")[which];
  const source = sources.items.properties;
  const run = runs.items.properties;
  const own = ownDrinkers.additionalProperties;
  const pen = pens.items;
  const shapes = Object.fromEntries(
    flat(source.vessel)
      .filter((one) => one.type === "object")
      .map((one) => [one.properties.shape.const, one]),
  );
  return {
    plan,
    source: sources.items,
    ...shapes,
    tableReading: shapes.table.properties.readings.items,
    level: source.level,
    ventOpening: object(source.vent, 0),
    airTube: object(source.vent, 1),
    refillByHand: object(source.refill, 0),
    refillHose: object(source.refill, 1),
    roof: source.roof,
    feed: source.feed,
    place: source.place,
    point: points.items,
    run: runs.items,
    surveyReading: run.survey.items,
    pipe: object(run.pipe),
    fitting: object(run.fittings.items),
    oneWay: object(run.oneWay),
    regulator: run.regulator,
    drinkers: object(run.drinkers),
    pen,
    birds: object(pen.properties.birds),
    waterer: pen.properties.waterers.items,
    watererSizes: pen.properties.waterers.items.properties.sizes,
    weather,
    hotSpell: weather.properties.hotSpell,
    month: weather.properties.months.items,
    frost: weather.properties.frost,
    carry,
    ownDrinker: own,
    ownReading: own.properties.readings.items,
    shelfEntry: shelf.items,
    prices,
    doubts,
    footing: source.footing,
    pad: source.footing.properties.pad,
    contact: contacts.items,
    kitEntry: kit.items,
    move: object(pen.properties.birds).properties.moves.items,
  };
}

/** The ways a part may be written, those of a choice within a choice among them. */
function flat(part) {
  return part.anyOf === undefined ? [part] : part.anyOf.flatMap(flat);
}

function tableOf(part) {
  const rows = Object.entries(part.properties).map(([key, value]) => {
    const { meaning, range, instead } = describedIn(value);
    const isNeeded = part.required?.includes(key) ?? false;
    return [
      `\`${key}\``,
      meaning,
      range ?? writtenAs(value),
      isNeeded ? "**must be there**" : (instead ?? "none"),
    ];
  });
  const lines = [["key", "meaning", "written as", "if left out"], ["---", "---", "---", "---"], ...rows];
  return lines
    .map((cells) => `| ${cells.map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`)
    .join("\n");
}

/** A description taken apart: what it means, how it is written, what stands in where it is left out. */
function describedIn(value) {
  const [before, instead] = value.description.split(" If left out: ");
  const [end, range] =
    TEXTS.map(([pattern, write]) => [pattern.exec(before), write]).find(([found]) => found !== null) ?? [];
  return {
    meaning: end === undefined ? before : before.slice(0, end.index),
    range: end === undefined ? undefined : range(end),
    instead: instead?.replace(/\.$/, ""),
  };
}

function writtenAs(value) {
  if (value.anyOf !== undefined) return [...new Set(flat(value).map(writtenAs))].join(", or ");
  if (value.const !== undefined) return `\`${JSON.stringify(value.const)}\``;
  if (value.enum !== undefined) return value.enum.map((one) => `\`"${one}"\``).join(", ");
  if (value.pattern !== undefined) return 'a share such as `"50 %"`';
  switch (value.type) {
    case "string":
      if (value.maxLength === undefined) {
        const { range } = describedIn(value);
        if (range === undefined) break;
        return range;
      }
      return `text of 1 to ${value.maxLength} characters`;
    case "integer":
      return `a whole number from ${value.minimum} to ${value.maximum}`;
    case "number":
      return `a number from ${value.minimum} to ${value.maximum}`;
    case "boolean":
      return "`true` or `false`";
    case "array":
      return `a list of ${value.minItems === undefined ? "up" : value.minItems} to ${value.maxItems}`;
    case "object":
      return "an object: see its own table";
  }
  throw new Error(`write-schema: no words for ${JSON.stringify(value).slice(0, 80)}`);
}
