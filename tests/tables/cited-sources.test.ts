import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { loadSources } from "../../reference-tables/load-tables.mjs";

const src = new URL("../../packages/hydraulics/src/", import.meta.url);

/** Every `@source key` in the sources, with the file it stands in. */
const cited = readdirSync(src, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && !file.endsWith(".generated.ts"))
  .flatMap((file) =>
    [...readFileSync(new URL(file, src), "utf8").matchAll(/@source\s+([\w-]+)/g)].map((found) => ({
      file,
      key: found[1]!,
    })),
  );

describe("@source", () => {
  it("is found in the sources", () => {
    expect(cited.length).toBeGreaterThan(10);
  });

  it("names a key of sources.json, wherever it stands", () => {
    const sources = loadSources();
    expect(cited.filter(({ key }) => !(key in sources)).map(({ file, key }) => `${file}: ${key}`)).toEqual(
      [],
    );
  });
});
