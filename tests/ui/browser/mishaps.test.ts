import { checkPlan, type Plan } from "@headfall/hydraulics";
import { afterEach, beforeEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { HeadfallMishaps } from "../../../packages/ui/src/mishaps/mishaps-element.js";
import { HeadfallProfile } from "../../../packages/ui/src/profile/profile-element.js";
import { HeadfallHow } from "../../../packages/ui/src/verdicts/how-element.js";
import { accessibilityFaults } from "./accessibility.js";
import { alderBank } from "./plan-host.js";
import { SilentWorker } from "./silent-worker.js";

for (const [name, element] of Object.entries({
  "headfall-mishaps": HeadfallMishaps,
  "headfall-profile": HeadfallProfile,
  "headfall-how": HeadfallHow,
})) {
  if (customElements.get(name) === undefined) customElements.define(name, element);
}

const TODAY = "2026-07-04";
const RealWorker = globalThis.Worker;
// Answered on the page's own thread, where nothing has to be fetched twice; the worker is tried with the built page.
beforeEach(() => {
  globalThis.Worker = undefined as unknown as typeof Worker;
});
afterEach(() => {
  document.body.replaceChildren();
  globalThis.Worker = RealWorker;
});

const withHens: Plan = { ...alderBank, pens: [{ id: "hens", birds: { kind: "hen", count: 20 } }] };
/** So many drinkers that a run has to be asked for. */
const large: Plan = {
  ...withHens,
  runs: alderBank.runs.map((run) =>
    run.id === "hens"
      ? { ...run, length: "40 m", drinkers: { kind: "nipple-side-action", count: 320, every: "10 cm" } }
      : run,
  ) as Plan["runs"],
};

async function placed(plan: Plan, width = 420): Promise<HeadfallMishaps> {
  const view = document.createElement("headfall-mishaps") as HeadfallMishaps;
  view.day = TODAY;
  show(view, plan);
  const box = document.createElement("div");
  box.style.width = `${width}px`;
  box.append(view);
  document.body.append(box);
  await view.updateComplete;
  return view;
}

function show(view: HeadfallMishaps, plan: Plan): void {
  view.plan = plan;
  const checking = checkPlan(plan, { samples: 0, day: TODAY });
  if (checking.ok) view.checked = checking.checked;
}

const rowsOf = (view: HTMLElement) => [...view.shadowRoot!.querySelectorAll(".row")];
const shown = (view: HTMLElement) => view.shadowRoot!.textContent!.replace(/\s+/g, " ");
const ran = (view: HTMLElement) => expect.poll(() => rowsOf(view).length).toBeGreaterThan(8);
const openAll = () => userEvent.click(page.getByRole("button", { name: "Open all" }));
const openRows = (view: HTMLElement) => rowsOf(view).filter((row) => row.querySelector("details")!.open);

test("headfall-mishaps has nothing that axe objects to, drawn, in light and in dark, and fits into 336 px", async () => {
  const view = await placed(withHens, 336);
  await ran(view);
  expect(await accessibilityFaults(view)).toEqual([]);
  await openAll();
  await userEvent.click(page.getByRole("button", { name: "Show on the drawing" }).first());
  await expect.poll(() => view.shadowRoot!.querySelector("svg.place circle")).not.toBeNull();
  for (const details of view.shadowRoot!.querySelectorAll("details")) details.open = true;
  expect(await accessibilityFaults(view)).toEqual([]);
  view.style.colorScheme = "dark";
  expect(await accessibilityFaults(view)).toEqual([]);
  expect(view.scrollWidth).toBeLessThanOrEqual(336);
});

test("first a list: name, worst verdict and how soon of each, a thumb's height or two; one opens by key and stays open", async () => {
  const view = await placed(withHens, 336);
  await ran(view);
  expect(openRows(view)).toEqual([]);
  for (const row of rowsOf(view)) {
    expect(row.getBoundingClientRect().height).toBeLessThan(120);
    const brief = row.querySelector("summary")!.textContent!.replace(/\s+/g, " ");
    expect(brief).toMatch(
      /((dry|starves|drips) \d+ of \d+|no drinker worse) harm (at once|after \d|does not come)/,
    );
  }
  const name = "Barrel gets no air";
  const named = () => openRows(view).map((row) => row.querySelector("h4")!.textContent);
  rowsOf(view)
    .find((row) => row.querySelector("h4")!.textContent!.includes(name))!
    .querySelector("summary")!
    .focus();
  await userEvent.keyboard("{Enter}");
  await expect.poll(named).toEqual([expect.stringContaining(name)]);
  // Chosen by what they come to, others go and it is another in number; it stays the one that is open.
  await userEvent.selectOptions(page.getByLabelText("Show", { exact: false }).first(), "noAir");
  await expect.poll(named).toEqual([expect.stringContaining(name)]);
  await openAll();
  await expect.poll(() => openRows(view).length).toBe(rowsOf(view).length);
  await userEvent.click(page.getByRole("button", { name: "Shut all" }));
  await expect.poll(() => openRows(view).length).toBe(0);
});

test("each mishap tells when the first bird goes without, what is lost, who goes dry, and its guard; the worst is first", async () => {
  const view = await placed(withHens);
  await ran(view);
  const rows = rowsOf(view);
  expect(rows[0]!.textContent).toMatch(/First bird without water, hens: *at once/);
  const open = rows.find((row) => /stuck open/.test(row.textContent!))!;
  expect(open.textContent!.replace(/\s+/g, " ")).toMatch(
    /first bird without water, hens: ?after .* To the ground ?\d+ L.*Guard:/i,
  );
  const joint = rows.find((row) => /Joint apart at tee/.test(row.textContent!))!;
  expect(joint.textContent!.replace(/\s+/g, " ")).toMatch(/dry ?all 12 drinkers|dry ?hens 1 to 12/);
  const widths = rows.map((row) => Number(row.querySelector(".span")!.getAttribute("width")));
  expect(widths).toEqual([...widths].sort((a, b) => a - b));
});

test("mishaps of one kind can be chosen, and one shown on the drawing with those it leaves dry", async () => {
  const view = await placed(withHens);
  await ran(view);
  const all = rowsOf(view).length;
  await userEvent.selectOptions(page.getByLabelText("Show", { exact: false }).first(), "noAir");
  await expect.poll(() => rowsOf(view).length).toBeLessThan(all);
  expect(rowsOf(view)[0]!.querySelector("h4")!.textContent).toMatch(/Barrel gets no air/);
  await openAll();
  await userEvent.click(page.getByRole("button", { name: "Show on the drawing" }).first());
  await expect.poll(() => view.shadowRoot!.querySelector("svg.place circle")).not.toBeNull();
  expect(view.shadowRoot!.querySelector("headfall-profile")!.shadowRoot!.textContent).toContain("12 dry");
  await userEvent.click(page.getByRole("button", { name: "Drawn" }));
  expect(view.shadowRoot!.querySelector("headfall-profile")).toBeNull();
});

test("a number tells how it was got, by keyboard, and a guard too", async () => {
  const view = await placed(withHens);
  await ran(view);
  await openAll();
  const lost = view.shadowRoot!.querySelector<HTMLElement>('.figures button[data-how*="lost"]')!;
  lost.focus();
  await userEvent.keyboard("{Enter}");
  await expect
    .element(page.getByRole("dialog"))
    .toHaveTextContent("to the ground = at the start + poured in − (drunk + left)");
  await userEvent.keyboard("{Escape}");
  await userEvent.click(page.getByRole("button", { name: "How it was got" }).first());
  await expect
    .element(page.getByRole("dialog"))
    .toHaveTextContent("run again on the plan with the guard in it");
});

test("a run tells how far it has come and can be cancelled; a large plan is run when asked for", async () => {
  globalThis.Worker = SilentWorker;
  const view = await placed(withHens);
  const bar = page.getByRole("progressbar", { name: "Mishaps run" });
  await expect.poll(() => (bar.element() as HTMLProgressElement).value).toBe(0.4);
  await userEvent.click(page.getByRole("button", { name: "Cancel" }));
  expect(view.shadowRoot!.querySelector("progress")).toBeNull();
  await userEvent.click(page.getByRole("button", { name: "Run the mishaps" }));
  await expect.element(bar).toBeInTheDocument();
  show(view, large);
  await view.updateComplete;
  expect(view.shadowRoot!.querySelector("progress")).toBeNull();
  expect(shown(view)).toContain("320 drinkers: each mishap of them is a run of its own.");
});

const founts: Plan = {
  ...alderBank,
  sources: [],
  runs: [],
  pens: [
    {
      id: "brooder",
      slope: "2 %",
      birds: { kind: "pullet", count: 25, age: "10 days" },
      waterers: [
        { kind: "fount-1gal", id: "fount" },
        { kind: "rubber-pan-8qt", id: "pan" },
      ],
    },
  ],
};

test("loose waterers without a line are told with their birds, hours and guards, and fit into 336 px", async () => {
  const view = await placed(founts, 336);
  await expect.poll(() => rowsOf(view).length).toBeGreaterThan(4);
  expect(shown(view)).toMatch(/The worst ?(Fount|Pan) in brooder .* first bird without water: /);
  const pan = rowsOf(view).find((row) => /Pan in brooder kicked over/.test(row.textContent!))!;
  expect(pan.textContent!.replace(/\s+/g, " ")).toMatch(/run out, nothing of it stays.*Guard:.*A brick of/);
  expect(shown(view)).not.toContain("Show on the drawing");
  for (const details of view.shadowRoot!.querySelectorAll("details")) details.open = true;
  expect(await accessibilityFaults(view)).toEqual([]);
  expect(view.scrollWidth).toBeLessThanOrEqual(336);
  await userEvent.click(page.getByRole("button", { name: /at once|after/ }).first());
  await expect.element(page.getByRole("dialog")).toHaveTextContent("drunk, of all the pen's loose water =");
});

test("drips are reckoned from drops counted, and what is no count is told", async () => {
  const view = await placed(alderBank);
  await userEvent.fill(page.getByLabelText("Drops a minute"), "30");
  await userEvent.fill(page.getByLabelText("Drinkers that drip so"), "4");
  expect(shown(view)).toMatch(/8\.64 L to 43\.2 L a day|8\.6 L to 43 L a day/);
  await userEvent.fill(page.getByLabelText("Drops a minute"), "many");
  expect(shown(view)).toContain("A whole number from 0 to 300, for instance 10.");
});

test("in a plan without birds harm is told by drinkers", async () => {
  const view = await placed(alderBank);
  await ran(view);
  expect(shown(view)).toContain("The plan has no birds");
  expect(rowsOf(view)[0]!.textContent).toContain("Half of the drinkers dry");
});
