import { spawnSync } from "node:child_process";
import { beforeAll, describe, expect, test } from "vitest";
import { readDocument, TOP } from "./documents.js";

interface Named {
  readonly name: string;
  readonly kind: string;
  readonly path: string;
  readonly text: string;
  readonly comment: { readonly words: string; readonly tags: readonly { tag: string; text: string }[] };
  readonly types: readonly { readonly name: string; readonly found: Named }[];
}

interface Reading {
  readonly readApi: (entry: string) => Named[];
  readonly isFunction: (one: Named) => boolean;
  readonly partsOf: (example: string) => { readonly expression: string; readonly said: string } | undefined;
  readonly isAsSaid: (value: unknown, said: string) => boolean;
  readonly evaluate: (text: string, scope: object) => unknown;
  readonly scopeOf: (own?: object) => object;
}

const docs = (path: string): Promise<Reading> => import(new URL(`../../docs/${path}`, import.meta.url).href);
let library: Named[];
let elements: Named[];
let functions: Named[];
let running: Reading;

beforeAll(async () => {
  const compiler = "node_modules/typescript/bin/tsc";
  const built = spawnSync(process.execPath, [compiler, "-b", "packages/ui"], { cwd: TOP, encoding: "utf8" });
  if (built.status !== 0) throw new Error(built.stdout);
  const { readApi } = await docs("read-api.mjs");
  const { isFunction } = await docs("api-page.mjs");
  running = await docs("run-examples.mjs");
  library = readApi(`${TOP}packages/hydraulics/dist/index.d.ts`);
  elements = readApi(`${TOP}packages/ui/dist/index.d.ts`);
  functions = library.filter(isFunction);
}, 120_000);

const tagsOf = ({ comment }: Named, tag: string) => comment.tags.filter((one) => one.tag === tag);
const namesOf = (list: readonly Named[]) => list.map(({ name }) => name);

test("docs/reference/api is what the comments say", () => {
  const run = spawnSync(process.execPath, ["docs/write-api.mjs", "--check"], { cwd: TOP, encoding: "utf8" });
  expect(run).toMatchObject({ status: 0, stderr: "" });
}, 60_000);

test("every public name says what it is", () => {
  expect(library.length).toBeGreaterThan(500);
  expect(namesOf([...library, ...elements].filter(({ comment }) => comment.words === ""))).toEqual([]);
});

/** Shown whole, yet nobody outside builds or reads them. */
const INSIDE = ["Adjacency", "LossTable", "Zoning"];

test("every type that a public name speaks of is public too", () => {
  const places = new Set(library.map(({ path, text }) => `${path} ${/^\w+ (\w+)/.exec(text)?.[1]}`));
  const hidden = library.flatMap(({ name, types }) =>
    types.filter(({ found }) => !places.has(`${found.path} ${found.name}`)).map((type) => [name, type.name]),
  );
  expect(hidden.filter(([, type]) => !INSIDE.includes(type as string))).toEqual([]);
});

describe("every formula", () => {
  const formulas = () => functions.filter(({ path }) => /^(physics|birds)\//.test(path));
  test.each(["returns", "source", "valid"])("has @%s", (tag) => {
    expect(formulas().length).toBeGreaterThan(90);
    expect(namesOf(formulas().filter((one) => tagsOf(one, tag).length === 0))).toEqual([]);
  });

  test("that checks what it is given says what it throws", () => {
    const checks = ({ path, text }: Named) => {
      const source = readDocument(`packages/hydraulics/src/${path}.ts`);
      const start = source.search(new RegExp(`^export (?:function|const) ${text.split(/\W+/)[1]}\\b`, "m"));
      return /\brequire[A-Z]|\bthrow new/.test(source.slice(start, source.indexOf("\n}\n", start)));
    };
    expect(formulas().filter(checks).length).toBeGreaterThan(50);
    expect(namesOf(formulas().filter((one) => checks(one) && tagsOf(one, "throws").length === 0))).toEqual(
      [],
    );
  });
});

describe("examples", () => {
  test("stand with every public function, and say what they come to", () => {
    const says = (one: Named) =>
      tagsOf(one, "example").length > 0 &&
      tagsOf(one, "example").every(({ text }) => running.partsOf(text) !== undefined);
    expect(namesOf(functions.filter((one) => !says(one)))).toEqual([]);
  });

  test("come to that when they are run", () => {
    const { partsOf, evaluate, scopeOf, isAsSaid } = running;
    const scope = scopeOf();
    const wrong = library.flatMap((one) =>
      tagsOf(one, "example").flatMap(({ text }) => {
        const { expression, said } = partsOf(text) ?? { expression: "undefined", said: "nothing" };
        const value = evaluate(expression, scope);
        return isAsSaid(value, said) ? [] : [{ expression, said, value }];
      }),
    );
    expect(wrong).toEqual([]);
  }, 120_000);
});
