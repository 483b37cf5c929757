import { spawnSync } from "node:child_process";
import { expect, test } from "vitest";
import * as ui from "../../packages/ui/src/index.js";
import { readDocument, TOP } from "./documents.js";

const page = readDocument("docs/reference/elements.md");
const exported: readonly unknown[] = Object.values(ui);
const elements = exported.filter(isElement);

interface EventClass {
  readonly name: string;
  readonly eventName: string;
}

interface ElementClass {
  readonly name: string;
  readonly properties: Readonly<Record<string, { readonly state?: boolean; readonly attribute?: boolean }>>;
}

function isElement(one: unknown): one is ElementClass {
  return typeof one === "function" && "properties" in one;
}

function isEvent(one: unknown): one is EventClass {
  return typeof one === "function" && "eventName" in one;
}

/** The section of one element, by its class. */
function sectionOf({ name }: ElementClass): string {
  const sections = page.split(/\n(?=## )/).filter((section) => section.includes(` Class \`${name}\`.`));
  expect([name, sections.length]).toEqual([name, 1]);
  return sections[0]!;
}

test("docs/reference/elements.md says what the sources of the elements say of themselves", () => {
  const run = spawnSync(process.execPath, ["docs/write-elements.mjs", "--check"], {
    cwd: TOP,
    encoding: "utf8",
  });
  expect(run).toMatchObject({ status: 0, stderr: "" });
});

test("every element that the package exports has a section, and every public property a row with its attribute", () => {
  expect(elements.length).toBe(22);
  for (const element of elements) {
    const section = sectionOf(element);
    for (const [name, { state, attribute }] of Object.entries(element.properties)) {
      const row = new RegExp(`^\\| \`${name}\` \\| (.*?) \\|`, "m").exec(section)?.[1];
      const expected = state ? undefined : attribute === false ? "" : `\`${name.toLowerCase()}\``;
      expect([element.name, name, row?.replace(", reflected", "")]).toEqual([element.name, name, expected]);
    }
  }
});

test("every event class that the package exports is in the table of events", () => {
  const events = exported.filter(isEvent);
  expect(events.length).toBe(9);
  for (const { eventName, name } of events) expect(page).toContain(`| \`${eventName}\` | \`${name}\` |`);
});

test("every type that the tables name is written out below them, or said whose it is", () => {
  const rows = [...page.matchAll(/^\| `.*$/gm)].map(([row]) => row.replace(/"[^"]*"/g, ""));
  const spans = rows.flatMap((row) => [...row.matchAll(/`([^`]+)`/g)].map(([, text]) => text!));
  const named = new Set(spans.flatMap((text) => text.match(/\b[A-Z][a-z]\w*/g) ?? []));
  const types = page.slice(page.indexOf("## Types"));
  const isExplained = (name: string) =>
    new RegExp(`\`${name}\`|^export (type|interface) ${name}\\b`, "m").test(types);
  const classes = /^Headfall|Event$|^(Promise|PlanStore)$/;
  expect(named.size).toBeGreaterThan(25);
  expect([...named].filter((name) => !classes.test(name) && !isExplained(name))).toEqual([]);
});
