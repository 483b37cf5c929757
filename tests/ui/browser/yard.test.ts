import type { Plan } from "@headfall/hydraulics";
import { afterEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { HeadfallHow } from "../../../packages/ui/src/verdicts/how-element.js";
import { HeadfallYard } from "../../../packages/ui/src/yard/yard-element.js";
import { accessibilityFaults } from "./accessibility.js";
import { RoomHost, registerOnce, shown, unfold } from "./room-host.js";

registerOnce({
  "headfall-yard": HeadfallYard,
  "headfall-how": HeadfallHow,
});

afterEach(() => document.body.replaceChildren());

const hill: Plan = {
  headfall: 1,
  sources: [],
  runs: [],
  pens: [
    {
      id: "hill pen",
      birds: { kind: "hen", count: 12, age: "40 weeks" },
      drinkers: [],
      waterers: [
        { id: "hill fount", kind: "fount-1gal", hole: "uphill" },
        { id: "hill trough", kind: "trough-90cm" },
        { id: "hill bucket", kind: "nipple-bucket-5gal" },
      ],
      slope: "9 %",
    },
  ],
};

/** The room on the page, its yard reckoned. */
async function yardRoom(plan: Plan, width = 420) {
  const view = document.createElement("headfall-yard") as HeadfallYard;
  const host = await new RoomHost(view, plan).place(width);
  await expect.poll(() => view.shadowRoot?.querySelector(".answer") !== null).toBe(true);
  return host;
}

test("headfall-yard has nothing that axe objects to, in light and in dark, and fits into 336 px", async () => {
  const { view } = await yardRoom(hill, 336);
  unfold(view);
  expect(await accessibilityFaults(view)).toEqual([]);
  view.style.colorScheme = "dark";
  expect(await accessibilityFaults(view)).toEqual([]);
  expect(view.scrollWidth).toBeLessThanOrEqual(336);
});

test("the fount that drains comes first, drawn with drops; turning its hole mends it, and can be taken back", async () => {
  const { view, store, show } = await yardRoom(hill);
  unfold(view);
  expect(shown(view)).toMatch(/First: hill fount: on 9 %.+ it runs out; it drains from 6\.3 %/);
  const fount = () => view.shadowRoot!.querySelector('.row[aria-label="hill fount"]')!;
  expect(fount().querySelectorAll(".drop")).toHaveLength(3);
  expect(fount().querySelector(".picture")!.getAttribute("aria-label")).toContain("drains from 6.3 %");
  await userEvent.selectOptions(page.getByLabelText("Its air hole looks"), "downhill");
  await expect.poll(() => fount().querySelectorAll(".drop").length).toBe(0);
  expect(store.plan.pens![0]!.waterers![0]!.hole).toBe("downhill");
  await expect.poll(() => shown(view)).not.toContain("First:");
  store.undo();
  show();
  await expect.poll(() => fount().querySelectorAll(".drop").length).toBe(3);
});

test("each waterer is a line that says how it stands; opened one at a time, all at once, or by keys", async () => {
  const { view } = await yardRoom(hill);
  const lines = [...view.shadowRoot!.querySelectorAll<HTMLDetailsElement>("details.waterer")];
  await expect
    .poll(() => lines.map((line) => line.querySelector(".brief")!.textContent!.replace(/\s+/g, " ").trim()))
    .toEqual([
      "hill fount runs out on its slope, and 1 more; gives nothing",
      expect.stringMatching(/^hill trough holds less on its slope.*; fill every [\d.]+ days$/),
      expect.stringMatching(/^hill bucket good; fill every [\d.]+ days$/),
    ]);
  expect(lines.map(({ open }) => open)).toEqual([false, false, false]);
  await expect.element(page.getByText("Change it", { exact: true }).first()).not.toBeVisible();
  lines[1]!.querySelector("summary")!.focus();
  await userEvent.keyboard("{Enter}");
  expect(lines.map(({ open }) => open)).toEqual([false, true, false]);
  await userEvent.click(page.getByText("Open all"));
  expect(lines.map(({ open }) => open)).toEqual([true, true, true]);
  await userEvent.click(page.getByText("Shut all"));
  expect(lines.map(({ open }) => open)).toEqual([false, false, false]);
});

test("numbers tell how they were got", async () => {
  const { view } = await yardRoom(hill);
  unfold(view);
  const drains = view.shadowRoot!.querySelector<HTMLElement>('.number[data-how*="drainsAt"]')!;
  await userEvent.click(drains);
  await expect.element(page.getByText(/first runs over the lowest lip/).first()).toBeInTheDocument();
});

test("a waterer is added, made another kind, counted and taken out, each as one step", async () => {
  const { view, store } = await yardRoom(hill);
  await userEvent.click(page.getByRole("button", { name: "Add a waterer to hill pen" }));
  expect(store.plan.pens![0]!.waterers).toHaveLength(4);
  await expect.poll(() => view.shadowRoot!.querySelectorAll(".row .picture").length).toBe(4);
  // The new one stands open, for nothing is typed of it yet; the others stay as they were.
  const open = () =>
    [...view.shadowRoot!.querySelectorAll<HTMLDetailsElement>("details.waterer")].map((line) => line.open);
  expect(open()).toEqual([false, false, false, true]);
  await userEvent.selectOptions(page.getByLabelText("Kind").last(), "pan-40cm");
  const count = page.getByLabelText("How many alike").last();
  await userEvent.fill(count, "3");
  await userEvent.keyboard("{Enter}");
  expect(store.plan.pens![0]!.waterers![3]).toEqual({ kind: "pan-40cm", count: 3 });
  await userEvent.click(page.getByLabelText("Take out hill pen waterer 4"));
  expect(store.plan.pens![0]!.waterers).toHaveLength(3);
  expect(view.shadowRoot!.activeElement?.ariaLabel).toBe("Add a waterer to hill pen");
});

test("the slope of the ground is typed once for the pen, in per cent where no unit is given", async () => {
  const { view, store } = await yardRoom(hill);
  unfold(view);
  const slope = page.getByLabelText("Slope of the ground");
  await userEvent.fill(slope, "2");
  await userEvent.keyboard("{Enter}");
  await expect.poll(() => store.plan.pens![0]!.slope).toBe("2 %");
  await expect.poll(() => shown(view)).toContain("It stands on 2 %");
  expect(shown(view)).not.toContain("First:");
});
