/**
 * Builds both packages with the compiler, then the page and the one file for pages of one's own.
 *   node .ci/build.mjs               everything
 *   node .ci/build.mjs --packages    the packages only
 */
import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, realpathSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const top = fileURLToPath(new URL("..", import.meta.url));

/** Compiles the packages; what the compiler says goes to stderr. Returns true when it found no fault. */
export function buildPackages({ afresh = false, packages = ["packages/hydraulics", "packages/ui"] } = {}) {
  const compiler = join(top, "node_modules", "typescript", "bin", "tsc");
  const run = spawnSync(process.execPath, [compiler, "-b", ...(afresh ? ["--force"] : []), ...packages], {
    cwd: top,
    stdio: ["ignore", 2, 2],
  });
  for (const folder of packages) removeStale(join(top, folder));
  return run.status === 0;
}

/** The compiler leaves what it made of a source that is gone or has moved; that would be packed too. */
function removeStale(folder) {
  const dist = join(folder, "dist");
  if (!existsSync(dist)) return;
  for (const path of readdirSync(dist, { recursive: true })) {
    const [, source] = /^(.*)\.(?:d\.ts|js)(?:\.map)?$/.exec(path) ?? [];
    if (source === undefined || /^(page|assets)[\\/]|^headfall$/.test(source)) continue;
    if (!existsSync(join(folder, "src", `${source}.ts`))) rmSync(join(dist, path));
  }
}

/** Builds the page into packages/ui/dist/page, or into another folder; `help` is where its documents stand beside it. */
export async function buildPage(folder, { help } = {}) {
  const { build } = await import("vite");
  await build({
    configFile: join(top, "packages", "ui", "vite.config.ts"),
    logLevel: "warn",
    ...(help === undefined ? {} : { plugins: [helpLink(help)] }),
    ...(folder === undefined ? {} : { build: { outDir: folder } }),
  });
}

const helpLink = (href) => ({
  name: "headfall-help",
  transformIndexHtml: () => [{ tag: "link", attrs: { rel: "help", href }, injectTo: "head" }],
});

/** Builds packages/ui/dist/headfall.js, the library and the elements in one file, or into another folder. */
export async function buildStandalone(folder) {
  const { build } = await import("vite");
  // Named by what is in them: those of an earlier build would stay.
  const workers = join(folder ?? join(top, "packages", "ui", "dist"), "assets");
  rmSync(workers, { recursive: true, force: true });
  await build({
    configFile: join(top, "packages", "ui", "vite.standalone.config.ts"),
    logLevel: "warn",
    mode: "production",
    ...(folder === undefined ? {} : { build: { outDir: folder } }),
  });
}

// By real paths: the checkout may be reached through a link.
if (realpathSync(process.argv[1] ?? ".") === fileURLToPath(import.meta.url)) {
  try {
    if (!buildPackages()) throw new Error("The packages did not compile: see the messages above.");
    if (!process.argv.includes("--packages")) {
      await buildPage();
      await buildStandalone();
    }
  } catch (error) {
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 1;
  }
}
