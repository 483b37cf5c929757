import { readFileSync } from "node:fs";
import { parseAst } from "vite";
import { expect, test } from "vitest";
import { descriptionsIn } from "../../../packages/ui/without-descriptions.js";

const parse = (code: string) => parseAst(code) as unknown as Parameters<typeof descriptionsIn>[0];
const textsIn = (code: string) => descriptionsIn(parse(code)).map(({ start, end }) => code.slice(start, end));

test("descriptionsIn finds what describes, and nothing else that is said", () => {
  const code = `
    const a = optional(quantity("length", { min: 0, max: 1, words: "from 0 to 1 m" }, "How long.", "stand"));
    const b = describe(z.literal("upright"), \`A barrel that stands.\`, { rule: "none" });
    const c = name("Its name.");
    const d = count(1, 9, "How many.");
    const e = other("said", "kept");
  `;
  expect(textsIn(code)).toEqual(['"How long."', "`A barrel that stands.`", '"Its name."', '"How many."']);
});

test("a description that is computed is left as it is", () => {
  expect(textsIn('const a = describe(schema, words); const b = text(80, x + "y");')).toEqual([]);
});

test("no message of the reader is among what is left out", () => {
  const sources = [
    "schema-parts",
    "plan-schema",
    "run-schema",
    "shelf-schema",
    "source-schema",
    "birds-schema",
  ].map((file) =>
    readFileSync(new URL(`../../../packages/hydraulics/dist/document/${file}.js`, import.meta.url), "utf8"),
  );
  const found = sources.flatMap(textsIn);
  expect(found.length).toBeGreaterThan(100);
  for (const text of found) expect(text).not.toMatch(/Write for instance|Check the unit|Allowed/);
});
