import { beforeAll, expect, test } from "vitest";
import { buildCommand, HEN_HOUSE, headfall, RAIN_BARREL, TWO_PENS } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

test("headfall sizes marks the smallest that works and the pipe of the plan", () => {
  const run = headfall(["sizes", HEN_HOUSE, "--run", "hen line"]);
  expect(run).toMatchObject({ status: 0, stderr: "" });
  expect(run.stdout).toMatch(/^Each size in hen line\n/);
  expect(run.stdout).toMatch(/\n\s*\*?>\s+pvc-sch40-1\/2 /);
  expect(run.stdout).toContain("The smallest that works is pvc-sch40-1/2.");
});

test("headfall sizes --json gives each size with head, flow, velocity, regime, litres and verdict", () => {
  const run = headfall(["sizes", TWO_PENS, "--run", "low pen line", "--json"]);
  expect(run).toMatchObject({ status: 0, stderr: "" });
  const result = JSON.parse(run.stdout);
  expect(result).toMatchObject({ format: "headfall sizes", version: 1, runs: ["low pen line"] });
  expect(result.sizes.length).toBeGreaterThan(3);
  const bores: number[] = result.sizes.map((size: { bore: number }) => size.bore);
  expect(bores).toEqual([...bores].sort((a, b) => a - b));
  for (const size of result.sizes) {
    expect(size.volume).toBeGreaterThan(0);
    expect(size.busiest).toMatchObject({
      regime: expect.stringMatching(/^(laminar|critical|turbulent|still)$/),
    });
    expect(size.worst.lowestBusiest.hazenWilliams.flow).toBeGreaterThanOrEqual(0);
  }
  expect(result.sizes.filter((size: { isPresent: boolean }) => size.isPresent)).toHaveLength(1);
});

test("headfall sizes (no size helps) ends with 1 and says what decides", () => {
  const run = headfall(["sizes", RAIN_BARREL, "--run", "duck hose"]);
  expect(run).toMatchObject({ status: 1, stderr: "" });
  expect(run.stdout).toContain("No size on the shelf feeds every drinker");
});

test("headfall sizes --run (unknown) tells the runs there are, and ends with 2", () => {
  const run = headfall(["sizes", HEN_HOUSE, "--run", "duck line"]);
  expect(run).toMatchObject({ status: 2, stdout: "" });
  expect(run.stderr).toContain(
    'runs: found "duck line". A run of the plan. Known here: "feed", "riser", "hen line".',
  );
});

test("headfall sizes gives costs where the shelf has prices", () => {
  const plan = {
    headfall: 1,
    sources: [{ vessel: "drum-55gal-plastic", stand: "50 cm" }],
    runs: [{ length: "6 m", drinkers: { kind: "cup-float" } }],
    shelf: [{ pipe: "pvc-sch40-1/2", price: 3, per: "3 m" }, { pipe: "pvc-sch40-3/4" }],
    money: "EUR",
  };
  const run = headfall(["sizes", "-", "--json"], JSON.stringify(plan));
  const result = JSON.parse(run.stdout);
  expect(result.money).toBe("EUR");
  // Six metres at 3 for 3 m.
  expect(result.sizes.map(({ pipe, cost }: { pipe: string; cost: number | null }) => [pipe, cost])).toEqual([
    ["pvc-sch40-1/2", 6],
    ["pvc-sch40-3/4", null],
  ]);
});
