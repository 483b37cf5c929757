import { writeCaution } from "@headfall/hydraulics";
import { describe, expect, test } from "vitest";
import { OVERLAP } from "../../../../packages/ui/src/kernels/sheet/cut-pages.js";
import { laySheet, MOST_PAGES, type Sheet } from "../../../../packages/ui/src/kernels/sheet/lay-sheet.js";
import { scalesOf } from "../../../../packages/ui/src/kernels/sheet/scales.js";
import type { Shape } from "../../../../packages/ui/src/kernels/sheet/shapes.js";
import type { SheetRequest } from "../../../../packages/ui/src/kernels/sheet/sheet-request.js";
import { checkedOf, ELBOW, isText, planOf, requestFor, shapesOn, sheetFor, wordsOf } from "./alder-bank.js";

type Path = Extract<Shape, { kind: "path" }>;
const pathsOf = (sheet: Sheet, pen: string): Path[] =>
  sheet.pages.flatMap((page) => shapesOn(page)).filter((s): s is Path => s.kind === "path" && s.pen === pen);
/** Runs have two spots or more; the key of the title block has a short pipe of its own. */
const runsOf = (sheet: Sheet): Path[] => pathsOf(sheet, "pipe").filter((path) => lengthOf(path) > 9.01);
const lengthOf = ({ spots }: Path) =>
  spots.slice(1).reduce((sum, { x, y }, i) => sum + Math.hypot(x - spots[i]!.x, y - spots[i]!.y), 0);

describe("laySheet from above", () => {
  test.each([20, 25, 50, 100])("draws 6 m at 1:%i as that much of paper", (scale) => {
    const [feed] = runsOf(sheetFor({ scale }));
    expect(lengthOf(feed!)).toBeCloseTo(6000 / scale, 9);
  });

  test("draws 6 m at 1/4 in to the foot as 6/0.3048 quarter inches", () => {
    const sheet = sheetFor({ system: "us", paper: "letter", scale: 48 });
    expect(sheet.scale.words).toBe("1/4 in = 1 ft");
    expect(lengthOf(runsOf(sheet)[0]!)).toBeCloseTo((6 / 0.3048) * 6.35, 9);
  });

  test.each([
    ["a4", false],
    ["a4", true],
    ["letter", false],
    ["letter", true],
  ] as const)(
    "takes the largest step that fits %s (lying: %s), and the next larger one is cut",
    (paper, isLying) => {
      const sheet = sheetFor({ paper, isLying });
      expect(sheet.scale).toBe(sheet.fits);
      expect(sheet.pages.map(({ name }) => name)).toEqual(["A1"]);
      const steps = scalesOf("metric");
      const larger = steps[steps.indexOf(sheet.scale) - 1]!;
      const cut = sheetFor({ paper, isLying, scale: larger.times });
      expect(cut.pages.filter(({ window }) => window !== undefined).length).toBeGreaterThan(1);
    },
  );

  test("keeps every word and every line of a page that is not cut on its paper, clear of the margins", () => {
    for (const paper of ["a4", "letter"] as const) {
      const sheet = sheetFor({ paper });
      for (const shape of shapesOn(sheet.pages[0]!)) {
        for (const { x, y } of shape.kind === "path" ? shape.spots : [shape]) {
          expect(x).toBeGreaterThan(7.9);
          expect(x).toBeLessThan(sheet.paper.width - 7.9);
          expect(y).toBeGreaterThan(7.9);
          expect(y).toBeLessThan(sheet.paper.height - 7.9);
        }
      }
    }
  });

  test("draws a run that is longer than its drawing with the pen for that, and says so", () => {
    const sheet = sheetFor();
    expect(pathsOf(sheet, "unscaled").some((path) => lengthOf(path) > 9.01)).toBe(true);
    expect(wordsOf(sheet)).toContain("drawn 3 m long: not to scale");
  });

  test("has names, lengths, falls, heights above the ground and verdicts in words", () => {
    const words = wordsOf(sheetFor());
    // The outlet is 5 cm over the inside bottom, that 60 cm over the ground; the corner's pipe 20 cm over the datum.
    for (const each of [
      "Alder Bank, elbow",
      "feed: 6 m, falls ",
      "stand 60 cm",
      "pipe 30 cm above ground",
      "pipe 25 cm above ground",
      "6 × ",
      "every 1 m",
    ])
      expect(words).toContain(each);
    const verdict = checkedOf(planOf(ELBOW)).drinkers[10]!.verdict;
    expect(words).toContain(verdict);
    const marks = sheetFor()
      .pages.flatMap((page) => page.window!.shapes)
      .filter(({ kind }) => kind === "mark");
    expect(marks).toHaveLength(11);
  });

  test("states paper, scale, date and page, leaves a line where no date is given, and has a bar of 100 mm", () => {
    expect(wordsOf(sheetFor())).toMatch(/From above · Scale 1:\d+ · A4, upright · 2026-11-25/);
    expect(wordsOf(sheetFor({ date: "" }))).toContain("Date ____");
    const bars = pathsOf(sheetFor(), "check")
      .filter((path) => path.spots.length === 2)
      .map(lengthOf);
    expect(bars).toContainEqual(expect.closeTo(100, 9));
    const us = pathsOf(sheetFor({ system: "us" }), "check")
      .filter((path) => path.spots.length === 2)
      .map(lengthOf);
    expect(us).toContainEqual(expect.closeTo(101.6, 9));
  });

  test("has every caution of the check in full, on the page or behind it", () => {
    for (const more of [{}, { scale: 10 }, { isLying: true }]) {
      const request = requestFor(more);
      const words = wordsOf(laySheet(request)!).replace(/\s+/g, " ");
      for (const caution of request.checked!.cautions) {
        // In two columns the lines of one text stay together.
        expect(words).toContain(writeCaution(caution, "metric"));
      }
    }
  });

  test("without a check it has places and lengths alone", () => {
    const sheet = sheetFor({ checked: undefined });
    expect(wordsOf(sheet)).toContain("feed: 6 m");
    expect(wordsOf(sheet)).not.toMatch(/falls|above ground|starves/);
  });

  test("survives a check of an older plan, with other runs and names", () => {
    const older = checkedOf(
      planOf({
        ...ELBOW,
        points: [],
        runs: [{ id: "gone", length: "2 m", drinkers: { kind: "nipple-bucket", count: 2 } }],
      }),
    );
    expect(wordsOf(sheetFor({ checked: older }))).toContain("feed: 6 m");
  });

  test("draws a plan that is only begun, and of one source alone", () => {
    expect(wordsOf(sheetFor({ checked: undefined }, { ...ELBOW, points: [], runs: [] }))).toContain("barrel");
  });
});

describe("laySheet over several pages", () => {
  const sheet = sheetFor({ scale: 10 });
  const drawn = sheet.pages.filter(({ window }) => window !== undefined);

  test("names pages by row and column, and numbers them with their count", () => {
    expect(drawn.map(({ name }) => name)).toContain("A2");
    expect(new Set(drawn.map(({ name }) => name)).size).toBe(drawn.length);
    expect(wordsOf(sheet)).toContain(`(${sheet.pages.length} of ${sheet.pages.length})`);
  });

  test("shows every spot of every pipe on some page, and neighbours overlap by what the marks say", () => {
    const parts = drawn.map(({ window }) => {
      const { box, shift } = window!;
      return {
        left: box.left - shift.x,
        right: box.right - shift.x,
        top: box.top - shift.y,
        bottom: box.bottom - shift.y,
      };
    });
    const pipes = drawn
      .flatMap(({ window }) => window!.shapes)
      .filter((s): s is Path => s.kind === "path" && (s.pen === "pipe" || s.pen === "unscaled"));
    for (const { spots } of pipes) {
      for (let i = 1; i < spots.length; i += 1) {
        for (let share = 0; share <= 1; share += 0.05) {
          const x = spots[i - 1]!.x + share * (spots[i]!.x - spots[i - 1]!.x);
          const y = spots[i - 1]!.y + share * (spots[i]!.y - spots[i - 1]!.y);
          expect(
            parts.some((part) => x >= part.left && x <= part.right && y >= part.top && y <= part.bottom),
          ).toBe(true);
        }
      }
    }
    const at = (name: string) => parts[drawn.findIndex((page) => page.name === name)]!;
    expect(at("A1").right - at("A2").left).toBeCloseTo(OVERLAP, 9);
  });

  test("marks where a page joins the next, but not one that was left out as empty", () => {
    const names = new Set(drawn.map(({ name }) => name));
    const joins = drawn
      .flatMap(({ shapes }) => shapes.filter(isText))
      .flatMap(({ text }) => /^([A-Z]\d) (?:to|from) here$/.exec(text)?.[1] ?? []);
    expect(joins.length).toBeGreaterThan(1);
    for (const name of joins) expect(names).toContain(name);
  });

  test("lays out no more pages than anyone means, and says how many it would be", () => {
    const far = {
      ...ELBOW,
      points: [],
      runs: [{ id: "feed", length: "900 m", drinkers: { kind: "nipple-bucket", count: 3 } }],
    };
    const long = sheetFor({ scale: 5 }, far);
    expect(long.pages).toEqual([]);
    expect(long.tooMany).toBeGreaterThan(MOST_PAGES);
    expect(long.fits!.times).toBeGreaterThan(1000);
  });
});

describe("laySheet from the side", () => {
  const side = (more: Partial<SheetRequest> = {}) => sheetFor({ drawing: "side", isLying: true, ...more });

  test("draws lengths and heights each to its own scale", () => {
    const sheet = side({ scale: 100, heightScale: 20, run: 0 });
    const [feed] = runsOf(sheet);
    const [first, last] = [feed!.spots[0]!, feed!.spots.at(-1)!];
    expect(last.x - first.x).toBeCloseTo(60, 9);
    // From the outlet, 67.5 cm over the datum by this barrel's own outlet, to 20 cm over it.
    const { line } = checkedOf(planOf(ELBOW));
    const fall = line.points.height[line.sources[0]!.point]! - 0.2;
    expect(last.y - first.y).toBeCloseTo(50 * fall, 9);
    expect(wordsOf(sheet)).toContain("Lengths 1:100, heights 1:20");
  });

  test("states one scale where both are the same", () => {
    expect(wordsOf(side({ scale: 50, heightScale: 50 }))).toContain("Lengths and heights 1:50");
  });

  test("gives every branch a strip of its own, so that every drinker has its mark", () => {
    const sheet = side({ scale: 20 });
    const words = wordsOf(sheet);
    for (const end of ["down", "slack"]) expect(words).toContain(`From barrel to the end of ${end}`);
    // The feed's drinkers are on the way to the others.
    expect(words).not.toContain("to the end of feed");
  });

  test("draws one way alone when one is chosen", () => {
    const words = wordsOf(side({ run: 1 }));
    expect(words).toContain("to the end of down");
    expect(words).not.toContain("to the end of slack");
  });

  test("has distance and height above ground at each joint and at both ends of each stretch of drinkers", () => {
    const words = wordsOf(side({ run: 1 }));
    for (const each of ["corner", "pen", "feed 1", "feed 6", "pen cups 1", "10 m", "30 cm"])
      expect(words).toContain(each);
  });

  test("has nothing to draw without a check, and without drinkers", () => {
    expect(laySheet(requestFor({ drawing: "side", checked: undefined }))).toBeUndefined();
    const bare = { ...ELBOW, runs: ELBOW.runs.map(({ drinkers: _, ...run }) => run) };
    expect(laySheet(requestFor({ drawing: "side" }, bare))).toBeUndefined();
  });
});

test("names of any kind and length are words on the paper and stay on it", () => {
  const name = `<script>alert("1")</script> דלי 🐔 ${"long ".repeat(8)}`.trim();
  const data = { ...ELBOW, name, runs: [{ ...ELBOW.runs[0], id: name }], points: [ELBOW.points[0]] };
  for (const drawing of ["above", "side"] as const) {
    const sheet = sheetFor({ drawing }, data);
    expect(wordsOf(sheet)).toContain("<script>");
    expect(sheet.pages.length).toBeLessThan(4);
  }
});
