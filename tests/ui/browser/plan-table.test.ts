import type { Plan } from "@headfall/hydraulics";
import { afterEach, expect, onTestFinished, test, vi } from "vitest";
import { page, userEvent } from "vitest/browser";
import { HeadfallPlanTable } from "../../../packages/ui/src/tables/plan-table-element.js";
import { accessibilityFaults } from "./accessibility.js";
import { button, choice, textbox, type } from "./part-verbs.js";
import { alderBank, PlanHost, placed } from "./plan-host.js";

afterEach(() => document.body.replaceChildren());

const surveyed: Plan = {
  ...alderBank,
  runs: alderBank.runs.map((run, index) =>
    index === 2 ? { ...run, survey: [{ along: "1 m", fall: "2 cm" }] } : run,
  ),
};

async function shown(plan = surveyed, width = 1200) {
  return placed(new PlanHost(new HeadfallPlanTable(), plan), width);
}

const rowOf = (name: string) => textbox(name).element().closest("tr")!;

test("headfall-plan-table has nothing that axe objects to, wide and narrow, in light and in dark", async () => {
  const { view } = await shown();
  expect(await accessibilityFaults(view)).toEqual([]);
  view.style.colorScheme = "dark";
  expect(await accessibilityFaults(view)).toEqual([]);
  await page.viewport(360, 800);
  view.parentElement!.style.width = "auto";
  expect(await accessibilityFaults(view)).toEqual([]);
  await page.viewport(414, 896);
});

test("headfall-plan-table shows the plan in six tables, each cell with a name of its own", async () => {
  const { view } = await shown();
  const tables = [...view.shadowRoot!.querySelectorAll("table")];
  expect(tables.map((table) => table.caption!.textContent)).toEqual([
    "Sources",
    "Points",
    "Runs",
    "Drinkers",
    "Surveys",
    "Fittings and valves",
  ]);
  expect(tables.map((table) => table.tBodies[0]!.rows.length)).toEqual([1, 3, 3, 1, 1, 3]);
  const controls = [...view.shadowRoot!.querySelectorAll("tbody :is(input, select, button)")];
  const names = controls.map((control) => control.getAttribute("aria-label"));
  expect(names).not.toContain(null);
  expect(new Set(names).size).toBe(names.length);
});

test("headfall-plan-table has a row for a point that no run has come to yet", async () => {
  const host = await shown({ ...alderBank, points: [...alderBank.points!, { id: "gate", ground: "20 cm" }] });
  await expect.element(textbox("Height of the ground at gate")).toHaveValue("20 cm");
  host.view.selected = { kind: "joint", joint: "gate" };
  await expect.poll(() => rowOf("Height of the ground at gate").getAttribute("aria-current")).toBe("true");
});

test("headfall-plan-table fits each row under the heads of its columns", async () => {
  const { view } = await shown();
  for (const table of view.shadowRoot!.querySelectorAll("table")) {
    const heads = table.tHead!.rows[0]!.cells.length;
    for (const row of table.tBodies[0]!.rows)
      expect(row.cells.length, table.caption!.textContent!).toBe(heads);
  }
});

test("when a cell is typed into, the plan keeps it; what stands in for an empty one is shown", async () => {
  const host = await shown();
  await type("Length of hens", "7");
  await expect.poll(() => host.plan.runs[1]!.length).toBe("7 m");
  await type("One every, drinkers hens", "");
  await expect.poll(() => host.plan.runs[1]!.drinkers).not.toHaveProperty("every");
  await expect.element(textbox("One every, drinkers hens")).toHaveAttribute("placeholder", "spread evenly");
});

test("when units differ from what was typed, the cell shows the user's, and says what was typed", async () => {
  const host = await shown();
  await expect.element(textbox("Length of ducks")).toHaveValue("2.44 m");
  await expect.element(textbox("Length of ducks")).toHaveAccessibleDescription("Typed as 8 ft.");
  host.view.system = "us";
  await expect.element(textbox("Length of ducks")).toHaveValue("8 ft");
  await expect.element(textbox("Stand of barrel")).toHaveValue("1 ft 11.5 in");
});

test("when a choice is come to by the keyboard, it has all its options, and the plan takes the one chosen", async () => {
  const host = await shown();
  const pipe = choice("Pipe of feed").element() as HTMLSelectElement;
  expect(pipe.options).toHaveLength(1);
  pipe.focus();
  await expect.poll(() => pipe.options.length).toBeGreaterThan(20);
  await userEvent.selectOptions(pipe, "pvc-sch40-1");
  await expect.poll(() => host.plan.runs[0]!.pipe).toBe("pvc-sch40-1");
  expect(pipe.value).toBe("pvc-sch40-1");
});

test("when another end is chosen for a run, the runs after it stay where they were", async () => {
  const plan: Plan = { ...alderBank, runs: [...alderBank.runs, { id: "geese", length: "2 m" }] };
  const host = await shown(plan);
  const end = choice("End of ducks").element() as HTMLSelectElement;
  end.focus();
  await expect.poll(() => end.options.length).toBeGreaterThan(2);
  await userEvent.selectOptions(end, "hens end");
  await expect.poll(() => host.wanted.at(-1)!.change).toMatchObject({ kind: "setAll" });
  expect(host.wanted.at(-1)!.change).toMatchObject({
    entries: [
      { path: ["runs", 2, "to"], value: "hens end" },
      { path: ["runs", 3, "from"], value: "ducks end" },
    ],
  });
});

test("when an edit is refused, its cell keeps what was typed and says why", async () => {
  const host = await shown();
  await type("Length of hens", "1");
  await expect.element(page.getByRole("alert")).toHaveTextContent("would reach past the end of the run");
  await expect.element(textbox("Length of hens")).toHaveValue("1");
  expect(rowOf("Length of hens").querySelector("[role=alert]")).not.toBeNull();
  expect(host.plan.runs[1]!.length).toBe("6 m");
});

test("when the keyboard comes into a row, its part is chosen, and the row is marked", async () => {
  const host = await shown();
  (textbox("Length of hens").element() as HTMLElement).focus();
  await expect.poll(() => host.chosen).toEqual([{ kind: "run", run: 1 }]);
  await expect.poll(() => rowOf("Length of hens").getAttribute("aria-current")).toBe("true");
  (textbox("Fall of hens").element() as HTMLElement).focus();
  expect(host.chosen).toHaveLength(1);
});

test("when a run is added from a point, drinkers put on it, and a reading, each has its row", async () => {
  const host = await shown(alderBank);
  await userEvent.selectOptions(choice("Add a run from"), "hens end");
  await userEvent.click(button("Add a run"));
  await expect.poll(() => host.plan.runs).toHaveLength(4);
  expect(host.plan.runs[3]!.from).toBe("hens end");
  await userEvent.selectOptions(choice("Add drinkers to"), "feed");
  await userEvent.click(button("Add drinkers"));
  await expect
    .poll(() => host.plan.runs[0]!.drinkers)
    .toMatchObject({ kind: "nipple-side-action", count: 10, every: "30 cm" });
  await userEvent.selectOptions(choice("Add a reading to"), "ducks");
  await userEvent.fill(textbox("Distance"), "1");
  await userEvent.fill(textbox("Drop"), "3");
  await userEvent.keyboard("{Enter}");
  await expect.poll(() => host.plan.runs[2]!.survey).toEqual([{ along: "1 m", fall: "3 cm" }]);
  await expect.element(textbox("Distance, reading 1 of ducks")).toHaveValue("1 m");
});

test("when a source is added, duplicated and deleted, its table has one row more and one less", async () => {
  const host = await shown();
  await userEvent.click(button("Add a source"));
  await expect.poll(() => host.plan.sources).toHaveLength(2);
  await userEvent.click(button("Duplicate source barrel"));
  await expect.poll(() => host.plan.sources).toHaveLength(3);
  const last = host.view.shadowRoot!.querySelectorAll<HTMLButtonElement>('[aria-label^="Delete source"]');
  await userEvent.click(last[last.length - 1]!);
  await expect.poll(() => host.plan.sources).toHaveLength(2);
  expect(host.view.shadowRoot!.activeElement?.ariaLabel).toBe("Sources, table");
});

test("when a reading is deleted, the survey that has none left is left out", async () => {
  const host = await shown();
  await userEvent.click(button("Delete reading 1 of ducks"));
  await expect.poll(() => host.plan.runs[2]).not.toHaveProperty("survey");
  await expect.element(page.getByRole("heading", { name: "Surveys: none yet" })).toBeVisible();
  expect(host.view.shadowRoot!.activeElement?.textContent).toBe("Surveys: none yet");
});

test("when the vessel has sizes of its own, they are in its cell", async () => {
  const host = await shown({
    ...alderBank,
    sources: [{ id: "barrel", vessel: { shape: "upright", diameter: "57 cm", height: "85 cm" } }],
  });
  await type("Height inside of barrel", "90");
  await expect.poll(() => host.plan.sources[0]!.vessel).toMatchObject({ height: "90 cm" });
});

test("when fittings are typed in one line, the run has them; one that no table knows is refused by its name", async () => {
  const host = await shown();
  await expect.element(textbox("Fittings of feed")).toHaveValue("ball-valve; elbow-90 x 2");
  await type("Fittings of feed", "strainer, elbow-90 x 4");
  await expect.poll(() => host.plan.runs[0]!.fittings).toEqual(["strainer", "elbow-90 x 4"]);
  await type("Fittings of feed", "gizmo");
  await expect.element(page.getByRole("alert")).toHaveTextContent("gizmo");
  await expect.element(textbox("Fittings of feed")).toHaveValue("gizmo");
  await type("Fittings of feed", "");
  await expect.poll(() => host.plan.runs[0]).not.toHaveProperty("fittings");
});

test("when a regulator is set in the tables, its head can be typed beside it", async () => {
  const host = await shown();
  await userEvent.click(page.getByRole("checkbox", { name: "Low-pressure regulator at the start of hens" }));
  await type("Head the regulator of hens holds", "25");
  await expect.poll(() => host.plan.runs[1]!.regulator).toEqual({ sets: "25 cm" });
});

test("when a plan has nothing but a source, the tables offer what can be added", async () => {
  await shown({ headfall: 1, sources: [{ vessel: "bucket-20l" }], runs: [] });
  await expect.element(page.getByText("Drinkers hang on runs: add a run first.")).toBeVisible();
  await userEvent.click(button("Add a run"));
  await expect.element(page.getByRole("table", { name: "Runs" })).toBeVisible();
});

const long: Plan = {
  headfall: 1,
  sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "1 m" }],
  runs: Array.from({ length: 1000 }, (_, index) => ({ id: `run ${index + 1}`, length: "1 m", fall: "0 cm" })),
};

test("when a plan has 1,000 runs, 100 are shown at once, and the others page by page", async () => {
  const host = await shown(long);
  const rows = () => [...host.view.shadowRoot!.querySelectorAll("table")][2]!.tBodies[0]!.rows;
  expect(rows()).toHaveLength(100);
  await expect.element(page.getByText("1 to 100 of 1000").nth(1)).toBeVisible();
  await userEvent.click(button("Rows after, runs"));
  await expect.element(textbox("Length of run 101")).toBeVisible();
  expect(rows()).toHaveLength(100);
});

test("when a part is chosen elsewhere, its page is shown and its row marked", async () => {
  const host = await shown(long);
  host.view.selected = { kind: "run", run: 990 };
  await expect.element(textbox("Length of run 991")).toBeVisible();
  expect(rowOf("Length of run 991").getAttribute("aria-current")).toBe("true");
});

test("when the plan of 1,000 runs changes in a drag elsewhere, the tables wait for its end, then show it", async () => {
  const host = await shown(long);
  // By a clock of its own: on a busy machine the hand would seem to rest between two steps.
  vi.useFakeTimers({ toFake: ["setTimeout"] });
  onTestFinished(() => void vi.useRealTimers());
  const length = () => (textbox("Length of run 6").element() as HTMLInputElement).value;
  for (let step = 2; step <= 9; step++) {
    const runs = long.runs.map((run, index) => (index === 5 ? { ...run, length: `${step} m` } : run));
    host.view.plan = { ...long, runs };
    await vi.advanceTimersByTimeAsync(40);
    expect(length()).toBe("1 m");
  }
  await vi.advanceTimersByTimeAsync(300);
  vi.useRealTimers();
  await expect.poll(length).toBe("9 m");
});

test("when a hand is in the tables of a long plan, they follow at once", async () => {
  const host = await shown(long);
  await type("Length of run 6", "3");
  await expect.poll(() => host.plan.runs[5]!.length).toBe("3 m");
  const start = performance.now();
  host.view.plan = { ...host.plan, runs: long.runs.map((run) => ({ ...run, length: "4 m" })) };
  await host.view.updateComplete;
  expect((textbox("Length of run 7").element() as HTMLInputElement).value).toBe("4 m");
  console.log(`tables of 1,000 runs drawn anew in ${(performance.now() - start).toFixed(0)} ms`);
});
