import { readFileSync } from "node:fs";
import { relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "vite";
import { filesKnowWhereTheyAre } from "../runner/files-know-where-they-are.mjs";
import { writeSwitchable } from "./switchable.mjs";
import { writeTestFile } from "./test-file.mjs";

const top = fileURLToPath(new URL("../..", import.meta.url));
const core = `${top}packages/hydraulics/src/`;
const warmTests = new URL("./warm-tests.mjs", import.meta.url).href;

/**
 * Puts tests and the core they run into one file, with every mutant of the chosen files in it.
 *
 * @param asked.tests   paths of test files
 * @param asked.isWanted says of a file of the core, by its path there, whether it is changed
 * @param asked.folder  where the file is written, by the given name
 * @returns the mutants with their files, and which file imports which
 */
export async function bundleTests({ tests, isWanted, folder, name }) {
  const mutants = [];
  const importers = new Map();
  await build({
    root: top,
    configFile: false,
    logLevel: "warn",
    resolve: { alias: { "@headfall/hydraulics": `${core}index.ts` } },
    plugins: [everyTest(tests), filesKnowWhereTheyAre(), testsThatStayWarm(new Set(tests)), switchedFiles()],
    build: {
      ssr: true,
      outDir: folder,
      emptyOutDir: false,
      minify: false,
      rolldownOptions: {
        input: "every-test",
        output: {
          codeSplitting: false,
          entryFileNames: name,
          banner: "const __mutation = globalThis.__mutation;",
        },
      },
    },
  });
  return { mutants, importers };

  function switchedFiles() {
    return {
      name: "switched-files",
      enforce: "pre",
      transform(code, id) {
        if (!id.startsWith(core)) return undefined;
        const file = id.slice(core.length).split(sep).join("/");
        if (!isWanted(file)) return undefined;
        const { text, mutants: found, imports } = writeSwitchable(file, code, mutants.length + 1);
        mutants.push(...found.map((mutant) => ({ ...mutant, file })));
        for (const path of imports.filter((one) => one.startsWith("."))) {
          const from = new URL(path, `file:///${file}`).pathname.slice(1).replace(/\.js$/, ".ts");
          importers.set(from, [...(importers.get(from) ?? []), file]);
        }
        return { code: text, map: null };
      },
    };
  }
}

/** One entry that imports each test file, after what all tests want set. */
function everyTest(tests) {
  const setup = fileURLToPath(new URL("../runner/fixed-seed.ts", import.meta.url));
  return {
    name: "every-test",
    resolveId: (id) => (id === "every-test" ? "\0every-test" : undefined),
    load: (id) =>
      id === "\0every-test"
        ? [setup, ...tests].map((path) => `import ${JSON.stringify(path)};`).join("\n")
        : undefined,
  };
}

function testsThatStayWarm(tests) {
  return {
    name: "tests-that-stay-warm",
    enforce: "pre",
    resolveId: (id) => (id === "vitest" || id === warmTests ? { id: warmTests, external: true } : undefined),
    transform(code, id) {
      if (!tests.has(id)) return undefined;
      const name = relative(top, id).split(sep).join("/");
      const again = writeTestFile(id, code, { name, call: "describeFile", from: warmTests });
      const once = `import { startFile } from ${JSON.stringify(warmTests)};\nstartFile(${JSON.stringify(name)});\n${code}`;
      return { code: again ?? once, map: null };
    },
  };
}

/** Reads a file of the core as it stands. */
export const readCore = (file) => readFileSync(core + file, "utf8");
