#!/usr/bin/env node
import { existsSync } from "node:fs";

const built = new URL("../dist/command/main.js", import.meta.url);

if (!existsSync(built)) await buildFromSources();
if (existsSync(built)) await import(built.href);

/** In a checkout that was not built yet: installs, compiles, and says so, all on stderr. */
async function buildFromSources() {
  const script = (name) => new URL(`../../../.ci/${name}`, import.meta.url);
  process.exitCode = 1;
  if (!existsSync(script("build.mjs"))) {
    process.stderr.write("headfall is not complete: install it again.\n");
    return;
  }
  process.stderr.write("headfall is not built yet: building it (once) ...\n");
  try {
    const { ensureInstalled } = await import(script("ensure-installed.mjs").href);
    const { buildPackages } = await import(script("build.mjs").href);
    ensureInstalled();
    buildPackages({ afresh: true, packages: ["packages/hydraulics"] });
    if (!existsSync(built)) throw new Error("The sources did not compile: see the messages above.");
    process.exitCode = 0;
  } catch (error) {
    process.stderr.write(`${error.message}\n`);
  }
}
