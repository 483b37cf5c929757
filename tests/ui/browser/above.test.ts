import { afterEach, describe, expect, test } from "vitest";
import { userEvent } from "vitest/browser";
import { checkedOf, PLACED, planOf } from "../fixtures/placed-plan.js";
import { AboveBench, nextFrame, withPlace } from "./above-bench.js";
import { accessibilityFaults } from "./accessibility.js";

afterEach(() => document.body.replaceChildren());

const EMPTY = planOf({ headfall: 1, sources: [{ id: "drum", vessel: "drum-55gal-plastic" }], runs: [] });

describe("headfall-above", () => {
  test("has nothing that axe objects to, plain, with a part chosen, and empty", async () => {
    const bench = await new AboveBench().show();
    expect(await accessibilityFaults(bench.above)).toEqual([]);
    await bench.redrawn({ selected: { kind: "run", run: 1 } });
    expect(await accessibilityFaults(bench.above)).toEqual([]);
    await bench.redrawn({ plan: EMPTY, checked: undefined, selected: undefined });
    expect(await accessibilityFaults(bench.above)).toEqual([]);
  });

  test("names every source, run, group of drinkers and joint aloud, in the order of the water", async () => {
    const bench = await new AboveBench().show();
    expect(bench.parts).toEqual([
      "source 0",
      "run 0",
      "joint tee",
      "run 1",
      "drinkers 1 0 ",
      "joint pen",
      "run 2",
      "joint yard",
    ]);
    const spoken = (key: string) => bench.part(key).getAttribute("aria-label");
    expect(spoken("source 0")).toBe("source barrel, Plastic drum, 55 US gal, on a stand of 60 cm");
    expect(spoken("run 0")).toMatch(/^run feed, 10 m, falls 65 cm, PE metric .*, flow [\d.]+ m?L\/min$/);
    expect(spoken("drinkers 1 0 ")).toMatch(/^pen line drinkers, 5 nipples: 5 \w+$/);
    expect(spoken("joint tee")).toBe("joint tee, 3 runs meet");
    expect(spoken("joint yard")).toBe("end yard");
  });

  test("draws one mark of its verdict for each drinker, and gathers them when they come too close", async () => {
    const bench = await new AboveBench().show(900);
    // One path holds them all; each begins with a move to its place.
    const marks = () =>
      bench.above.shadowRoot!.querySelector(".mark-back")!.getAttribute("d")!.match(/M/g)!.length;
    expect(marks()).toBe(5);
    for (let i = 0; i < 6; i++) bench.above.shadowRoot!.querySelectorAll("button")[1]!.click();
    await bench.redrawn();
    expect(marks()).toBeLessThan(5);
  });

  test("writes names, lengths, falls and flows beside the runs, in the user's units", async () => {
    const bench = await new AboveBench().show(900);
    expect(bench.texts().join(" | ")).toMatch(/feed · 10 m ?falls 65 cm · [\d.]+ m?L\/min/);
    await bench.redrawn({ system: "us" });
    expect(bench.texts().join(" | ")).toMatch(/feed · 32 ft 10 in/);
    expect(bench.texts().join(" | ")).toMatch(/\d+ ft$/);
  });

  test("breaks a run that is not drawn to scale, and says so on the drawing and aloud", async () => {
    const plan = withPlace(PLACED, "yard", "10 m", "8 m");
    const bench = await new AboveBench({ plan }).show();
    expect(bench.above.shadowRoot!.querySelectorAll(".cut")).toHaveLength(1);
    expect(bench.part("run 2").getAttribute("aria-label")).toContain("5 m, not drawn to scale");
    expect(bench.texts().join(" ")).toContain("not to scale");
  });

  test("invites to draw while there is no pipe, and shows the source", async () => {
    const bench = await new AboveBench({ plan: EMPTY, checked: undefined }).show(360);
    expect(bench.above.shadowRoot!.querySelector(".hint")!.textContent).toMatch(/No pipe yet/);
    expect(bench.parts).toEqual(["source 0"]);
    await bench.redrawn({ tool: "run" });
    expect(bench.above.shadowRoot!.querySelector(".hint")!.textContent).toMatch(/Press at the source/);
  });

  test("says in one line what a press does, by tool and by what is chosen", async () => {
    const bench = await new AboveBench().show();
    const hint = () => bench.above.shadowRoot!.querySelector(".hint")!.textContent;
    expect(hint()).toBe("Press a part to choose it, drag it to move it.");
    await bench.redrawn({ selected: { kind: "run", run: 0 } });
    expect(hint()).toBe("Drag the run to bend it; hold it to branch off.");
    await bench.redrawn({ tool: "drinkers" });
    expect(hint()).toBe("Press on a run: drinkers are hung there.");
  });

  test("outlines the chosen part by a line of its own, not by colour alone", async () => {
    const bench = await new AboveBench({ selected: { kind: "run", run: 0 } }).show();
    const drawn = () => bench.above.shadowRoot!.querySelectorAll(".chosen").length;
    expect(drawn()).toBe(1);
    expect(bench.part("run 0").getAttribute("aria-pressed")).toBe("true");
    await bench.redrawn({ selected: { kind: "drinkers", run: 1, group: 0, number: 2 } });
    // Around the group, and around the one drinker.
    expect(drawn()).toBe(2);
    expect(bench.part("drinkers 1 0 ").getAttribute("aria-pressed")).toBe("true");
  });

  test("survives a check that is older than the plan, and a part that is gone", async () => {
    const bench = await new AboveBench().show();
    const { checked } = bench.above;
    const selected = { kind: "run", run: 2 } as const;
    await bench.redrawn({ plan: { ...PLACED, runs: PLACED.runs.slice(0, 1) }, checked, selected });
    expect(bench.parts).toEqual(["source 0", "run 0", "joint tee"]);
    await bench.redrawn({ plan: PLACED, checked: checkedOf({ ...PLACED, runs: PLACED.runs.slice(0, 1) }) });
    expect(bench.part("run 1").getAttribute("aria-label")).toContain("not checked yet");
    expect(bench.part("drinkers 1 0 ").getAttribute("aria-label")).toContain("not checked yet");
  });

  test("treats a name that looks like markup as words", async () => {
    const name = "<img src=x onerror=alert(1)>";
    const runs = PLACED.runs.map((run, i) => (i === 0 ? { ...run, id: name } : run));
    const bench = await new AboveBench({ plan: { ...PLACED, runs } }).show(900);
    expect(bench.part("run 0").getAttribute("aria-label")).toContain(name);
    expect(bench.above.shadowRoot!.querySelector("img")).toBeNull();
  });
});

describe("headfall-above from frame to frame", () => {
  test("draws once, however many plans come in between", async () => {
    const bench = await new AboveBench().show();
    let drawn = 0;
    const watch = new MutationObserver(() => drawn++);
    watch.observe(bench.above.shadowRoot!, { subtree: true, attributes: true });
    for (let i = 1; i <= 5; i++) {
      bench.above.plan = withPlace(PLACED, "pen", `${14 + i} m`, "3 m");
      await Promise.resolve();
    }
    await bench.above.updateComplete;
    await nextFrame();
    expect(drawn).toBe(1);
    watch.disconnect();
  });

  test("moves the plan as one group while the view is moved, and draws nothing of it anew", async () => {
    const bench = await new AboveBench().show();
    const touched = new Set<string>();
    const watch = new MutationObserver((changes) => {
      for (const { target, attributeName } of changes)
        touched.add(`${(target as Element).getAttribute("class") ?? target.nodeName} ${attributeName}`);
    });
    watch.observe(bench.above.shadowRoot!, { subtree: true, attributes: true, childList: true });
    const press = (kind: string, x: number, y: number) =>
      bench.drawing.dispatchEvent(
        new PointerEvent(kind, { pointerId: 1, clientX: x, clientY: y, button: 0, bubbles: true }),
      );
    bench.drawing.setPointerCapture = () => undefined;
    press("pointerdown", 60, 350);
    press("pointermove", 90, 330);
    await bench.above.updateComplete;
    await nextFrame();
    watch.disconnect();
    expect([...touched].sort()).toEqual(["drawing hand busy class", "g transform", "grid d"].sort());
  });

  test("lays out and draws 60 dragged drinkers well within a frame", async () => {
    const many = planOf({
      ...PLACED,
      runs: PLACED.runs.map((run) =>
        run.id === "pen line"
          ? { ...run, drinkers: { kind: "nipple-side-action", count: 60, every: "10 cm" } }
          : run,
      ),
    });
    const bench = await new AboveBench({ plan: many }).show(1000);
    const checked = bench.above.checked;
    const costs: number[] = [];
    for (let i = 0; i < 60; i++) {
      bench.above.plan = withPlace(many, "pen", "14 m", `${3 + i / 20} m`);
      bench.above.checked = checked;
      await nextFrame();
      const start = performance.now();
      await bench.above.updateComplete;
      costs.push(performance.now() - start);
    }
    const median = costs.sort((a, b) => a - b)[30]!;
    console.log(
      `drag of 60 drinkers: ${median.toFixed(1)} ms a frame, ${costs[57]!.toFixed(1)} ms at the 95th percentile`,
    );
    expect(median).toBeLessThan(16);
  });
});

test("headfall-above brings a part that was chosen elsewhere into sight, and stays where it is for one in sight", async () => {
  const bench = await new AboveBench().show(500);
  for (let i = 0; i < 9; i++) bench.above.shadowRoot!.querySelectorAll("button")[0]!.click();
  await bench.redrawn();
  const isSeen = (key: string) => {
    const { x, y } = bench.middleOf(key);
    return x > 0 && x < 500 && y > 0 && y < 420;
  };
  expect(isSeen("source 0")).toBe(false);
  await bench.redrawn({ selected: { kind: "source", source: 0 } });
  await nextFrame();
  expect(isSeen("source 0")).toBe(true);
  const before = bench.middleOf("source 0");
  await bench.redrawn({ selected: { kind: "run", run: 0 } });
  expect(bench.middleOf("source 0")).toEqual(before);
});

test("headfall-above fits the plan again when its box becomes wider, until the hand has moved the view", async () => {
  const bench = await new AboveBench().show(400);
  const before = bench.scale;
  bench.above.parentElement!.style.width = "800px";
  await expect.poll(() => bench.scale).toBeGreaterThan(before * 1.5);
  await userEvent.click(bench.above.shadowRoot!.querySelectorAll("button")[0]!);
  const looked = bench.scale;
  bench.above.parentElement!.style.width = "500px";
  await nextFrame();
  await nextFrame();
  expect(bench.scale).toBeCloseTo(looked, 4);
});
