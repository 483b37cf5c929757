import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const top = fileURLToPath(new URL("../..", import.meta.url));

/** Compiles the library, so that the command under test is that of the sources. */
export function buildCommand(): void {
  const built = spawnSync(
    process.execPath,
    ["node_modules/typescript/bin/tsc", "-b", "packages/hydraulics"],
    { cwd: top, encoding: "utf8" },
  );
  if (built.status !== 0) throw new Error(`The library does not compile:\n${built.stdout}${built.stderr}`);
}

/** Runs `headfall` as a process of its own, from the top of the checkout, without colour. */
export function headfall(words: readonly string[], input = "") {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ["packages/hydraulics/bin/headfall.mjs", ...words],
    { cwd: top, input, encoding: "utf8", env: { ...process.env, NO_COLOR: "1", FORCE_COLOR: undefined } },
  );
  return { status, stdout, stderr };
}

/** Runs `headfall` in a shell line, for pipes. */
export function headfallInShell(line: string) {
  const command = line.replaceAll("headfall", `"${process.execPath}" packages/hydraulics/bin/headfall.mjs`);
  const { status, stdout, stderr } = spawnSync(command, { cwd: top, shell: true, encoding: "utf8" });
  return { status, stdout, stderr };
}

export const HEN_HOUSE = "docs/examples/alder-bank-hen-house.json";
export const RAIN_BARREL = "docs/examples/alder-bank-rain-barrel.json";
export const TWO_PENS = "docs/examples/alder-bank-two-pens.json";
