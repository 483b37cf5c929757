import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { loadSources } from "../../reference-tables/load-tables.mjs";
import { loadCaseFiles, WORKED_OUT, writeBound } from "./case-file.js";
import { type Comparison, compareCase, QUESTIONS } from "./compare-case.js";
import { PICTURES } from "./pictures/all-pictures.js";
import { SUBJECTS, subjectOf } from "./subjects.js";
import { writeValidation } from "./write-validation.js";

const files = loadCaseFiles();
const cases = files.flatMap(({ file }) => file.cases.map((one) => ({ source: file.source, one })));
const said = ({ name, printed, computed, unit, allowed }: Comparison) =>
  `${name}: ${computed} ${unit}, not ${printed} within ${allowed}`;

describe.each(files.map((one) => [one.file.title, one] as const))("%s", (_title, { file }) => {
  for (const one of file.cases) {
    const bound = writeBound(one.tolerance);
    it(`${one.what}: as printed (${one.page}, ${one.seen}) within ${bound}, ${one.tolerance.why}`, () => {
      const { expected, slips } = compareCase(one);
      expect(expected.filter(({ agrees }) => !agrees).map(said)).toEqual([]);
      expect(
        slips.filter(({ agrees }) => agrees).map(({ name }) => `${name}: the slip was not refused`),
      ).toEqual([]);
    });
  }
});

describe("the published cases", () => {
  it("are at least 60 from at least 25 printed sources", () => {
    const printed = cases.filter(({ source }) => !WORKED_OUT.has(source));
    expect(printed.length).toBeGreaterThanOrEqual(60);
    expect(new Set(printed.map(({ source }) => source)).size).toBeGreaterThanOrEqual(25);
  });

  it("stand in files named for their source, whose key is in sources.json", () => {
    const sources = loadSources();
    for (const { name, file } of files) {
      expect(name).toBe(`${file.source}.cases.json`);
      expect(sources, name).toHaveProperty([file.source]);
    }
  });

  it("never say seen of a source that was not opened", () => {
    const sources = loadSources();
    const unopened = cases.filter(
      ({ source, one }) => one.seen === "seen" && sources[source]!["opened"] === "from memory",
    );
    expect(unopened.map(({ one }) => one.id)).toEqual([]);
  });

  it("have ids of their own, something to expect, and a tolerance with a bound and a reason", () => {
    expect(new Set(cases.map(({ one }) => one.id)).size).toBe(cases.length);
    for (const { one } of cases) {
      expect(Object.keys(one.expect).length, one.id).toBeGreaterThan(0);
      expect((one.tolerance.relative ?? 0) + (one.tolerance.absolute ?? 0), one.id).toBeGreaterThan(0);
      expect(one.tolerance.why.length, one.id).toBeGreaterThan(8);
      expect(["seen", "from memory"], one.id).toContain(one.seen);
    }
  });

  it("belong to a subject each, and every subject has some", () => {
    const met = new Set(cases.map(({ one }) => subjectOf(one)));
    expect([...met].sort()).toEqual(Object.keys(SUBJECTS).sort());
  });

  it("put every question at least once", () => {
    const put = new Set(cases.map(({ one }) => one.question));
    expect(Object.keys(QUESTIONS).filter((question) => !put.has(question))).toEqual([]);
  });

  it("keep the slips of four sources as figures that are refused", () => {
    const slips = cases.filter(({ one }) => one.slip !== undefined);
    expect(new Set(slips.map(({ source }) => source)).size).toBeGreaterThanOrEqual(4);
  });
});

const page = new URL("../../docs/reference/validation.md", import.meta.url);
const images = new URL("../../docs/images/truth/", import.meta.url);
const isWriting = process.env["HEADFALL_WRITE_VALIDATION"] === "yes";

describe("docs, else run npm run validate", () => {
  it("reference/validation.md is what the cases and the library say now", () => {
    const text = writeValidation(files);
    if (isWriting) writeFileSync(page, text);
    expect(readFileSync(page, "utf8")).toBe(text);
  });

  it.each(PICTURES.map((picture) => [picture.name, picture] as const))(
    "images/truth/%s.svg is what is drawn now, without a number that is none",
    (name, { draw }) => {
      const drawn = draw();
      expect(drawn).not.toMatch(/NaN|Infinity|undefined/);
      const file = new URL(`${name}.svg`, images);
      if (isWriting) {
        mkdirSync(images, { recursive: true });
        writeFileSync(file, drawn);
      }
      expect(readFileSync(file, "utf8")).toBe(drawn);
    },
  );

  it("images/truth holds no picture that nothing draws", () => {
    expect(readdirSync(images).sort()).toEqual(PICTURES.map(({ name }) => `${name}.svg`).sort());
  });
});
