import type { Plan } from "@headfall/hydraulics";
import { EditWantedEvent, HeadfallLine, type PlanChangedEvent } from "@headfall/ui";
import { afterEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import "../../../packages/ui/src/define.js";
import { accessibilityFaults } from "./accessibility.js";

const plan: Plan = {
  headfall: 1,
  name: "Alder Bank, for tests",
  sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "60 cm" }],
  points: [{ id: "far end", ground: "-20 cm", above: "30 cm", bleed: true }],
  runs: [
    {
      id: "feed",
      to: "far end",
      length: "6 m",
      pipe: "pvc-sch40-1/2",
      drinkers: { kind: "nipple-bucket", count: 6, busiest: 3 },
    },
  ],
};

afterEach(() => document.body.replaceChildren());

async function shown(of: Plan = plan): Promise<HeadfallLine> {
  const line = new HeadfallLine();
  line.plan = of;
  document.body.append(line);
  await expect.poll(() => line.checked ?? line.problems[0]).toBeDefined();
  await line.whole;
  return line;
}

const handsOf = (line: HeadfallLine) => line.shadowRoot!.querySelector("headfall-profile-hands")!.shadowRoot!;
const counts = (line: HeadfallLine) =>
  line.shadowRoot!.querySelector(".counts")!.textContent!.replace(/\s+/g, " ").trim();
const rows = (line: HeadfallLine) => [
  ...line.shadowRoot!.querySelectorAll("[aria-labelledby=drinkers] tbody tr"),
];

test("headfall-line has nothing that axe objects to, in light and in dark", async () => {
  const line = await shown();
  expect(await accessibilityFaults(line)).toEqual([]);
  line.style.colorScheme = "dark";
  expect(await accessibilityFaults(line)).toEqual([]);
});

test("headfall-line shows every drinker with the verdict the check came to", async () => {
  const line = await shown();
  const { drinkers } = line.checked!;
  expect(rows(line)).toHaveLength(6);
  rows(line).forEach((row, i) => {
    expect(row.textContent).toContain(drinkers[i]!.drinker);
    expect(row.querySelector(".verdict")!.textContent).toContain(drinkers[i]!.verdict);
  });
});

test("headfall-line starts at full and busiest, metric, with the worst drinker", async () => {
  const line = await shown();
  expect([line.moment, line.units, line.drinker]).toEqual(["fullBusiest", "metric", ""]);
});

test("headfall-line shows its cautions unfolded", async () => {
  const line = await shown();
  const cautions = line.shadowRoot!.querySelectorAll("[part=cautions] li");
  expect(cautions).toHaveLength(line.checked!.cautions.length);
  for (const caution of cautions) expect((caution as HTMLElement).offsetHeight).toBeGreaterThan(0);
});

test("when the stand is typed in, the plan keeps the text, the old plan is unharmed, and the heads follow", async () => {
  const line = await shown();
  const before = line.checked!.drinkers[5]!.moments.fullIdle.hazenWilliams.staticHead;
  let told: PlanChangedEvent | undefined;
  line.addEventListener("plan-changed", (event) => {
    told = event;
  });
  await userEvent.fill(page.getByRole("textbox", { name: "Stand", exact: true }), "1.1 m");
  await userEvent.keyboard("{Enter}");
  await expect
    .poll(() => line.checked!.drinkers[5]!.moments.fullIdle.hazenWilliams.staticHead)
    .toBeCloseTo(before + 0.5, 6);
  expect(told!.cause).toBe("edit");
  expect(told!.plan.sources[0]!.stand).toBe("1.1 m");
  expect(plan.sources[0]!.stand).toBe("60 cm");
});

test("when a slider is pressed on faster than the line is worked out, no press is lost", async () => {
  const line = await shown();
  const part = line.shadowRoot!.querySelector("headfall-part")!;
  const stand = part.shadowRoot!.querySelector("headfall-quantity")!;
  const slider = stand.shadowRoot!.querySelector<HTMLInputElement>("input[type=range]")!;
  for (let press = 0; press < 5; press++) {
    slider.stepUp();
    slider.dispatchEvent(new Event("input", { bubbles: true, composed: true }));
    await part.updateComplete;
    await stand.updateComplete;
  }
  expect(line.plan!.sources[0]!.stand).toBe("65 cm");
  expect(slider.value).toBe("0.65");
});

test("when another pipe is chosen, the run has it", async () => {
  const line = await shown();
  line.selected = { kind: "run", run: 0 };
  await userEvent.selectOptions(
    page
      .elementLocator(line.shadowRoot!.querySelector("headfall-part")!)
      .getByRole("combobox", { name: "Pipe", exact: true }),
    "pvc-sch40-1",
  );
  await expect.poll(() => line.checked!.line.runs[0]!.pipeId).toBe("pvc-sch40-1");
});

test("when more drinkers are at work, more water is drawn", async () => {
  const line = await shown();
  const draw = () => line.checked!.sources[0]!.drawBusiest;
  const before = draw();
  line.selected = { kind: "drinkers", run: 0, group: 0 };
  await userEvent.fill(
    page
      .elementLocator(line.shadowRoot!.querySelector("headfall-part")!)
      .getByRole("textbox", { name: /busiest/ }),
    "6",
  );
  await userEvent.keyboard("{Enter}");
  await expect.poll(draw).toBeGreaterThan(before * 1.5);
});

test("when both ends are chosen, the band of heads of each drinker is drawn", async () => {
  const line = await shown();
  const bars = () => handsOf(line).querySelectorAll(".bar, [class*=band]").length;
  const before = bars();
  await userEvent.click(page.getByRole("radio", { name: "Both ends at once" }));
  await expect.poll(bars).toBeGreaterThan(before);
});

test("when a step is undone by keys, the plan is as it was, and can be had again", async () => {
  const line = await shown();
  const { store } = line;
  line.dispatchEvent(
    new EditWantedEvent({ kind: "set", path: ["sources", 0, "stand"], value: "80 cm", what: "stand 80 cm" }),
  );
  expect(line.plan!.sources[0]!.stand).toBe("80 cm");
  line.dispatchEvent(new KeyboardEvent("keydown", { key: "z", ctrlKey: true }));
  expect(line.plan).toBe(plan);
  line.dispatchEvent(new KeyboardEvent("keydown", { key: "Z", ctrlKey: true, shiftKey: true }));
  expect(line.plan!.sources[0]!.stand).toBe("80 cm");
  expect(line.store).toBe(store);
});

test("when an edit cannot be made, the plan stays, and the line says why", async () => {
  const line = await shown();
  line.dispatchEvent(
    new EditWantedEvent({ kind: "set", path: ["sources", 0, "stand"], value: "3 bananas", what: "stand" }),
  );
  expect(line.plan).toBe(plan);
  const told = () => line.shadowRoot!.querySelector(".stage [role=alert]")?.textContent;
  await expect.poll(told).toContain("3 bananas");
  expect(line.shadowRoot!.querySelector("headfall-part")!.shadowRoot!.textContent).not.toContain("bananas");
});

test("when a row's button is pressed, that drinker is looked at and its heading has the focus", async () => {
  const line = await shown();
  const name = line.checked!.drinkers[4]!.drinker;
  await userEvent.click(page.getByRole("button", { name: `How ${name} was got` }));
  await expect.poll(() => line.shadowRoot!.activeElement?.textContent).toBe(name);
  expect(line.drinker).toBe(name);
});

test("when the hand has rested, close calls are told from sure verdicts", async () => {
  const line = await shown();
  expect(line.checked!.drinkers[0]!.certainty.kind).toBe("notSampled");
  await expect.poll(() => line.checked!.drinkers[0]!.certainty.kind).not.toBe("notSampled");
});

test("when the verdicts change, a polite live region says so after a rest", async () => {
  const line = await shown();
  const region = line.shadowRoot!.querySelector("[aria-live=polite]")!;
  await expect.poll(() => region.textContent).toContain("Verdict: ");
});

test("when the plan it is given is faulty, it lists the problems and keeps showing the line before", async () => {
  const line = await shown();
  const before = counts(line);
  line.plan = { ...plan, runs: [{ ...plan.runs[0]!, fall: "9 cm" }] };
  await expect.poll(() => line.problems.length).toBeGreaterThan(0);
  await line.updateComplete;
  expect(line.shadowRoot!.querySelector("[role=alert]")!.textContent).toContain("runs[0].fall");
  expect(counts(line)).toBe(before);
});

test("when units are US, heads are written in feet and inches, and the plan keeps what was typed", async () => {
  const line = await shown();
  line.units = "us";
  await line.updateComplete;
  expect(rows(line)[0]!.textContent).toMatch(/\d (ft|in)/);
  expect(line.plan!.sources[0]!.stand).toBe("60 cm");
});

/** All that is drawn and written, elements within elements, but for the marks that templates leave. */
function pictureOf(root: ParentNode): string {
  return [...root.querySelectorAll("svg, h2, p, td, dd")]
    .map((each) =>
      (each instanceof SVGElement ? each.outerHTML : each.textContent!).replace(/<!--.*?-->/g, ""),
    )
    .concat(
      [...root.querySelectorAll("*")].map(({ shadowRoot }) => (shadowRoot ? pictureOf(shadowRoot) : "")),
    )
    .join("\n")
    .replace(/\s+/g, " ");
}

test("after a drag of more steps than are drawn, all stands as if the plan had just been opened", async () => {
  const line = await shown();
  const hands = line.shadowRoot!.querySelector("headfall-profile-hands")!;
  for (let stand = 61; stand <= 90; stand += 1) {
    const change = {
      kind: "set",
      path: ["sources", 0, "stand"],
      value: `${stand} cm`,
      what: "stand",
    } as const;
    hands.dispatchEvent(new EditWantedEvent(change, "one drag"));
    if (stand % 3 === 0) await new Promise((resolve) => setTimeout(resolve, 5));
  }
  expect(line.plan!.sources[0]!.stand).toBe("90 cm");
  expect(line.isSettled).toBe(false);
  await expect.poll(() => line.isSettled).toBe(true);
  expect(line.store!.undo()!.before).toBe(plan);
  line.store!.redo();
  const fresh = await shown(line.plan);
  for (const one of [line, fresh]) await expect.poll(() => one.shadowRoot!.textContent).not.toContain(" ...");
  for (const one of [line, fresh]) await expect.poll(() => one.isSettled).toBe(true);
  await expect.poll(() => pictureOf(line.shadowRoot!)).toBe(pictureOf(fresh.shadowRoot!));
});

test.each([336, 600, 1240])(
  "at %i px a drag moves nothing for what is said anew, but hides none of it",
  async (width) => {
    await page.viewport(width, 800);
    const line = await shown();
    const root = line.shadowRoot!;
    const sentence = root.querySelector(".sentence")!;
    await expect.poll(() => sentence.textContent).not.toContain(" ...");
    const placeOf = (selector: string) => root.querySelector(selector)!.getBoundingClientRect();
    const [drawing, panel] = [placeOf(".drawing"), placeOf("headfall-part")];
    const change = { kind: "set", path: ["sources", 0, "stand"], value: "75 cm", what: "stand" } as const;
    root
      .querySelector("headfall-profile-hands")!
      .dispatchEvent(new EditWantedEvent(change, `drag at ${width} px`));
    await expect.poll(() => root.querySelector(".dragged")).not.toBeNull();
    const grown = sentence.scrollHeight > panel.top - sentence.getBoundingClientRect().top;
    expect(placeOf(".drawing").top).toBe(drawing.top);
    if (!grown) expect(placeOf("headfall-part").top).toBe(panel.top);
    for (const said of root.querySelectorAll(".counts, .sentence"))
      expect(said.scrollHeight).toBeLessThanOrEqual(said.clientHeight + 1);
    await expect.poll(() => root.querySelector(".dragged")).toBeNull();
    expect(placeOf(".drawing").top).toBe(drawing.top);
  },
);

test("after a plan whose first look took long, a short one shows no work once all is worked out", async () => {
  const [run, ...others] = plan.runs;
  const many = { kind: "nipple-side-action", count: 3000, every: "1 cm", busiest: 100 };
  const line = await shown({
    ...plan,
    runs: [{ ...run!, length: "40 m", drinkers: many }, ...others.map(({ drinkers: _, ...bare }) => bare)],
  });
  line.plan = plan;
  await expect.poll(() => line.plan === plan && line.isSettled).toBe(true);
  await expect.poll(() => line.shadowRoot!.querySelector(".sureness")!.textContent).not.toContain("...");
  // Longer than it takes until work is told that nothing is known of yet.
  await new Promise((act) => setTimeout(act, 1300));
  expect(line.shadowRoot!.querySelector(".progress")).toBeNull();
});
