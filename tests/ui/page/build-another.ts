import { fileURLToPath } from "node:url";
import { build } from "vite";

const configFile = fileURLToPath(new URL("../../../packages/ui/vite.config.ts", import.meta.url));

/** Builds the page a second time, as a later one that differs by a mark in its head. */
export async function buildAnother(folder: string): Promise<void> {
  const environment = process.env.NODE_ENV;
  process.env.NODE_ENV = "production";
  const mark = {
    name: "mark-as-another",
    transformIndexHtml: () => [{ tag: "meta", attrs: { name: "build", content: "another" } }],
  };
  try {
    await build({
      configFile,
      logLevel: "silent",
      mode: "production",
      build: { outDir: folder },
      plugins: [mark],
    });
  } finally {
    if (environment === undefined) delete process.env.NODE_ENV;
    else process.env.NODE_ENV = environment;
  }
}
