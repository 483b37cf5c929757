import type { Plan } from "@headfall/hydraulics";
import { afterEach, expect, test } from "vitest";
import { HeadfallQuantity } from "../../../packages/ui/src/fields/quantity-field.js";
import { HeadfallHow } from "../../../packages/ui/src/verdicts/how-element.js";
import { HeadfallYear } from "../../../packages/ui/src/year/year-element.js";
import { accessibilityFaults } from "./accessibility.js";
import { RoomHost, registerOnce, shown, unfold } from "./room-host.js";

registerOnce({
  "headfall-year": HeadfallYear,
  "headfall-how": HeadfallHow,
  "headfall-quantity": HeadfallQuantity,
});

afterEach(() => document.body.replaceChildren());

const TODAY = "2026-05-01";
const brooders: Plan = {
  headfall: 1,
  sources: [],
  runs: [],
  pens: [
    {
      id: "brooder",
      birds: {
        kind: "pullet",
        count: 30,
        age: "1 day",
        arrives: "2026-05-06",
        moves: [{ on: "2026-06-17", to: "grass" }],
      },
    },
    { id: "grass", birds: { kind: "hen", count: 8, leaves: "2026-06-30" } },
  ],
  kit: [
    { kind: "jar-fount-1qt", count: 1 },
    { kind: "rubber-pan-8qt", count: 2 },
  ],
};

/** The room on the page, its year reckoned. */
async function yearRoom(plan: Plan, width = 420) {
  const view = document.createElement("headfall-year") as HeadfallYear;
  const host = await new RoomHost(view, plan, "metric", TODAY).place(width);
  await settled(view);
  return host;
}

const settled = (view: HTMLElement) =>
  expect
    .poll(
      () =>
        view.shadowRoot?.querySelector("#year-picture") !== null &&
        view.shadowRoot?.querySelector(".work, .older") === null,
      { timeout: 20_000 },
    )
    .toBe(true);

const button = (view: HTMLElement, words: string) =>
  [...view.shadowRoot!.querySelectorAll("button")].find(
    (one) => one.textContent?.trim() === words || one.getAttribute("aria-label") === words,
  )!;

test("headfall-year has nothing that axe objects to, in light and in dark, fits into 336 px, and breaks no date", async () => {
  const { view } = await yearRoom(brooders, 336);
  unfold(view);
  expect(await accessibilityFaults(view)).toEqual([]);
  view.style.colorScheme = "dark";
  expect(await accessibilityFaults(view)).toEqual([]);
  expect(view.scrollWidth).toBeLessThanOrEqual(336);
  const dates = datesIn(view.shadowRoot!);
  expect(dates.length).toBeGreaterThan(10);
  expect(dates.filter((date) => date.getClientRects().length > 1).map(String)).toEqual([]);
});

/** Every date in words that are shown, as the place where it stands. */
function datesIn(root: ShadowRoot): Range[] {
  const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
  const found: Range[] = [];
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode())
    for (const { index } of node.textContent!.matchAll(/\d{4}-\d{2}-\d{2}/g)) {
      const date = document.createRange();
      date.setStart(node, index);
      date.setEnd(node, index + 10);
      found.push(date);
    }
  return found;
}

test("it draws each pen, marks who comes and goes, and says what is short, why, and what to buy", async () => {
  const { view } = await yearRoom(brooders);
  const chart = view.shadowRoot!.querySelector("svg.chart")!;
  expect(chart.querySelectorAll(".name").length).toBe(2);
  expect(chart.querySelectorAll(".mark").length).toBe(4);
  expect(chart.querySelectorAll(".short").length).toBeGreaterThan(0);
  expect(shown(view)).toMatch(/2026-05-06 brooder: 30 .+ arrive, 1 day old/);
  expect(shown(view)).toMatch(/brooder, 2026-05-06 to 2026-\d\d-\d\d: \d+ birds are without a place/);
  expect(shown(view)).toMatch(/Buy .+ and no pen goes short for want of kit/);
});

test("buying what it says leaves nothing short; a number tells how it was got; taking a kind out is undone at a step", async () => {
  const { view, store } = await yearRoom(brooders);
  const met = view.shadowRoot!.querySelector<HTMLButtonElement>("[data-how*=yearDraw]")!;
  met.click();
  const panel = view.shadowRoot!.querySelector("headfall-how")!;
  await expect.poll(() => panel.shadowRoot!.textContent).toMatch(/one drinks/);
  store.edit(
    { kind: "set", path: ["kit"], value: [...brooders.kit!, { kind: "fount-1gal", count: 4 }], what: "kit" },
    "metric",
  );
  view.plan = store.plan;
  await settled(view);
  expect(shown(view)).toContain("Enough for every pen in every week.");
  button(view, "Take out Vacuum fount, 1 US gal").click();
  expect(store.plan.kit).toEqual(brooders.kit);
  store.undo();
  expect(store.plan.kit?.length).toBe(3);
});

test("it says week by week how many drinkers a pen without any needs, and why", async () => {
  const { kit: _, ...untold } = brooders;
  const { view } = await yearRoom(untold);
  unfold(view);
  const table = view.shadowRoot!.querySelector("[aria-label='Drinkers needed by week and pen']")!;
  expect(table.textContent).toMatch(/\d+ nipples,\s+none there/);
  expect(shown(view)).toContain("30 × Growing pullet or cockerel, layer or dual-purpose breed");
  table.querySelector<HTMLButtonElement>("[data-how*=yearNeeded]")!.click();
  const panel = view.shadowRoot!.querySelector("headfall-how")!;
  await expect.poll(() => panel.shadowRoot!.textContent).toMatch(/Nipples needed, “\w+”, 2026-\d\d-\d\d to/);
});
