import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { readDocument, TOP } from "./documents.js";

const rows = readDocument("docs/method/faults.md")
  .split("\n")
  .map((line) => line.split("|").map((cell) => cell.trim()))
  .filter((cells) => cells[3]?.startsWith("tests/"))
  .map((cells) => ({ file: cells[3]!, name: cells[4]! }));

describe("faults.md", () => {
  test("has the faults of files, names, page and plans", () => {
    expect(rows.length).toBeGreaterThan(35);
  });

  test("names a test that there is for each fault", () => {
    const lacking = rows.filter(({ file, name }) => {
      const path = join(TOP, file);
      return name === "" || !existsSync(path) || !readFileSync(path, "utf8").includes(name);
    });
    expect(lacking).toEqual([]);
  });
});
