import { checkPlan, type Plan } from "@headfall/hydraulics";
import { afterEach, expect, test, vi } from "vitest";
import { HeadfallMeasure } from "../../../packages/ui/src/measure/measure-element.js";
import { accessibilityFaults } from "./accessibility.js";

if (customElements.get("headfall-measure") === undefined)
  customElements.define("headfall-measure", HeadfallMeasure);

afterEach(() => document.body.replaceChildren());

/** A drum whose nipples stand near what they need; so high, it is close for none. */
const nipples = (stand: string, count = 4): Plan => ({
  headfall: 1,
  sources: [{ vessel: "drum-55gal-plastic", stand, level: { full: "60 cm", lowest: "8 cm" } }],
  runs: [
    {
      id: "line",
      length: "8 m",
      fall: "0 cm",
      pipe: "pvc-sch40-1/2",
      drinkers: { kind: "cup-trigger", count },
    },
  ],
  doubts: { level: "4 cm" },
});

/** The element on the page with a plan that was checked with so many samples. */
async function measured(plan: Plan, samples = 200): Promise<HeadfallMeasure> {
  const view = document.createElement("headfall-measure") as HeadfallMeasure;
  const box = document.createElement("div");
  box.style.width = "336px";
  box.append(view);
  document.body.append(box);
  const checking = checkPlan(plan, { samples });
  if (!checking.ok) throw new Error("no check");
  view.plan = plan;
  view.checked = checking.checked;
  view.lookedAt = 0;
  await view.updateComplete;
  return view;
}

const shown = (view: HTMLElement) => view.shadowRoot!.textContent!.replace(/\s+/g, " ").trim();
const found = async (view: HTMLElement) => {
  await expect.poll(() => view.shadowRoot!.querySelector("ol") !== null).toBe(true);
};

const close = nipples("12 cm");

test("headfall-measure shows nothing while it is not known what is sure, or where all is", async () => {
  expect(shown(await measured(close, 0))).toBe("");
  expect(shown(await measured(nipples("60 cm")))).toBe("");
});

test("headfall-measure tells of the drinker looked at and of all what to measure within what, with how it was got", async () => {
  const view = await measured(close);
  expect(view.checked!.drinkers[0]!.certainty.kind).toBe("closeCall");
  expect(shown(view)).toContain("Trying better measurements ...");
  await found(view);
  expect(shown(view)).toMatch(
    /line 1 is a close call: \d+ % of the plans agree \(else mostly \w+\)\. .*[Mm]easure the .* within [\d.]+ (mm|cm|%) \(now [\d.]+ (mm|cm|%)\)/,
  );
  expect(view.shadowRoot!.querySelector("ol")!.children.length).toBeGreaterThan(0);
  expect(shown(view)).toContain("up to 1000 plans that fit the measurements as well were solved again");
  expect(await accessibilityFaults(view)).toEqual([]);
  expect(view.scrollWidth).toBeLessThanOrEqual(336);
  const how = vi.fn();
  view.addEventListener("how-wanted", ({ subject }) => how(subject));
  view.shadowRoot!.querySelector<HTMLElement>("[data-how]")!.click();
  expect(how).toHaveBeenCalledWith({ of: "drinkerCertainty", drinker: 0 });
});

test("headfall-measure writes in the units asked for, and forgets what it found when the plan is another", async () => {
  const view = await measured(close);
  view.system = "us";
  await found(view);
  expect(shown(view)).toMatch(/within [\d.]+ in \(now 1\.6 in\)/);
  view.plan = nipples("60 cm");
  await view.updateComplete;
  expect(view.shadowRoot!.querySelector("ol")).toBe(null);
});

test("headfall-measure can be stopped, and asked after all", async () => {
  const view = await measured(close);
  const press = async (name: string) => {
    [...view.shadowRoot!.querySelectorAll("button")].find((one) => one.textContent === name)!.click();
    await view.updateComplete;
  };
  await press("Cancel");
  expect(shown(view)).toContain("Some verdicts are close calls.");
  await press("Find what to measure again");
  await found(view);
});

test("headfall-measure waits to be asked in a long line", async () => {
  const view = await measured(nipples("12 cm", 120));
  expect(shown(view)).toContain("Find what to measure again");
  expect(view.shadowRoot!.querySelector("progress")).toBe(null);
});
