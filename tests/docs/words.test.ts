import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { MOMENTS, readQuantity, VERDICTS } from "../../packages/hydraulics/src/index.js";
import { MOMENT_WORDS } from "../../packages/hydraulics/src/report/words.js";

const page = readFileSync(new URL("../../docs/reference/words.md", import.meta.url), "utf8");
const words = new Set(
  [...page.matchAll(/^\| ([^|]+?) \|/gm)].flatMap((match) => (match[1] ?? "").split(", ")),
);

test("words.md has every verdict and names every moment as the sentences do", () => {
  for (const verdict of VERDICTS) expect(words).toContain(verdict);
  for (const moment of MOMENTS) expect(page).toContain(MOMENT_WORDS[moment]);
});

test("words.md has no word twice", () => {
  const glossary = page.slice(0, page.indexOf("## Units that plans may use"));
  const all = [...glossary.matchAll(/^\| ([^|]+?) \|/gm)].map((match) => match[1]);
  expect(all.filter((word, i) => all.indexOf(word) !== i && word !== "word" && word !== "---")).toEqual([]);
});

const section = page.slice(page.indexOf("## Units that plans may use"));
const UNITS = ["length", "head", "volume", "temperature", "time", "area"] as const;

test.each(UNITS)("every unit of a %s that words.md lists can be read", (kind) => {
  const row = new RegExp(`^\\| ${kind} \\| (.*) \\|$`, "m").exec(section)?.[1] ?? "";
  const units = row
    .split(/[,;]/)
    .map((text) => text.replace(/any length|^ ?or |\(US\)/g, "").trim())
    .filter((text) => text !== "" && !text.includes(" becomes ") && !text.startsWith("any"));
  expect(units.length).toBeGreaterThan(2);
  for (const unit of units) expect([unit, readQuantity(`1 ${unit}`, kind).ok]).toEqual([unit, true]);
});

test("quantities that words.md says can be read, can, and the one it says is refused, is", () => {
  for (const typed of ["3/4 in", "1 1/2 ft", '½"', "2 ft 6 in", "0,5 m"]) {
    expect(section).toContain(`\`${typed}\``);
    expect([typed, readQuantity(typed, "length").ok]).toEqual([typed, true]);
  }
  expect(section).toContain("`1,250 m`");
  expect(readQuantity("1,250 m", "length").ok).toBe(false);
});
