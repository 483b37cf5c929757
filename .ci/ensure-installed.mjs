/**
 * Makes node_modules match package-lock.json, and does nothing when it already does.
 *
 * Uses only what comes with node, because it runs before anything is installed. What was installed is
 * remembered as a digest of contents, never of dates: a checkout gives every file a new date.
 * Everything it says goes to stderr, so that a command that starts it keeps a clean stdout.
 */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, realpathSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const top = fileURLToPath(new URL("..", import.meta.url));
const lockPath = join(top, "package-lock.json");
const stampPath = join(top, "node_modules", ".headfall-installed");

/** Installs what is missing. Throws an Error with one readable line when that cannot be done. */
export function ensureInstalled() {
  const wanted = wantedStamp();
  if (readIfThere(stampPath) === wanted) return;
  if (!isInstalledByHand()) {
    process.stderr.write("Installing what package-lock.json lists (once; about half a minute) ...\n");
    runNpmCi();
  }
  writeFileSync(stampPath, wanted);
}

function wantedStamp() {
  const digest = createHash("sha256").update(readFileSync(lockPath)).digest("hex");
  return `${digest} node ${process.version} ${process.platform} ${process.arch}\n`;
}

/** True when somebody ran npm themselves, and npm's own record holds every package of the lock. */
function isInstalledByHand() {
  const record = readIfThere(join(top, "node_modules", ".package-lock.json"));
  if (record === undefined) return false;
  const stamp = readIfThere(stampPath);
  if (stamp !== undefined && !stamp.endsWith(wantedStamp().slice(64))) return false; // another node or system
  const installed = JSON.parse(record).packages;
  const locked = Object.entries(JSON.parse(readFileSync(lockPath, "utf8")).packages);
  return locked.every(([path, entry]) => {
    if (!path.includes("node_modules/") || entry.link || entry.optional || entry.devOptional) return true;
    return installed[path]?.version === entry.version && installed[path]?.integrity === entry.integrity;
  });
}

function runNpmCi() {
  const arguments_ = ["ci", "--include=dev", "--no-audit", "--no-fund", "--loglevel=error"];
  const cli = npmCliPath();
  const options = { cwd: top, stdio: ["ignore", 2, 2] };
  const run =
    cli === undefined
      ? spawnSync("npm", arguments_, { ...options, shell: process.platform === "win32" })
      : spawnSync(process.execPath, [cli, ...arguments_], options);
  if (run.error)
    throw new Error(`npm could not be started (${run.error.message}): install npm, then try again`);
  if (run.status !== 0)
    throw new Error(`"npm ci" ended with ${run.status ?? run.signal}: see its message above`);
}

/** The npm that started us, so that no other one on PATH is taken; undefined when it was not npm. */
function npmCliPath() {
  const started = process.env.npm_execpath ?? "";
  const name = basename(started);
  if (name !== "npm-cli.js" && name !== "npx-cli.js") return undefined;
  const cli = join(dirname(started), "npm-cli.js");
  return existsSync(cli) ? cli : undefined;
}

function readIfThere(path) {
  return existsSync(path) ? readFileSync(path, "utf8") : undefined;
}

// By real paths: the checkout may be reached through a link.
if (realpathSync(process.argv[1] ?? ".") === fileURLToPath(import.meta.url)) {
  try {
    ensureInstalled();
  } catch (error) {
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 1;
  }
}
