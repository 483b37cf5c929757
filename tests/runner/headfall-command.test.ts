import { spawnSync } from "node:child_process";
import { rmSync } from "node:fs";
import { join } from "node:path";
import { afterEach, expect, test } from "vitest";
import { makeCheckout } from "./made-up-checkout.js";

const COMMAND = `console.log("asked:", process.argv.slice(2).join(" ")); process.exitCode = 3;`;
const ENSURE = `export function ensureInstalled() { process.stderr.write("installing\\n"); }`;
const BUILD = `import { mkdirSync, writeFileSync } from "node:fs";
export function buildPackages() {
  const folder = new URL("../packages/hydraulics/dist/command/", import.meta.url);
  mkdirSync(folder, { recursive: true });
  writeFileSync(new URL("main.js", folder), ${JSON.stringify(COMMAND)});
}`;

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true });
});

function headfall(madeUp: Record<string, string>) {
  const bin = "packages/hydraulics/bin/headfall.mjs";
  const folder = makeCheckout([bin], { "package.json": `{"type": "module"}`, ...madeUp });
  folders.push(folder);
  return spawnSync(process.execPath, [join(folder, bin), "check", "plan.json"], { encoding: "utf8" });
}

test("headfall runs the built command, with its words and its exit code", () => {
  const run = headfall({ "packages/hydraulics/dist/command/main.js": COMMAND });
  expect(run).toMatchObject({ status: 3, stdout: "asked: check plan.json\n", stderr: "" });
});

test("headfall builds itself when it was not built, says so on stderr only, and goes on", () => {
  const run = headfall({ ".ci/ensure-installed.mjs": ENSURE, ".ci/build.mjs": BUILD });
  expect(run).toMatchObject({ status: 3, stdout: "asked: check plan.json\n" });
  expect(run.stderr).toBe("headfall is not built yet: building it (once) ...\ninstalling\n");
});

test("headfall ends with 1 and one line when its sources do not compile", () => {
  const run = headfall({
    ".ci/ensure-installed.mjs": ENSURE,
    ".ci/build.mjs": "export function buildPackages() {}",
  });
  expect(run).toMatchObject({ status: 1, stdout: "" });
  expect(run.stderr).toContain("The sources did not compile");
});

test("headfall ends with 1 and one line when it is installed without its built part", () => {
  const run = headfall({});
  expect(run).toMatchObject({
    status: 1,
    stdout: "",
    stderr: "headfall is not complete: install it again.\n",
  });
});
