import type { Plan } from "@headfall/hydraulics";
import { afterEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { accessibilityFaults } from "./accessibility.js";
import { birdsRoom } from "./birds-host.js";
import { alderBank } from "./plan-host.js";

afterEach(() => document.body.replaceChildren());

/** So many hens at the twelve nipples of Alder Bank. */
const hens = (count: number, region?: Plan["region"]): Plan => ({
  ...alderBank,
  ...(region === undefined ? {} : { region }),
  pens: [{ id: "yard", birds: { kind: "hen", count } }],
});

const textOf = (view: HTMLElement, selector: string) =>
  (view.shadowRoot!.querySelector(selector)?.textContent ?? "").replace(/\s+/g, " ").trim();
const forces = (view: HTMLElement) =>
  [...view.shadowRoot!.querySelectorAll(".forces li")].map((li) =>
    li.textContent!.replace(/\s+/g, " ").trim(),
  );

test("enough drinkers are told at the head of the room, and what decides how many are needed", async () => {
  const { view } = await birdsRoom(hens(40, "Germany"));
  expect(textOf(view, ".answer")).toContain("Drinkers enough");
  expect(textOf(view, ".need")).toBe("12 nipples; 8 needed by advice. ✓ enough");
  expect(forces(view)).toEqual([
    "■Rules that bind: 4",
    "◇Advice, and rules with it: 8 – this decides",
    "In reach of each bird, one may fail: 2",
    expect.stringMatching(/^Crowd of the busiest minutes: \d+$/),
  ]);
});

test("too few are told where they lack: by law, or, where no rule binds, by advice; in the findings too", async () => {
  const { view, store } = await birdsRoom(hens(200, "Germany"));
  expect(textOf(view, ".answer")).toContain("too few yard: 12 nipples, 20 needed");
  expect(textOf(view, ".findings")).toContain("20 are required by law (one nipple for 10 birds)");
  expect(textOf(view, ".need")).toContain("▲ 8 too few");
  const advised = await birdsRoom({ ...store.plan, region: "USA" });
  expect(textOf(advised.view, ".need")).toMatch(/^12 nipples; \d+ needed by advice\./);
  expect(forces(advised.view)[0]).toBe("■Rules that bind: none");
  expect(textOf(advised.view, ".findings")).toContain("are advised");
});

test("one tap from the number stand every rule and advice with its force, and their sources", async () => {
  const { view } = await birdsRoom(hens(40));
  expect(textOf(view, "#needed + p")).toContain("Rules of EU (the plan does not say");
  view.shadowRoot!.querySelector<HTMLElement>(".need [data-how]")!.focus();
  await userEvent.keyboard("{Enter}");
  const dialog = page.getByRole("dialog");
  await expect.element(dialog).toHaveTextContent("Nipples needed, “yard”");
  await expect
    .element(dialog)
    .toHaveTextContent("needed = max(rules that bind, advice and rules, in reach, crowd)");
  await expect.element(dialog).toHaveTextContent(/◇ advice \(/);
  await expect.element(dialog).toHaveTextContent(/rule that binds from \d+ birds on, here advice/);
  await expect.element(dialog).toHaveTextContent(/Source: .+\[eu-1999-74\]/);
  expect(await accessibilityFaults(view)).toEqual([]);
});

test("a pen without drinkers is told how many nipples would do, as a suggestion", async () => {
  const { view } = await birdsRoom({
    ...alderBank,
    runs: [alderBank.runs[0]!],
    pens: [{ id: "yard", birds: { kind: "hen", count: 12 } }],
  });
  expect(textOf(view, ".need")).toMatch(/^None yet; of nipples, say, \d+ needed/);
  expect(textOf(view, ".answer")).toContain("yard: none, ");
});

test("where no rule and no advice is known, enough is not said without saying so", async () => {
  const { view } = await birdsRoom({
    ...alderBank,
    pens: [{ id: "yard", birds: { kind: "goose", count: 6 } }],
  });
  expect(textOf(view, ".answer")).toContain("yard: by reach and crowd alone; no rule or advice is known");
  expect(forces(view).join(" ")).toContain("only the birds tell");
});
