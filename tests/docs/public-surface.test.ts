import { spawnSync } from "node:child_process";
import { beforeAll, expect, test } from "vitest";
import { readDocument, TOP } from "./documents.js";

interface Surface {
  readonly readSurface: () => Promise<string[]>;
  readonly storedSurface: () => string[];
}

let now: string[];
let stored: string[];

beforeAll(async () => {
  const compiler = "node_modules/typescript/bin/tsc";
  const built = spawnSync(process.execPath, [compiler, "-b", "packages/ui"], { cwd: TOP, encoding: "utf8" });
  if (built.status !== 0) throw new Error(built.stdout);
  const url = new URL("../../docs/read-surface.mjs", import.meta.url).href;
  const { readSurface, storedSurface }: Surface = await import(url);
  now = await readSurface();
  stored = storedSurface();
}, 120_000);

test("all that is public stands in docs/public-surface.txt (npm run api adds it)", () => {
  expect(now.length).toBeGreaterThan(1000);
  for (const kind of ["hydraulics: ", "ui: ", "command: ", "plan: ", "document: "])
    expect([kind, now.some((line) => line.startsWith(kind))]).toEqual([kind, true]);
  expect(now.filter((line) => !stored.includes(line))).toEqual([]);
});

test("what the list has and the packages have not stands in versions.md, under Taken away", () => {
  const page = readDocument("docs/reference/versions.md");
  const told = page.slice(page.indexOf("## Taken away"), page.indexOf("## Publishing"));
  const gone = stored.filter((line) => !now.includes(line));
  expect(gone.filter((line) => !told.includes(`| \`${line}\` |`))).toEqual([]);
});

test("both packages and the whole have one version, and neither needs a script to be installed", () => {
  const manifests = ["", "packages/hydraulics/", "packages/ui/"].map((folder) =>
    JSON.parse(readDocument(`${folder}package.json`)),
  );
  expect(new Set(manifests.map(({ version }) => version)).size).toBe(1);
  for (const { scripts } of manifests)
    expect(Object.keys(scripts).filter((name) => /^(pre|post)?install$/.test(name))).toEqual([]);
});
