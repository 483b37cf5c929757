import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { buildPackages, buildStandalone } from "../../.ci/build.mjs";

const top = fileURLToPath(new URL("../..", import.meta.url));
export const PACKAGES = ["hydraulics", "ui"] as const;
export type PackageName = (typeof PACKAGES)[number];

/** A package as npm would publish it. */
export interface Packed {
  readonly tarball: string;
  readonly paths: readonly string[];
  readonly size: number;
}

/** Both packages packed, unpacked in a folder as npm would install them, with no other package than those they name. */
export interface Installed {
  readonly folder: string;
  readonly packed: Readonly<Record<PackageName, Packed>>;
  readonly remove: () => void;
}

/** Compiles, packs and installs both packages; nothing is fetched. */
export async function installPackages(): Promise<Installed> {
  if (!buildPackages()) throw new Error("The packages do not compile.");
  if (!isStandaloneWhole()) await buildStandalone();
  const folder = mkdtempSync(join(tmpdir(), "headfall-installed-"));
  const packed = packInto(folder);
  for (const name of PACKAGES) install(name, packed[name].tarball, folder);
  return { folder, packed, remove: () => rmSync(folder, { recursive: true }) };
}

/** The one file for pages of one's own takes long to build: it is, where it is missing or its workers are not just those beside it. */
function isStandaloneWhole(): boolean {
  const dist = join(top, "packages/ui/dist");
  if (!existsSync(join(dist, "headfall.js")) || !existsSync(join(dist, "assets"))) return false;
  const workers = readdirSync(join(dist, "assets")).map((name) => `assets/${name}`);
  return workersNamedIn(readFileSync(join(dist, "headfall.js"), "utf8")).join() === workers.sort().join();
}

/** The workers that the one file looks for beside it, wherever it is kept. */
export const workersNamedIn = (text: string): string[] =>
  [...text.matchAll(/"(assets\/[\w-]+\.js)"/g)].map(([, path]) => path).sort();

/** Both at once: npm takes longer to begin than to pack. */
function packInto(folder: string): Installed["packed"] {
  const places = PACKAGES.map((name) => `./packages/${name}`);
  const words = ["pack", "--ignore-scripts", "--json", "--pack-destination", folder, ...places];
  const told = JSON.parse(run("npm", words, top)) as {
    name: string;
    filename: string;
    files: { path: string }[];
    size: number;
  }[];
  const packed = told.map(({ name, filename, files, size }): [string, Packed] => [
    name.replace("@headfall/", ""),
    { tarball: join(folder, filename), paths: files.map(({ path }) => path).sort(), size },
  ]);
  return Object.fromEntries<Packed>(packed) as Installed["packed"];
}

function install(name: PackageName, tarball: string, folder: string): void {
  const home = join(folder, "node_modules", "@headfall", name);
  mkdirSync(home, { recursive: true });
  run("tar", ["-xzf", tarball, "-C", home, "--strip-components=1"], folder);
  const { dependencies } = JSON.parse(readFileSync(join(home, "package.json"), "utf8"));
  for (const other of Object.keys(dependencies)) {
    const place = join(folder, "node_modules", other);
    if (other.startsWith("@headfall/") || existsSync(place)) continue;
    mkdirSync(dirname(place), { recursive: true });
    symlinkSync(join(top, "node_modules", other), place, "junction");
  }
}

/** Runs a program to its end, and gives what it printed; what it complains of is thrown. */
export function run(program: string, words: readonly string[], cwd: string): string {
  const { status, stdout, stderr, error } = spawnSync(program, words, {
    cwd,
    encoding: "utf8",
    shell: process.platform === "win32",
  });
  if (status !== 0) throw new Error(`${program} ${words.join(" ")}\n${error ?? ""}${stdout}${stderr}`);
  return stdout;
}

export const compiler = join(top, "node_modules/typescript/bin/tsc");

/** The first fenced block of a language in a package's README. */
export function snippetOf(name: PackageName, language: string): string {
  const text = readFileSync(join(top, "packages", name, "README.md"), "utf8");
  const found = new RegExp(`^\`\`\`${language}\\n([\\s\\S]*?)^\`\`\`$`, "m").exec(text);
  if (found === null) throw new Error(`The README of ${name} has no ${language}`);
  return found[1];
}

export const readTop = (path: string): string => readFileSync(join(top, path), "utf8");
