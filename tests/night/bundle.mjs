import { fileURLToPath } from "node:url";
import { build } from "vite";
import { filesKnowWhereTheyAre } from "../runner/files-know-where-they-are.mjs";

const top = fileURLToPath(new URL("../..", import.meta.url));

/**
 * Puts a file of the tests and all of the sources that it reaches into one file that node can run.
 *
 * @param asked.entry    path of the file
 * @param asked.folder   where the one file is written
 * @param asked.name     what it is called there
 * @param asked.plugins  what else is done to the sources on the way
 * @returns the path of the one file
 */
export async function bundleForNode({ entry, folder, name, plugins = [] }) {
  await build({
    root: top,
    configFile: false,
    logLevel: "error",
    resolve: { alias: { "@headfall/hydraulics": `${top}packages/hydraulics/src/index.ts` } },
    plugins: [filesKnowWhereTheyAre(), ...plugins],
    build: {
      ssr: true,
      outDir: folder,
      emptyOutDir: false,
      minify: false,
      rolldownOptions: { input: entry, output: { codeSplitting: false, entryFileNames: name } },
    },
  });
  return `${folder}/${name}`;
}
