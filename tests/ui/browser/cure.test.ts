import type { Plan } from "@headfall/hydraulics";
import { afterEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { accessibilityFaults } from "./accessibility.js";
import { button, card, cards, cureRoom, looked, shown } from "./cure-host.js";
import { alderBank } from "./plan-host.js";

const RealWorker = globalThis.Worker;
afterEach(() => {
  globalThis.Worker = RealWorker;
  document.body.replaceChildren();
});

/** Stands so low that every nipple starves. */
const low: Plan = { ...alderBank, sources: [{ ...alderBank.sources[0]!, stand: "20 cm" }] };
const works: Plan = { ...alderBank, sources: [{ ...alderBank.sources[0]!, stand: "30 cm" }] };

test("headfall-cure has nothing that axe objects to, before and after, in light and in dark, all unfolded, and fits into 336 px", async () => {
  const { view } = await cureRoom(alderBank, {
    width: 336,
    kept: [{ id: "a", name: "As it was", plan: low }],
  });
  expect(await accessibilityFaults(view)).toEqual([]);
  await looked(view);
  await userEvent.click(page.getByRole("button", { name: "Choose from your plans" }));
  await userEvent.click(page.getByLabelText("As it was"));
  await expect.poll(() => view.shadowRoot!.querySelector("table.beside")).not.toBeNull();
  for (const details of view.shadowRoot!.querySelectorAll("details")) details.open = true;
  expect(await accessibilityFaults(view)).toEqual([]);
  view.style.colorScheme = "dark";
  expect(await accessibilityFaults(view)).toEqual([]);
  expect(view.scrollWidth).toBeLessThanOrEqual(336);
  const flat = [...view.shadowRoot!.querySelectorAll("button, select, summary, input, label.button")]
    .filter((each) => !each.matches("[type=checkbox], [type=file]"))
    .filter((each) => each.getBoundingClientRect().height < 44)
    .map((each) => each.outerHTML);
  expect(flat).toEqual([]);
});

test("nothing is looked for until it is asked; then each cure tells what changes, what it costs, before and after", async () => {
  const { view } = await cureRoom(low);
  await new Promise((resolve) => setTimeout(resolve, 300));
  expect(cards(view)).toEqual([]);
  await looked(view);
  const first = card(view, "height of the stand");
  expect(first.textContent).toMatch(/Raise the stand of "barrel" by 10 cm, to 30 cm\./);
  expect(first.textContent!.replace(/\s+/g, " ")).toMatch(/Cost ?10 cm of stand/);
  expect([...first.querySelectorAll(".verdict")].slice(0, 2).map((each) => each.textContent!.trim())).toEqual(
    ["12 starve", "12 good"],
  );
  const rows = first.querySelectorAll(".moments tbody tr");
  expect(rows.length).toBe(12);
  expect(rows[0]!.textContent).toMatch(/mL\/min/);
});

test("a cure is done by keyboard as one step, said aloud, and undone", async () => {
  const { view, store, undo } = await cureRoom(alderBank);
  await looked(view);
  const act = card(view, "height of the stand").querySelector<HTMLElement>("button")!;
  act.focus();
  await userEvent.keyboard("{Enter}");
  expect(store.plan.sources[0]!.stand).toBe("35 cm");
  expect(store.plan.runs).toBe(alderBank.runs);
  await expect.element(page.getByRole("status")).toHaveTextContent("Done: another height of the stand.");
  expect(view.shadowRoot!.activeElement).toBe(act);
  expect(act.textContent).toContain("Done");
  await userEvent.keyboard("{Enter}");
  undo();
  await view.updateComplete;
  expect(store.plan).toBe(alderBank);
  expect(act.textContent).toContain("Do it");
});

test("a cure for what has changed since is refused with its reason, and the plan stays", async () => {
  const { view, store, show } = await cureRoom(alderBank);
  await looked(view);
  store.edit({ kind: "set", path: ["sources", 0, "stand"], value: "50 cm", what: "stand" }, "metric");
  show();
  await view.updateComplete;
  expect(shown(view)).toContain("The plan has changed since this was found.");
  card(view, "height of the stand").querySelector<HTMLElement>("button")!.click();
  await expect.poll(() => shown(view)).toContain("The plan has changed there since this was found.");
  expect(store.plan.sources[0]!.stand).toBe("50 cm");
});

test("a plan that works is told so; more head to spare can be asked for, and a lower stand allowed only", async () => {
  const { view } = await cureRoom(works);
  await looked(view);
  expect(shown(view)).toMatch(/Nothing to cure.*As it is: 12 good\..*Least to spare: \+\d+ mm at hens/);
  expect(cards(view)).toEqual([]);
  for (const details of view.shadowRoot!.querySelectorAll("details")) details.open = true;
  await userEvent.selectOptions(page.getByLabelText("Head to spare at least"), "20 mm");
  await looked(view);
  expect(shown(view)).not.toContain("Nothing to cure");
  await userEvent.selectOptions(page.getByLabelText("Highest stand"), "50 cm");
  await userEvent.selectOptions(page.getByLabelText("As little as can be of"), "stand");
  await looked(view);
  expect(shown(view)).toMatch(/What counts: height of the stand, stand to 50 cm, 20 mm to spare/);
});

test("while it looks it says at what, and can be cancelled, which ends the worker", async () => {
  const ended: string[] = [];
  globalThis.Worker = class extends EventTarget {
    postMessage({ turn }: { turn: number }) {
      const data = { turn, share: 0, words: "stand and pipe: 212 judged" };
      queueMicrotask(() => this.dispatchEvent(new MessageEvent("message", { data })));
    }
    terminate() {
      ended.push("ended");
    }
  } as unknown as typeof Worker;
  const { view } = await cureRoom(low);
  button(view, "What would make it work?")!.click();
  await expect.poll(() => shown(view)).toContain("Looking at stand and pipe: 212 judged");
  expect(view.shadowRoot!.querySelector("progress")!.getAttribute("aria-label")).toBe("Looking for a cure");
  button(view, "Cancel")!.click();
  await view.updateComplete;
  expect(ended).toEqual(["ended"]);
  expect(button(view, "What would make it work?")).toBeDefined();
});

test("pipe on hand and prices are said in the plan, each as an edit that can be undone", async () => {
  const { view, store, undo } = await cureRoom(low);
  for (const details of view.shadowRoot!.querySelectorAll("details")) details.open = true;
  await userEvent.selectOptions(page.getByLabelText("Put a size on the shelf"), "pvc-sch40-3/4");
  await userEvent.fill(page.getByLabelText("Price", { exact: true }), "1.20");
  await userEvent.keyboard("{Enter}");
  await userEvent.fill(page.getByLabelText("On hand"), "6");
  await userEvent.keyboard("{Enter}");
  await expect.poll(() => store.plan.shelf).toEqual([{ pipe: "pvc-sch40-3/4", price: 1.2, onHand: "6 m" }]);
  await userEvent.fill(page.getByLabelText("10 cm of stand more"), "4");
  await userEvent.keyboard("{Enter}");
  await expect.poll(() => store.plan.prices).toEqual({ stand: 4 });
  button(view, "Take it off")!.click();
  expect(store.plan.shelf).toBeUndefined();
  undo();
  await expect.poll(() => store.plan.shelf?.length).toBe(1);
});

test("another plan from a file is set beside this one: verdicts, the better figure, and what it says differently", async () => {
  const { view } = await cureRoom(works);
  const input = view.shadowRoot!.querySelector<HTMLInputElement>("input[type=file]")!;
  const files = new DataTransfer();
  files.items.add(new File([JSON.stringify({ ...low, name: "Low barrel" })], "low.json"));
  files.items.add(new File(["{"], "broken.json"));
  input.files = files.files;
  input.dispatchEvent(new Event("change"));
  await expect.poll(() => view.shadowRoot!.querySelector("table.beside")).not.toBeNull();
  const row = (words: string) =>
    [...view.shadowRoot!.querySelectorAll("table.beside tr")]
      .find((each) => each.querySelector("th")?.textContent === words)!
      .textContent!.replace(/\s+/g, " ");
  expect(row("drinkers")).toMatch(/12 good.*12 starve/);
  expect(row("highest stand")).toMatch(/30 cm.*20 cm best/);
  expect(shown(view)).toMatch(/source barrel, stand: .*20 cm/);
});

test("trade-offs are looked for when asked; points are chosen by key, by thumb and in the table, and done", async () => {
  const { view, store } = await cureRoom(low);
  const root = view.shadowRoot!;
  await userEvent.click(page.getByRole("button", { name: "Show the trade-offs" }));
  await expect.poll(() => root.querySelector(".trade svg")).not.toBeNull();
  const trade = root.querySelector<HTMLElement>("[aria-labelledby=trade-margin]")!;
  const slider = trade.querySelector<HTMLInputElement>("input[type=range]")!;
  const rows = [...trade.querySelectorAll<HTMLElement>("tbody tr")];
  expect(rows.length).toBe(Number(slider.max) + 1);
  expect(rows.length).toBeGreaterThan(1);
  const current = () => rows.findIndex((row) => row.getAttribute("aria-current") === "true");
  slider.focus();
  await userEvent.keyboard("{ArrowRight}");
  expect(current()).toBe(1);
  expect(slider.getAttribute("aria-valuetext")).toMatch(/to spare: .*of stand/);
  const last = [...trade.querySelectorAll("circle")].at(-1)!.getBoundingClientRect();
  trade
    .querySelector("svg")!
    .dispatchEvent(new MouseEvent("click", { clientX: last.right + 12, clientY: last.top - 8 }));
  await view.updateComplete;
  expect(current()).toBe(rows.length - 1);
  rows[0]!.querySelector("button")!.click();
  await view.updateComplete;
  expect(current()).toBe(0);
  expect(await accessibilityFaults(view)).toEqual([]);
  trade.querySelector<HTMLElement>(".chosen button")!.click();
  expect(store.plan.sources[0]!.stand).toBe("30 cm");
  await expect.element(page.getByRole("status")).toHaveTextContent("Done: more head to spare.");
});

/** Twelve drinkers, the last two too high, and hens enough to tell who drinks. */
const rising: Plan = {
  headfall: 1,
  sources: [
    { id: "barrel", vessel: "drum-55gal-plastic", stand: "40 cm", level: { full: "60 cm", lowest: "10 cm" } },
  ],
  points: [
    { id: "low", ground: "0 cm", above: "10 cm" },
    { id: "end", ground: "0 cm", above: "38 cm" },
  ],
  runs: [
    { id: "down", to: "low", length: "1 m" },
    {
      id: "lane",
      to: "end",
      length: "6 m",
      drinkers: { kind: "nipple-side-action", count: 12, first: "50 cm", every: "50 cm" },
    },
  ],
  pens: [{ id: "hens", birds: { kind: "hen", count: 20 } }],
} as unknown as Plan;

test("drinkers can be left off, what the birds then share is told, and they come back", async () => {
  const { view, store, undo } = await cureRoom(rising);
  await looked(view);
  const fewer = card(view, "Fewer drinkers");
  expect(fewer.textContent!.replace(/\s+/g, " ")).toContain(
    'the last 2 drinkers of "lane" (10 of 12 stay): "hens" then has 10 for 20 birds, 2 to each in place of 1.7; 4 are enough.',
  );
  [...fewer.querySelectorAll("button")].find((each) => each.textContent!.trim().startsWith("Do it"))!.click();
  await expect.poll(() => store.plan.runs[1]!.drinkers).toMatchObject({ count: 10 });
  undo();
  expect(store.plan).toEqual(rising);
});

test("what may not be done is not tried", async () => {
  const { view } = await cureRoom(low);
  for (const details of view.shadowRoot!.querySelectorAll("details")) details.open = true;
  await userEvent.click(page.getByLabelText("Move a stand up or down"));
  await userEvent.click(page.getByLabelText("A regulator or a header tank"));
  await looked(view);
  expect(cards(view).length).toBeGreaterThan(0);
  for (const card of cards(view))
    expect(card.querySelector(".changes")!.textContent).not.toMatch(/stand|header/);
});
