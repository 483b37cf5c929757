import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build, type Plugin, type PreviewServer, preview } from "vite";
import type { TestProject } from "vitest/node";

declare module "vitest" {
  interface ProvidedContext {
    /** Why there is no page to test, "" when there is one. Told by each test, so that other tests still run. */
    pageProblem: string;
    /** Where the built page is served, ending in "/". */
    pageAddress: string;
    /** Folder that holds the built page. */
    pageFolder: string;
  }
}

const configFile = fileURLToPath(new URL("../../../packages/ui/vite.config.ts", import.meta.url));
const cache = fileURLToPath(new URL("../../../node_modules/.cache/", import.meta.url));

/** Builds the page once for all its tests, into a folder of its own, and serves it on a free port. */
export default async function builtPage(project: TestProject): Promise<() => Promise<void>> {
  mkdirSync(cache, { recursive: true });
  const folder = mkdtempSync(`${cache}page-`);
  project.provide("pageFolder", folder);
  const server = await buildAndServe(folder).catch((error: unknown) => {
    project.provide("pageProblem", `The page could not be built and served: ${String(error)}`);
  });
  if (server) project.provide("pageProblem", "");
  project.provide("pageAddress", server?.resolvedUrls?.local[0] ?? "");
  return async () => {
    await server?.close();
    rmSync(folder, { recursive: true, force: true });
  };
}

async function buildAndServe(folder: string): Promise<PreviewServer> {
  await buildAsShipped(folder);
  return preview({
    configFile,
    logLevel: "error",
    build: { outDir: folder },
    plugins: [keptScripts],
    preview: { host: "127.0.0.1", port: 0, open: false },
  });
}

/** Scripts are named by what is in them: a browser may keep them from load to load. Nothing is packed for a way this short. */
const keptScripts: Plugin = {
  name: "headfall-kept-scripts",
  configurePreviewServer({ middlewares }) {
    middlewares.use((request, response, next) => {
      delete request.headers["accept-encoding"];
      if (/^\/assets\/[^?]*\.js$/.test(request.url ?? "")) {
        response.setHeader("Cache-Control", "max-age=31536000, immutable");
      }
      next();
    });
  },
};

/** The test runner names its own environment, and a build made in that one would carry what only developers need. */
async function buildAsShipped(folder: string): Promise<void> {
  const environment = process.env.NODE_ENV;
  process.env.NODE_ENV = "production";
  try {
    await build({ configFile, logLevel: "silent", mode: "production", build: { outDir: folder } });
  } finally {
    if (environment === undefined) delete process.env.NODE_ENV;
    else process.env.NODE_ENV = environment;
  }
}
