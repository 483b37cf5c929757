import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, rmSync, symlinkSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { makeCheckout } from "./made-up-checkout.js";

const lockOf = (version: string) =>
  JSON.stringify({ packages: { "": {}, "node_modules/a": { version, integrity: `sha512-${version}` } } });

/** Stands in for npm: notes how it was called, and like npm starts node_modules afresh. */
const NPM = `import { appendFileSync, mkdirSync, rmSync } from "node:fs";
rmSync("node_modules", { recursive: true, force: true });
appendFileSync("calls.txt", process.argv.slice(2).join(" ") + "\\n");
console.log("added 1 package");
if (process.env.NPM_FAILS) process.exit(7);
mkdirSync("node_modules");`;

let folder: string;
beforeEach(() => {
  folder = makeCheckout([".ci/ensure-installed.mjs"], {
    "package-lock.json": lockOf("1.0.0"),
    "package.json": `{"type": "module"}`,
    "npm/npm-cli.js": NPM,
  });
});
afterEach(() => rmSync(folder, { recursive: true }));

function ensure(environment: Record<string, string> = {}, from = folder) {
  return spawnSync(process.execPath, [join(from, ".ci/ensure-installed.mjs")], {
    encoding: "utf8",
    env: { ...process.env, npm_execpath: join(folder, "npm/npm-cli.js"), ...environment },
  });
}

const calls = () =>
  existsSync(join(folder, "calls.txt")) ? readFileSync(join(folder, "calls.txt"), "utf8") : "";
const callCount = () => calls().split("\n").length - 1;

test("ensureInstalled runs npm ci by the npm that started it, and keeps stdout clean", () => {
  const run = ensure();
  expect(run.status).toBe(0);
  expect(calls()).toMatch(/^ci .*--include=dev/);
  expect(run.stdout).toBe("");
  expect(run.stderr).toContain("added 1 package");
});

test("ensureInstalled does nothing the second time, even when the lock has a new date", () => {
  ensure();
  utimesSync(join(folder, "package-lock.json"), new Date(), new Date());
  expect(ensure()).toMatchObject({ status: 0, stdout: "", stderr: "" });
  expect(callCount()).toBe(1);
});

test("ensureInstalled installs again when the lock says something else, or node_modules is gone", () => {
  ensure();
  writeFileSync(join(folder, "package-lock.json"), lockOf("2.0.0"));
  ensure();
  expect(callCount()).toBe(2);
  rmSync(join(folder, "node_modules"), { recursive: true });
  ensure();
  expect(callCount()).toBe(3);
});

test("ensureInstalled tells a failing npm in one line and does not take it for installed", () => {
  const run = ensure({ NPM_FAILS: "1" });
  expect(run.status).toBe(1);
  expect(run.stderr).toContain('"npm ci" ended with 7');
  ensure();
  expect(callCount()).toBe(2);
});

test("ensureInstalled leaves alone what somebody installed by hand from the same lock, but not from another", () => {
  const byHand = (version: string) => {
    ensure();
    rmSync(join(folder, "node_modules/.headfall-installed"));
    rmSync(join(folder, "calls.txt"), { force: true });
    writeFileSync(join(folder, "node_modules/.package-lock.json"), lockOf(version));
  };
  byHand("1.0.0");
  expect(ensure().status).toBe(0);
  expect(callCount()).toBe(0);
  byHand("0.9.0");
  expect(ensure().status).toBe(0);
  expect(callCount()).toBe(1);
});

test.skipIf(process.platform === "win32")(
  "ensureInstalled works in a checkout reached through a link",
  () => {
    const link = `${folder}-link`;
    symlinkSync(folder, link);
    try {
      expect(ensure({}, link).status).toBe(0);
      expect(callCount()).toBe(1);
    } finally {
      rmSync(link);
    }
  },
);
