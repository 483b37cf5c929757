/**
 * Builds the documents as pages beside the built page that draws lines: read, searched and worked on without a server's help.
 *   npm run site               packages/ui/dist/page, with the documents in docs/ of it
 *   npm run site -- --serve    the same, and serves it
 */
import { cpSync, mkdirSync, readFileSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { buildPackages, buildPage } from "../../.ci/build.mjs";
import { findBrokenLinks } from "./check-links.mjs";
import { framePage } from "./page-frame.mjs";
import { fileTarget, renderPage } from "./render-page.mjs";
import { buildSearchIndex } from "./search-index.mjs";
import { DOCS, readPages } from "./site-pages.mjs";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

/**
 * Every document with its page, as it is written.
 *
 * @throws Error with every link that leads nowhere
 */
export function renderSite(documents = readPages()) {
  const pages = documents.map((page) => ({ page, rendered: renderPage(page) }));
  const broken = findBrokenLinks(pages);
  if (broken.length > 0) throw new Error(broken.join("\n"));
  return pages.map((each) => ({ ...each, html: framePage(each.page, each.rendered, documents) }));
}

/** Builds the whole site into a folder of its own; the packages are built before. */
export async function buildSite(folder, documents = readPages()) {
  const pages = renderSite(documents);
  rmSync(folder, { recursive: true, force: true });
  for (const { page, html } of pages) write(join(folder, page.out), html);
  for (const place of new Set(pages.flatMap(({ rendered }) => rendered.files))) {
    copy(join(DOCS, place), join(folder, fileTarget(place)));
  }
  write(join(folder, "search.json"), JSON.stringify(buildSearchIndex(pages)));
  await writeScripts(folder);
  await writeOffline(folder);
  return pages.length;
}

/** Colours as on the page, the styles of these pages, and what they do in the browser. */
async function writeScripts(folder) {
  const { pageTokens } = await import("../../packages/ui/dist/styles/tokens.js");
  const styles = ["text.css", "frame.css"].map((name) => readFileSync(here(name), "utf8"));
  write(join(folder, "site.css"), [pageTokens.cssText, ...styles].join("\n"));
  copy(here("../../packages/ui/public/icon.svg"), join(folder, "icon.svg"));
  const { build } = await import("vite");
  await build(bundleOf(folder, { name: "site", format: "es" }));
  await build(bundleOf(folder, { name: "light", format: "iife" }));
}

/** The elements come from the packages as published, each fetched when it is wanted. */
function bundleOf(folder, { name, format }) {
  return {
    configFile: false,
    root: here("browser"),
    base: "./",
    logLevel: "warn",
    mode: "production",
    publicDir: false,
    define: { "process.env.NODE_ENV": JSON.stringify("production") },
    worker: { format: "es" },
    build: {
      target: "es2022",
      outDir: folder,
      emptyOutDir: false,
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
      chunkSizeWarningLimit: 1000,
      rollupOptions: {
        input: here(`browser/${name}.ts`),
        output: { format, entryFileNames: `${name}.js`, chunkFileNames: "assets/[name]-[hash].js" },
      },
    },
  };
}

/** After one visit, all pages are there without a network; a newer site takes over at the next visit. */
async function writeOffline(folder) {
  const { generateSW } = await import("workbox-build");
  const { warnings } = await generateSW({
    globDirectory: folder,
    globPatterns: ["**/*.{html,css,js,json,svg,png,csv,txt}"],
    swDest: join(folder, "sw.js"),
    sourcemap: false,
    inlineWorkboxRuntime: true,
    mode: "production",
    clientsClaim: true,
    skipWaiting: true,
    cleanupOutdatedCaches: true,
    maximumFileSizeToCacheInBytes: 8_000_000,
  });
  if (warnings.length > 0) throw new Error(warnings.join("\n"));
}

function write(path, text) {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
}

function copy(from, to) {
  mkdirSync(dirname(to), { recursive: true });
  cpSync(from, to);
}

// By real paths: the checkout may be reached through a link.
if (realpathSync(process.argv[1] ?? ".") === fileURLToPath(import.meta.url)) {
  try {
    if (!buildPackages()) throw new Error("The packages did not compile: see the messages above.");
    await buildPage(undefined, { help: "docs/index.html" });
    const folder = here("../../packages/ui/dist/page/docs");
    const count = await buildSite(folder);
    process.stdout.write(
      `${count} pages are in packages/ui/dist/page/docs, beside the page that draws lines\n`,
    );
    if (process.argv.includes("--serve")) {
      process.argv.length = 2;
      await import("../../packages/ui/serve.mjs");
    }
  } catch (error) {
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 1;
  }
}
