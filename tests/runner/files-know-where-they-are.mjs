import { pathToFileURL } from "node:url";

/** A plugin of the bundler: code moved into one file still reads what lies beside where it stood. */
export function filesKnowWhereTheyAre() {
  return {
    name: "files-know-where-they-are",
    enforce: "pre",
    transform(code, id) {
      if (id.includes("node_modules") || !code.includes("import.meta.url")) return undefined;
      return { code: code.replaceAll("import.meta.url", JSON.stringify(pathToFileURL(id).href)), map: null };
    },
  };
}
