import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { beforeAll, expect, test } from "vitest";
import { readPlan } from "../../packages/hydraulics/src/index.js";
import { buildCommand } from "../command/run-headfall.js";

beforeAll(buildCommand, 120_000);

const docs = new URL("../../docs/", import.meta.url);
const schema: unknown = JSON.parse(readFileSync(new URL("plan.schema.json", docs), "utf8"));

interface Described {
  readonly path: string;
  readonly description: unknown;
  readonly fallback: unknown;
  readonly type: unknown;
}

/** Every key of every object of the schema. */
function keysOf(part: unknown, path: string): Described[] {
  if (typeof part !== "object" || part === null) return [];
  return Object.entries(part).flatMap(([name, inside]): Described[] => {
    const deeper = keysOf(inside, `${path}/${name}`);
    if (name !== "properties") return deeper;
    const here = Object.entries(inside as Record<string, Record<string, unknown>>).map(([key, value]) => ({
      path: `${path}/${key}`,
      description: value["description"],
      fallback: value["default"],
      type: value["type"],
    }));
    return [...here, ...deeper];
  });
}

test("docs/plan.schema.json and the tables of plan-file.md are what the definition gives", () => {
  const run = spawnSync(process.execPath, ["docs/write-schema.mjs", "--check"], {
    cwd: fileURLToPath(new URL("..", docs)),
    encoding: "utf8",
  });
  expect(run).toMatchObject({ status: 0, stderr: "" });
});

test("every key of the schema is described, and a default is of the type of its key", () => {
  const keys = keysOf(schema, "");
  expect(keys.length).toBeGreaterThan(80);
  for (const { path, description, fallback, type } of keys) {
    expect([path, typeof description]).toEqual([path, "string"]);
    if (type === "integer") expect(["undefined", "number"]).toContain(typeof fallback);
    if (type === "string") expect(["undefined", "string"]).toContain(typeof fallback);
  }
  expect(keys.filter(({ fallback }) => fallback !== undefined).length).toBeGreaterThan(10);
});

test("the shortest plan shown in plan-file.md is a plan", () => {
  const text = readFileSync(new URL("reference/plan-file.md", docs), "utf8");
  const shown = /```json\n([\s\S]*?)```/.exec(text)?.[1] ?? "";
  expect(readPlan(shown)).toMatchObject({ ok: true });
});
