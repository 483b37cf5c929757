import type { Plan } from "@headfall/hydraulics";
import { afterEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { BirdsHost, birdsRoom } from "./birds-host.js";
import { alderBank } from "./plan-host.js";
import { SilentWorker } from "./silent-worker.js";

const { Worker } = globalThis;

afterEach(() => {
  globalThis.Worker = Worker;
  document.body.replaceChildren();
});

const { day: _, ...undated } = alderBank;
const pullets = (hatched: string): Plan => ({
  ...undated,
  pens: [{ id: "yard", birds: { kind: "pullet", count: 30, hatched } }],
});

/** Meat birds on a line that goes up with them; its ground is level. */
const hungLine: Plan = {
  ...alderBank,
  runs: alderBank.runs.map((run) => (run.drinkers === undefined ? run : { ...run, hung: true })),
  pens: [{ id: "yard", birds: { kind: "meat-chicken", count: 40, hatched: "2026-06-20" } }],
};

test("what no figure shows is told in a plan without pens, too", async () => {
  const { view } = await birdsRoom(alderBank);
  const care = view.shadowRoot!.querySelector(".cautions")!.textContent!;
  for (const words of ["drown", "Look at the water every day", "ask a vet"]) expect(care).toContain(words);
});

test("judging the weeks says that it is at work, can be cancelled, and is taken up again when asked", async () => {
  globalThis.Worker = SilentWorker;
  const host = new BirdsHost(pullets("2026-06-01"));
  document.body.append(host.view);
  await userEvent.click(page.getByRole("button", { name: "Cancel" }));
  await expect.element(page.getByText("The coming weeks were not judged.")).toBeVisible();
  expect(host.view.shadowRoot!.querySelector(".drunk")).toBeNull();
  globalThis.Worker = Worker;
  await userEvent.click(page.getByRole("button", { name: "Judge the coming weeks" }));
  await expect.poll(() => host.view.shadowRoot!.querySelector(".drunk")).not.toBeNull();
  expect(host.view.shadowRoot!.querySelector(".work")).toBeNull();
});

test("weeks that cannot be judged say why, and that what is shown is of the plan before", async () => {
  const { view } = await birdsRoom(pullets("2026-06-01"));
  view.day = undefined;
  const alert = page.getByRole("alert");
  await expect.element(alert).toHaveTextContent("The coming weeks cannot be judged: day:");
  await expect.element(alert).toHaveTextContent("is of the plan before that change");
  expect(view.shadowRoot!.querySelectorAll(".older").length).toBe(0);
});

test("where drinkers should hang, how far they go up, heads and verdicts of a week are one tap from how they were got", async () => {
  const { view } = await birdsRoom(hungLine);
  for (const details of view.shadowRoot!.querySelectorAll("details")) details.open = true;
  const row = [...view.shadowRoot!.querySelectorAll(".weeks tbody tr")][1]!;
  const dialog = page.getByRole("dialog");
  for (const [head, words] of [
    ["Should hang at", /Where “.+” should hang, in 1 week/],
    ["Raised by", /raised by = hangs then at − hangs now at/],
    ["Head, full and idle", /Head of still water, full, in 1 week/],
    ["Head, lowest and busiest", /The whole line is solved anew as it then hangs/],
    ["Drinkers", /Verdict on the line, in 1 week/],
  ] as const) {
    row.querySelector<HTMLElement>(`[data-head="${head}"] button`)!.focus();
    await userEvent.keyboard("{Enter}");
    await expect.element(dialog).toHaveTextContent(words);
    await userEvent.keyboard("{Escape}");
  }
  expect(view.shadowRoot!.querySelectorAll(".weeks [data-how]:not([tabindex='-1'])").length).toBe(1);
});
