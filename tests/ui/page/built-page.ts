import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build, preview } from "vite";
import type { TestProject } from "vitest/node";

declare module "vitest" {
  interface ProvidedContext {
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
  await build({ configFile, logLevel: "warn", mode: "production", build: { outDir: folder } });
  const server = await preview({
    configFile,
    logLevel: "error",
    build: { outDir: folder },
    preview: { host: "127.0.0.1", port: 0, open: false },
  });
  const address = server.resolvedUrls?.local[0];
  if (address === undefined) throw new Error("The page is served, but its address is unknown.");
  project.provide("pageAddress", address);
  project.provide("pageFolder", folder);
  return async () => {
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  };
}
