/**
 * Writes what reference/elements.md says of the elements from their own sources in packages/ui/src: the text after
 * each `<!-- element: ... -->`, `<!-- events -->` and so on, up to `<!-- end -->`.
 *   npm run elements                      write
 *   node docs/write-elements.mjs --check  write nothing; exit status 1 when something is out of date
 */
import { readFileSync, writeFileSync } from "node:fs";
import { readColours, readEdits, readElements, readEvents, readOffered, readType } from "./read-elements.mjs";

const page = new URL("reference/elements.md", import.meta.url);
const elements = readElements();
const before = readFileSync(page, "utf8");
const after = withSections(before);

if (after !== before) {
  if (process.argv.includes("--check")) {
    process.stderr.write("reference/elements.md is out of date: run npm run elements\n");
    process.exitCode = 1;
  } else writeFileSync(page, after);
}

/** The page with every section made anew; one that is missing is an error. */
function withSections(markdown) {
  const made = {
    ...Object.fromEntries(elements.map((element) => [`element: ${element.tag}`, elementText(element)])),
    events: eventsTable(),
    edits: editsTable(),
    store: [offeredTable("store/plan-store.ts", "PlanStore")],
    colours: coloursTable(),
    types: typesText(),
  };
  const asked = new Set();
  const text = markdown.replace(/(<!-- ([\w:\- ]+) -->\n)[\s\S]*?(<!-- end -->)/g, (_, start, name, end) => {
    if (made[name] === undefined)
      throw new Error(`elements.md asks for "${name}"; there is no such section.`);
    asked.add(name);
    return `${start}\n${made[name].join("\n\n")}\n\n${end}`;
  });
  const missing = Object.keys(made).filter((name) => !asked.has(name));
  if (missing.length > 0) throw new Error(`elements.md has no section for: ${missing.join(", ")}.`);
  return text;
}

function elementText({ purpose, name, definedBy, properties, results, methods, events, parts }) {
  const loaded = definedBy === "define" ? "" : ` Registered by \`${definedBy}\`.`;
  return [
    `${purpose} Class \`${name}\`.${loaded}`,
    propertiesTable(properties, results),
    ...(methods.length === 0 ? [] : [methodsTable(methods)]),
    ...(events.length === 0 ? [] : [table(["event", "fired"], events.map(pairOf))]),
    ...(parts.length === 0 ? [] : [table(["part", "what it is"], parts.map(pairOf))]),
  ];
}

function pairOf({ name, meaning }) {
  return [code(name), meaning];
}

function propertiesTable(properties, results) {
  const rows = properties.map(({ name, attribute, isReflected, type, meaning, fallback }) => [
    code(name),
    attribute === undefined ? "" : `${code(attribute)}${isReflected ? ", reflected" : ""}`,
    code(type),
    meaning,
    fallback === undefined ? "none" : code(fallback),
  ]);
  const only = results.map(({ name, type, comment }) => [code(name), "", code(type), comment, "read only"]);
  return table(["property", "attribute", "type", "meaning", "if not set"], [...rows, ...only]);
}

function methodsTable(methods) {
  const rows = methods.map(({ name, parameters, type, comment }) => [
    code(`${name}${parameters}: ${type}`),
    comment,
  ]);
  return table(["method", "what it does"], rows);
}

/** Results and methods of a class that is no element. */
function offeredTable(path, name) {
  const rows = readOffered(path, name).map(({ name: member, kind, parameters, type, comment }) => [
    code(kind === "method" ? `${member}${parameters}: ${type}` : `${member}: ${type}`),
    comment,
  ]);
  return table(["member", "meaning"], rows);
}

function eventsTable() {
  const rows = readEvents().map(({ event, name, meaning, fields }) => [
    code(event),
    code(name),
    fields.length === 0 ? "none" : fields.map(fieldText).join("; "),
    meaning.replace(/^Fired /, "").replace(/\.$/, ""),
  ]);
  return [table(["event", "class", "fields", "fired"], rows)];
}

function fieldText({ text, meaning }) {
  return `${code(text)}${meaning === undefined ? "" : ` (${meaning.replace(/\.$/, "")})`}`;
}

function editsTable() {
  const rows = readEdits().map(({ kind, fields, meaning }) => [
    code(kind),
    fields.map(fieldText).join("; "),
    meaning,
  ]);
  return [table(["kind", "fields", "what it does"], rows)];
}

function coloursTable() {
  const rows = readColours().map(({ name, meaning, fallback }) => [code(name), meaning, fallback]);
  return [table(["property", "what it is for", "if not set"], rows)];
}

/** The types the tables name, as they stand in the sources; the plan's and the check's own are in the library. */
function typesText() {
  const types = [
    ["kernels/selected.ts", "Selected"],
    ["kernels/above/spot.ts", "Ground"],
    ["store/plan-change.ts", "RunEndChoice"],
    ["store/plan-change.ts", "Edited"],
    ["store/plan-store.ts", "PlanCause"],
    ["store/plan-history.ts", "PlanStep"],
    ["store/plan-store.ts", "PlanListener"],
    ["kernels/how-got/subject.ts", "HowSubject"],
    ["kernels/how-got/request.ts", "RoomTold"],
    ["rain/rain-example.ts", "RainExample"],
    ["weather/air-example.ts", "AirExample"],
    ["cure/room.ts", "KeptPlan"],
    ["store/plan-diff.ts", "PlanDifference"],
    ["store/plan-diff.ts", "PlanDiff"],
    ["kernels/profile-path.ts", "ProfilePath"],
    ["kernels/profile-request.ts", "ProfileRequest"],
    ["line/moments-view.ts", "Shown"],
    ["line/board.ts", "BoardView"],
    ["above/states/hand.ts", "AboveTool"],
    ["fields/field-kinds.ts", "SliderKind"],
    ["sheet/saved-drawing.ts", "SavedDrawing"],
    ["sheet/sheet-choices.ts", "SheetChoices"],
    ["kernels/sheet/paper.ts", "PaperName"],
    ["kernels/sheet/sheet-request.ts", "SheetDrawing"],
  ];
  return [`\`\`\`ts\n${types.map(([path, name]) => readType(path, name)).join("\n\n")}\n\`\`\``];
}

function code(text) {
  return `\`${text}\``;
}

function table(heads, rows) {
  const lines = [heads, heads.map(() => "---"), ...rows];
  return lines
    .map((cells) => `| ${cells.map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`)
    .join("\n");
}
