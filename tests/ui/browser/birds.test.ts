import type { Plan } from "@headfall/hydraulics";
import { afterEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { accessibilityFaults } from "./accessibility.js";
import { birdsRoom } from "./birds-host.js";
import { alderBank } from "./plan-host.js";

afterEach(() => document.body.replaceChildren());

/** Two groups of drinkers, and hens and meat birds in one pen. */
const flock: Plan = {
  ...alderBank,
  runs: [
    alderBank.runs[0]!,
    alderBank.runs[1]!,
    { ...alderBank.runs[2]!, drinkers: { id: "cups", kind: "cup-float", count: 4 } },
  ],
  weather: { high: "24 °C", low: "12 °C", hotSpell: { high: "34 °C" } },
  pens: [
    {
      id: "yard",
      birds: [
        { kind: "hen", count: 30 },
        { kind: "meat-chicken", count: 20, hatched: "2026-06-20" },
      ],
      drinkers: ["hens"],
    },
  ],
};

const unfold = (view: HTMLElement) => {
  for (const details of view.shadowRoot!.querySelectorAll("details")) details.open = true;
};

for (const [words, plan] of [
  ["no pens", alderBank],
  ["pens", flock],
] as const) {
  test(`headfall-birds has nothing that axe objects to with ${words}, in light and in dark`, async () => {
    const { view } = await birdsRoom(plan);
    unfold(view);
    expect(await accessibilityFaults(view)).toEqual([]);
    view.style.colorScheme = "dark";
    expect(await accessibilityFaults(view)).toEqual([]);
  });
}

test("headfall-birds fits into 336 px and gives a thumb 44 px to press", async () => {
  const { view } = await birdsRoom(flock, 336);
  unfold(view);
  await view.updateComplete;
  expect(view.scrollWidth).toBeLessThanOrEqual(336);
  const pressed = view.shadowRoot!.querySelectorAll<HTMLElement>(
    "button:not(td button), select, summary, .field > input",
  );
  expect(pressed.length).toBeGreaterThan(20);
  for (const control of pressed) expect(control.offsetHeight, control.outerHTML).toBeGreaterThanOrEqual(44);
});

test("every control has a name, and every field of two batches one of its own", async () => {
  const { view } = await birdsRoom(flock);
  unfold(view);
  const controls = [...view.shadowRoot!.querySelectorAll<HTMLInputElement>("input, select")];
  const names = controls.map(
    (control) => control.labels?.[0]?.textContent ?? control.getAttribute("aria-label"),
  );
  expect(names.filter((name) => name === null || name.trim() === "")).toEqual([]);
  const ids = controls.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});

test("a pen is added by keyboard to a plan without birds, reaches its drinkers, and is gone after one undo", async () => {
  const host = await birdsRoom(alderBank);
  const button = page.getByRole("button", { name: "Add a pen of birds" });
  (button.element() as HTMLElement).focus();
  await userEvent.keyboard("{Enter}");
  await expect.poll(() => host.plan.pens).toEqual([{ id: "pen 1", birds: { kind: "hen", count: 6 } }]);
  // Its fields stand before the button.
  const focused = () => host.view.shadowRoot!.activeElement;
  await expect.poll(focused).toBe(page.getByRole("combobox", { name: "Birds" }).element());
  await expect.element(page.getByRole("checkbox", { name: "hens" })).toBeChecked();
  await expect.element(page.getByText("to size on").first()).toBeVisible();
  host.undo();
  expect(host.plan.pens).toBeUndefined();
});

test("what is typed of a batch is kept as it was typed", async () => {
  const host = await birdsRoom({ ...alderBank, pens: [{ id: "yard", birds: { kind: "hen", count: 6 } }] });
  await page.getByRole("combobox", { name: "Birds" }).selectOptions("coturnix");
  await page.getByRole("textbox", { name: "How many" }).fill("45");
  await userEvent.keyboard("{Enter}");
  await page.getByRole("combobox", { name: "How old" }).selectOptions("age");
  await page.getByRole("textbox", { name: "Age" }).fill("3 weeks");
  await userEvent.keyboard("{Enter}");
  await expect
    .poll(() => host.plan.pens?.[0]?.birds)
    .toEqual({ kind: "coturnix", count: 45, age: "3 weeks" });
});

test("a day of hatching takes the place of an age, and tells how old they are on the day", async () => {
  const host = await birdsRoom({
    ...alderBank,
    pens: [{ id: "yard", birds: { kind: "meat-chicken", count: 6, age: "2 weeks" } }],
  });
  await page.getByRole("combobox", { name: "How old" }).selectOptions("hatched");
  await expect
    .poll(() => host.plan.pens?.[0]?.birds)
    .toEqual({ kind: "meat-chicken", count: 6, hatched: "2026-06-20" });
  await page.getByLabelText("Hatched on").fill("2026-06-27");
  await expect.element(page.getByText("7 days old on 2026-07-04.")).toBeVisible();
});

test("a group of drinkers goes from one pen to the other, and the last one of a pen is refused with a reason", async () => {
  const host = await birdsRoom({
    ...flock,
    pens: [
      { ...flock.pens![0]!, drinkers: ["hens", "cups"] },
      { id: "shed", birds: { kind: "duck", count: 4 } },
    ],
  });
  unfold(host.view);
  const cups = page.getByRole("checkbox", { name: "cups (now of yard)" });
  await userEvent.click(cups);
  await expect.poll(() => host.plan.pens?.[0]?.drinkers).toEqual(["hens"]);
  await userEvent.click(page.getByRole("checkbox", { name: "hens (now of yard)" }));
  await expect.element(page.getByRole("alert")).toHaveTextContent("yard would have no drinkers left");
  expect(host.plan.pens?.[0]?.drinkers).toEqual(["hens"]);
});

test("a number of the week table tells where it comes from and how sure it is", async () => {
  const { view } = await birdsRoom(flock);
  unfold(view);
  const first = view.shadowRoot!.querySelector<HTMLElement>(".drunk [data-how]")!;
  first.focus();
  await userEvent.keyboard("{ArrowDown}{Enter}");
  const dialog = page.getByRole("dialog");
  await expect.element(dialog).toHaveTextContent("A day's water of all birds, to size on, in 1 week");
  await userEvent.click(dialog.getByRole("button", { name: /Laying hen/ }));
  await expect.element(dialog).toHaveTextContent("How sure:");
  await expect.element(dialog).toHaveTextContent("Source:");
});

test("batches have lines, shapes and names of their own in the chart, and their figures in the table", async () => {
  const { view } = await birdsRoom(flock);
  const root = view.shadowRoot!;
  const labels = [...root.querySelectorAll(".series text")].map((text) => text.textContent);
  expect(labels).toEqual(["hot day", "to size on", "to expect", "birds 1", "birds 2"]);
  const shapes = [...root.querySelectorAll(".series")].map((series) =>
    series.querySelector(".dot")!.getAttribute("d"),
  );
  expect(new Set(shapes).size).toBe(5);
  expect(root.querySelectorAll(".drunk tbody tr").length).toBe(9);
  expect(root.querySelectorAll(".drunk tbody tr:first-child td").length).toBe(5);
});

test("the hot spell is asked for only where there is one, and takes one undo", async () => {
  const host = await birdsRoom({ ...alderBank, pens: [{ id: "yard", birds: { kind: "hen", count: 6 } }] });
  unfold(host.view);
  await userEvent.click(page.getByRole("checkbox", { name: "Be ready for a hot spell" }));
  await expect.poll(() => host.plan.weather).toEqual({ high: "21 °C", hotSpell: { high: "35 °C" } });
  await expect.element(page.getByText("A hot day", { exact: true })).toBeVisible();
  host.undo();
  expect(host.plan.weather).toBeUndefined();
});

test("the keyboard goes on from the head of the room when the pen it was in is deleted", async () => {
  const host = await birdsRoom(flock);
  const button = page.getByRole("button", { name: "Delete yard" });
  (button.element() as HTMLElement).focus();
  await userEvent.keyboard("{Enter}");
  await expect.poll(() => host.plan.pens).toBeUndefined();
  await expect.poll(() => host.view.shadowRoot!.activeElement?.textContent).toBe("What the birds drink");
});

test("figures are in gallons and degrees Fahrenheit where the user wants US units", async () => {
  const { view } = await birdsRoom(flock);
  view.system = "us";
  unfold(view);
  await view.updateComplete;
  await expect.poll(() => view.shadowRoot!.querySelector(".answer")!.textContent).toMatch(/gal|fl oz/);
  expect(view.shadowRoot!.querySelector(".chart")!.textContent).toContain("gal a day");
  await expect.element(page.getByRole("textbox", { name: "Warmest of the day" })).toHaveValue("75.2 °F");
});

test("where the birds are yet to come it says when, and with one press all is reckoned for that day", async () => {
  const host = await birdsRoom({
    ...alderBank,
    pens: [{ id: "yard", birds: { kind: "pullet", count: 25, hatched: "2026-07-09" } }],
  });
  await expect
    .element(page.getByText("On 2026-07-04 no bird is there yet; the first come on 2026-07-09."))
    .toBeVisible();
  await userEvent.click(page.getByRole("button", { name: "Reckon for 2026-07-09" }));
  expect(host.plan.day).toBe("2026-07-09");
  await expect.element(page.getByLabelText("The day it is for")).toHaveValue("2026-07-09");
  await expect.poll(() => host.view.shadowRoot!.querySelector(".answer")!.textContent).toMatch(/\d+ mL/);
  expect(host.view.shadowRoot!.querySelector(".yet")).toBeNull();
  host.undo();
  expect(host.plan.day).toBeUndefined();
});

test("laying hens that are no hens yet are told to be chosen as what they are", async () => {
  const young = { kind: "hen", count: 6, hatched: "2026-06-01" };
  const host = await birdsRoom({ ...alderBank, pens: [{ id: "yard", birds: young }] });
  const note = page.getByText("for these choose Growing pullet or cockerel", { exact: false });
  await expect.element(note).toBeVisible();
  await page.getByRole("combobox", { name: "Birds" }).selectOptions("pullet");
  await expect.poll(() => note.query()).toBeNull();
  expect(host.plan.pens?.[0]?.birds).toEqual({ ...young, kind: "pullet" });
});
