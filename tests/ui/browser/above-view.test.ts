import { afterEach, expect, test } from "vitest";
import { PLACED, planOf } from "../fixtures/placed-plan.js";
import { AboveBench, withPlace } from "./above-bench.js";

afterEach(() => document.body.replaceChildren());

const BEGUN = planOf({
  headfall: 1,
  name: "begun",
  sources: [{ id: "drum", vessel: "drum-55gal-plastic" }],
  runs: [],
});

test("headfall-above stays as it is looked at when the first run is drawn, though all parts are new", async () => {
  const bench = await new AboveBench({ plan: BEGUN, checked: undefined }).show(400);
  const before = bench.middleOf("source 0");
  const place = { x: "0 m", y: "0 m" };
  const drawn = planOf({
    ...BEGUN,
    sources: [{ ...BEGUN.sources[0], place }],
    points: [{ id: "end", place: { x: "2 m", y: "0 m" } }],
    runs: [{ from: "drum", to: "end", length: "2 m" }],
  });
  await bench.redrawn({ plan: drawn });
  expect(bench.middleOf("source 0")).toEqual(before);
});

test("headfall-above fits a plan that has grown out of sight, as when a length is typed", async () => {
  const bench = await new AboveBench().show(400);
  await bench.redrawn({ plan: withPlace(PLACED, "pen", "60 m", "3 m") });
  expect(bench.middleOf("joint pen").x).toBeLessThan(400);
  expect(bench.middleOf("source 0").x).toBeGreaterThan(0);
});

test("headfall-above fits another plan that is opened, also after the view was moved", async () => {
  const bench = await new AboveBench().show(400);
  for (let i = 0; i < 9; i++) bench.above.shadowRoot!.querySelectorAll("button")[0]!.click();
  await bench.redrawn({ plan: BEGUN, checked: undefined });
  const { x, y } = bench.middleOf("source 0");
  expect([x, y]).toEqual([expect.closeTo(200, 0), expect.closeTo(198, 0)]);
});

test("headfall-above writes no label under the hint nor under the buttons", async () => {
  const bench = await new AboveBench().show(700);
  const sheet = bench.drawing.getBoundingClientRect();
  for (let i = 0; i < 3; i++) bench.above.shadowRoot!.querySelectorAll("button")[0]!.click();
  await bench.redrawn();
  const labels = [...bench.above.shadowRoot!.querySelectorAll("g > .label .first")].map((each) =>
    each.getBoundingClientRect(),
  );
  expect(labels.length).toBeGreaterThan(0);
  const [hint, buttons] = [".hint", ".buttons"].map((each) =>
    bench.above.shadowRoot!.querySelector(each)!.getBoundingClientRect(),
  );
  for (const { top, bottom } of labels) {
    expect(top - sheet.top).toBeGreaterThanOrEqual(hint!.bottom - sheet.top - 1);
    expect(bottom).toBeLessThanOrEqual(buttons!.top + 4);
  }
});
