import { checkPlan, type Plan } from "@headfall/hydraulics";
import { afterEach, beforeEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { HeadfallProfile } from "../../../packages/ui/src/profile/profile-element.js";
import { HeadfallTrouble } from "../../../packages/ui/src/trouble/trouble-element.js";
import { HeadfallHow } from "../../../packages/ui/src/verdicts/how-element.js";
import { accessibilityFaults } from "./accessibility.js";
import { alderBank } from "./plan-host.js";
import { SilentWorker } from "./silent-worker.js";

for (const [name, element] of Object.entries({
  "headfall-trouble": HeadfallTrouble,
  "headfall-how": HeadfallHow,
  "headfall-profile": HeadfallProfile,
})) {
  if (customElements.get(name) === undefined) customElements.define(name, element);
}

const RealWorker = globalThis.Worker;
// Answered on the page's own thread, where nothing has to be fetched twice; the worker is tried with the built page.
beforeEach(() => {
  globalThis.Worker = undefined as unknown as typeof Worker;
});
afterEach(() => {
  document.body.replaceChildren();
  globalThis.Worker = RealWorker;
});

async function placed(plan: Plan = alderBank, width = 420): Promise<HeadfallTrouble> {
  const view = document.createElement("headfall-trouble") as HeadfallTrouble;
  show(view, plan);
  const box = document.createElement("div");
  box.style.width = `${width}px`;
  box.append(view);
  document.body.append(box);
  await view.updateComplete;
  return view;
}

function show(view: HeadfallTrouble, plan: Plan): void {
  view.plan = plan;
  const checking = checkPlan(plan, { samples: 0 });
  if (checking.ok) view.checked = checking.checked;
}

const shown = (view: HTMLElement) => view.shadowRoot!.textContent!.replace(/\s+/g, " ");
const causesOf = (view: HTMLElement) =>
  [...view.shadowRoot!.querySelectorAll(".causes h4")].map(({ textContent }) => textContent!.trim());
const ranked = (view: HTMLElement) => expect.poll(() => causesOf(view).length).toBeGreaterThan(0);
const answerAt = (place: string, words: string) =>
  page.getByRole("group", { name: place, exact: true }).getByRole("button", { name: words });
/** Unfolds all; drinkers are drawn once their run is. */
const openAll = async (view: HTMLElement) => {
  for (const details of view.shadowRoot!.querySelectorAll("details")) details.open = true;
  await expect.poll(() => view.shadowRoot!.querySelector(".list")).not.toBeNull();
};

test("headfall-trouble has nothing that axe objects to, in light and in dark, and fits into 336 px", async () => {
  const view = await placed(alderBank, 336);
  await userEvent.click(answerAt("Water in it, barrel", "empty"));
  await ranked(view);
  await openAll(view);
  expect(await accessibilityFaults(view)).toEqual([]);
  view.style.colorScheme = "dark";
  expect(await accessibilityFaults(view)).toEqual([]);
  expect(view.scrollWidth).toBeLessThanOrEqual(336);
});

test("all drinkers of a run are told dry at once, and what shuts the run off is likeliest; pressed again, nothing is told", async () => {
  const view = await placed();
  await openAll(view);
  await userEvent.click(answerAt("All 12 of hens", "dry"));
  await ranked(view);
  expect(shown(view)).toContain("hens 1 to 12 dry");
  expect(view.shadowRoot!.querySelectorAll('.list [aria-pressed="true"]')).toHaveLength(12);
  const shares = [...view.shadowRoot!.querySelectorAll(".causes .part")].map((bar) =>
    Number(bar.getAttribute("width")),
  );
  expect(shares).toEqual([...shares].sort((a, b) => b - a));
  await userEvent.click(answerAt("All 12 of hens", "dry"));
  await expect.poll(() => causesOf(view)).toEqual([]);
  expect(shown(view)).toContain("Nothing is told yet");
});

test("all drinkers of a pen are told at once, whatever runs they hang on", async () => {
  const flock = { id: "all of them", birds: { kind: "hen", count: 20 } };
  const view = await placed({ ...alderBank, pens: [flock] } as Plan);
  await userEvent.click(answerAt("All 12 of pen all of them", "weak"));
  await ranked(view);
  expect(shown(view)).toContain("Told so far hens 1 to 12 weak.");
});

test("drinkers are told by a press near them on the drawing, wear the mark of it, and a second press takes it back", async () => {
  const view = await placed();
  const folded = [...view.shadowRoot!.querySelectorAll("details")].find(({ textContent }) =>
    textContent!.includes("On the drawing"),
  )!;
  folded.open = true;
  await expect.element(page.getByRole("group", { name: "What a press on the drawing tells" })).toBeVisible();
  await userEvent.click(answerAt("What a press on the drawing tells", "dry"));
  const profile = () => view.shadowRoot!.querySelector<HeadfallProfile>("headfall-profile")!;
  await expect.poll(() => profile()?.layout?.drinkers.length ?? 0).toBeGreaterThan(0);
  const press = async (id: string) => {
    const { layout, checked } = profile();
    const { x } = layout!.drinkers.find(({ index }) => checked!.line.drinkers.id[index] === id)!;
    const svg = profile().shadowRoot!.querySelector("svg")!;
    await userEvent.click(svg, { position: { x, y: 40 } });
  };
  await press("hens 12");
  await ranked(view);
  expect(shown(view)).toContain("Told so far hens 12 dry.");
  await expect.poll(() => view.shadowRoot!.querySelectorAll(".rings circle").length).toBe(1);
  expect(profile().checked!.drinkers[11]!.verdict).toBe("dry");
  await press("hens 12");
  await expect.poll(() => causesOf(view)).toEqual([]);
  expect(view.shadowRoot!.querySelectorAll(".rings circle")).toHaveLength(0);
});

test("two things at once stand before the causes, where no one thing explains what is seen", async () => {
  const view = await placed();
  await openAll(view);
  const list = (id: string, words: string) => userEvent.click(answerAt(id, words));
  for (const [id, words] of [
    ["hens 2", "dry"],
    ["hens 9", "dry"],
    ["hens 1", "fine"],
    ["hens 4", "fine"],
    ["hens 6", "fine"],
    ["hens 8", "fine"],
    ["hens 10", "fine"],
    ["hens 12", "fine"],
  ] as const)
    await list(id, words);
  await ranked(view);
  await expect
    .poll(() => view.shadowRoot!.querySelector(".two h4")?.textContent ?? "")
    .toMatch(/^Two things at once, \d+ %$/);
  expect(shown(view)).toMatch(
    /Two at once: hens (2|9) is blocked[^;]*; and at the same time: hens (2|9) is blocked/,
  );
});

test("the answer to the one look is recorded and ranks the causes anew", async () => {
  const view = await placed();
  await userEvent.click(answerAt("Level overnight, barrel", "falls"));
  await ranked(view);
  const before = causesOf(view);
  const question = view.shadowRoot!.querySelector(".look strong")!.textContent!;
  await userEvent.click(
    page.getByRole("list", { name: "What you see there" }).first().getByRole("button").first(),
  );
  await expect
    .poll(() => view.shadowRoot!.querySelector(".look strong")?.textContent ?? "")
    .not.toBe(question);
  expect(shown(view)).toMatch(/Told so far barrel falls overnight; /);
  expect(causesOf(view)).not.toEqual([]);
  expect(before[0]).toMatch(/^1\. /);
});

test("a list of drinkers is one stop of the tab key, and arrow keys go through it", async () => {
  const view = await placed();
  await openAll(view);
  const list = view.shadowRoot!.querySelector(".list")!;
  expect(list.querySelectorAll('[tabindex="0"]')).toHaveLength(1);
  list.querySelector<HTMLElement>('[tabindex="0"]')!.focus();
  await userEvent.keyboard("{ArrowDown}{ArrowDown}{ArrowRight}{ArrowRight}{Enter}");
  await ranked(view);
  expect(shown(view)).toContain("hens 3 dry");
  expect(list.querySelectorAll('[tabindex="0"]')).toHaveLength(1);
});

test("a jug and a watch are read in any unit, what is no measure is told, and it can be taken back", async () => {
  const view = await placed();
  await openAll(view);
  await userEvent.fill(page.getByLabelText("Caught"), "much");
  await userEvent.click(page.getByRole("button", { name: "Tell it" }));
  await expect.element(page.getByRole("alert")).toBeInTheDocument();
  await userEvent.fill(page.getByLabelText("Caught"), "20 mL");
  await userEvent.click(page.getByRole("button", { name: "Tell it" }));
  await expect.poll(() => shown(view)).toContain("hens 1 20 mL/min");
  await userEvent.click(page.getByRole("button", { name: "Take back: hens 1 20 mL/min" }));
  await expect.poll(() => shown(view)).not.toContain("Told so far");
});

test("a share tells how it was got", async () => {
  const view = await placed();
  await userEvent.click(answerAt("Ground around it, barrel", "wet"));
  await ranked(view);
  await userEvent.click(page.getByRole("button", { name: /%$/ }).first());
  await expect
    .element(page.getByRole("dialog"))
    .toHaveTextContent("how often it happens × how likely it shows");
});

test("where the water stands is taken into account, and what no vessel holds is told", async () => {
  const view = await placed();
  await userEvent.click(answerAt("Water in it, barrel", "low"));
  await ranked(view);
  expect(shown(view)).toMatch(/The water is taken to stand at: barrel \d/);
  const stands = page.getByLabelText("Water stands above the bottom of barrel, if you know");
  await userEvent.fill(stands, "12 cm");
  await userEvent.keyboard("{Tab}");
  await expect.poll(() => shown(view)).toContain("The water is taken to stand at: barrel 12 cm");
  await userEvent.fill(stands, "9 m");
  await userEvent.keyboard("{Tab}");
  await expect.element(page.getByRole("alert")).toHaveTextContent("From 0 to the full level,");
});

test("ranking that takes long says so and can be cancelled, and is taken up again", async () => {
  globalThis.Worker = SilentWorker;
  const view = await placed();
  await userEvent.click(answerAt("Water in it, barrel", "low"));
  await expect.element(page.getByRole("progressbar", { name: "Causes solved" })).toBeInTheDocument();
  await userEvent.click(page.getByRole("button", { name: "Cancel" }));
  expect(shown(view)).toContain("The causes were not ranked.");
  await userEvent.click(page.getByRole("button", { name: "Rank the causes" }));
  await expect.element(page.getByRole("progressbar", { name: "Causes solved" })).toBeInTheDocument();
});

test("signs of what leaves the plan go with it, the others stay, and Clear takes all", async () => {
  const view = await placed();
  await openAll(view);
  await userEvent.click(answerAt("Ground along ducks", "wet"));
  await userEvent.click(answerAt("Water in it, barrel", "low"));
  await ranked(view);
  show(view, { ...alderBank, runs: alderBank.runs.filter(({ id }) => id !== "ducks") });
  await expect.poll(() => shown(view)).not.toContain("wet ground");
  expect(shown(view)).toContain("barrel lower than thought");
  await userEvent.click(page.getByRole("button", { name: "Clear all" }));
  await expect.poll(() => causesOf(view)).toEqual([]);
});
