import type { Plan } from "@headfall/hydraulics";
import { afterEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import type { HeadfallPart } from "../../../packages/ui/src/parts/part-element.js";
import { alderBank, PlanHost, placed } from "./plan-host.js";

afterEach(() => document.body.replaceChildren());

const withPens: Plan = { ...alderBank, pens: [{ id: "yard", birds: { kind: "hen", count: 40 } }] };

/** The panel of the row of nipples, whose plan says that 4 are at work in the busiest minutes. */
async function nipples(plan: Plan): Promise<PlanHost<HeadfallPart>> {
  const view = document.createElement("headfall-part") as HeadfallPart;
  view.selected = { kind: "drinkers", run: 1, group: 0 };
  return placed(new PlanHost(view, plan));
}

const field = (name: string) => page.getByRole("textbox", { name });

test("a number that is typed says so where birds could decide it, and is given back to them by a button", async () => {
  const host = await nipples(withPens);
  await expect.element(field("At work, busiest minutes")).toHaveValue("4");
  await expect.element(page.getByText("Typed. Empty it, and the birds decide.")).toBeVisible();
  await userEvent.click(page.getByRole("button", { name: "Let the birds decide" }));
  await expect.poll(() => host.plan.runs[1]!.drinkers).not.toHaveProperty("busiest");
  await expect.element(page.getByRole("button", { name: "Let the birds decide" })).not.toBeInTheDocument();
  host.undo();
  expect(host.plan.runs[1]!.drinkers).toHaveProperty("busiest", 4);
});

test("a number the birds decide is shown with where it comes from", async () => {
  await nipples(withPens);
  await expect
    .element(field("At work, ordinary hour"))
    .toHaveAttribute("placeholder", expect.stringMatching(/^\d+, from the birds$/));
});

test("where no birds reach the drinkers, what stands in is taken for granted as before", async () => {
  await nipples(alderBank);
  await expect
    .element(field("At work, ordinary hour"))
    .toHaveAttribute("placeholder", "10 %, taken for granted");
  await expect.element(page.getByText("and the birds decide")).not.toBeInTheDocument();
});
