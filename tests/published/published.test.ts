import { describe, expect, it } from "vitest";
import { loadSources } from "../../reference-tables/load-tables.mjs";
import { loadCaseFiles, writeBound } from "./case-file.js";
import { type Comparison, compareCase, QUESTIONS } from "./compare-case.js";

/**
 * Worked examples that were looked at and are not here, since the library of this part does not compute them:
 *
 *   source                    what                                    why not
 *   technical-paper-410 7-15  head of a pumped line                   no pumps, and no K of a lift check by bore ratio
 *   technical-paper-410 7-36  loss coefficients of a diverging wye    no law for tees by share of flow (7-35: its losses only)
 *   cengel-cimbala 5-7        pressure at a siphon's crest            heads leave the velocity head out, which is most of it there
 *   khan 9.14, p. 349         depth of a pipe over a ridge            likewise; the ridge's height is not among the inputs
 *   bs-8515 intermediate      a tank of 5 % of a year's rain or draw  a rule of thumb; the library goes through days
 *   iapws-r12-08 Table 4      viscosity at 373 to 873 K               hot or dense water; the library's is 0 to 50 degC at 0.1 MPa
 */
const files = loadCaseFiles();
const cases = files.flatMap(({ file }) => file.cases.map((one) => ({ source: file.source, one })));
/** Sources that print nothing: what follows from a definition, our own arithmetic on cited rows, and what is said. */
const UNPRINTED = new Set(["closed-form", "cautious-defaults", "jenkins-1978", "reservoir-exercise"]);

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
    const printed = cases.filter(({ source }) => !UNPRINTED.has(source));
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

  it("put every question at least once", () => {
    const put = new Set(cases.map(({ one }) => one.question));
    expect(Object.keys(QUESTIONS).filter((question) => !put.has(question))).toEqual([]);
  });

  it("keep the slips of four sources as figures that are refused", () => {
    const slips = cases.filter(({ one }) => one.slip !== undefined);
    expect(new Set(slips.map(({ source }) => source)).size).toBeGreaterThanOrEqual(4);
  });
});
