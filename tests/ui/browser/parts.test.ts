import { type PlanRun, type PlanSource, readQuantity } from "@headfall/hydraulics";
import { afterEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { accessibilityFaults } from "./accessibility.js";
import {
  alert,
  button,
  choice,
  DUCKS,
  FEED,
  focused,
  HENS,
  NIPPLES,
  SOURCE,
  shown,
  TEE,
  textbox,
  type,
  unfold,
} from "./part-verbs.js";
import { alderBank } from "./plan-host.js";

afterEach(() => document.body.replaceChildren());

for (const [words, part] of [
  ["the whole plan", undefined],
  ["a source", SOURCE],
  ["a run", HENS],
  ["a joint", TEE],
  ["drinkers", NIPPLES],
] as const) {
  test(`headfall-part has nothing that axe objects to, showing ${words}, unfolded, in light and in dark`, async () => {
    const { view } = await shown(part);
    for (const details of view.shadowRoot!.querySelectorAll("details")) details.open = true;
    expect(await accessibilityFaults(view)).toEqual([]);
    view.style.colorScheme = "dark";
    expect(await accessibilityFaults(view)).toEqual([]);
  });
}

test("headfall-part gives a thumb 44 px to press, and fits into 320 px", async () => {
  for (const part of [undefined, SOURCE, HENS, TEE, NIPPLES]) {
    const { view } = await shown(part);
    view.parentElement!.style.width = "320px";
    for (const details of view.shadowRoot!.querySelectorAll("details")) details.open = true;
    for (const control of view.shadowRoot!.querySelectorAll<HTMLElement>(
      "button, select, textarea, summary",
    )) {
      expect(control.offsetHeight, control.textContent!).toBeGreaterThanOrEqual(44);
    }
    expect(view.scrollWidth).toBeLessThanOrEqual(320);
    document.body.replaceChildren();
  }
});

test("headfall-part survives a check that is older than the plan", async () => {
  const host = await shown(DUCKS);
  host.view.plan = { ...alderBank, runs: [alderBank.runs[0]!] };
  await host.view.updateComplete;
  await expect.element(page.getByRole("heading", { name: "The whole plan" })).toBeVisible();
  host.view.checked = undefined;
  host.view.selected = SOURCE;
  await expect.element(page.getByRole("heading", { name: "Source: barrel" })).toBeVisible();
});

test("when the length is typed as a bare number, it is taken in metres and kept with its unit", async () => {
  const host = await shown(FEED);
  await type("Length", "7.5");
  await expect.poll(() => host.plan.runs[0]!.length).toBe("7.5 m");
  await expect.element(textbox("Length")).toHaveValue("7.5 m");
});

test("when a length is typed as a sum, its result is kept", async () => {
  const host = await shown(FEED);
  await type("Length", "=3*2 m - 50 cm");
  await expect.poll(() => host.plan.runs[0]!.length).toBe("5.5 m");
});

test("when units differ from what was typed, the value is shown in the user's, and what was typed beside it", async () => {
  const host = await shown(DUCKS);
  await expect.element(textbox("Length")).toHaveValue("2.44 m");
  await expect.element(page.getByText("Typed as 8 ft.")).toBeVisible();
  expect(host.plan.runs[2]!.length).toBe("8 ft");
});

test("when nothing is typed into a key that may be left out, it is taken out, and what stands in is shown", async () => {
  const host = await shown(NIPPLES);
  await type("At work, busiest minutes", "");
  await expect.poll(() => (host.plan.runs[1] as PlanRun).drinkers).not.toHaveProperty("busiest");
  await expect
    .element(textbox("At work, busiest minutes"))
    .toHaveAttribute("placeholder", "50 %, taken for granted");
});

test("when a share is typed for drinkers at work, it is kept as a share, and a count as a number", async () => {
  const host = await shown(NIPPLES);
  await type("At work, busiest minutes", "25%");
  await expect.poll(() => host.plan.runs[1]!.drinkers).toMatchObject({ busiest: "25 %" });
  await type("At work, ordinary hour", "2");
  await expect.poll(() => host.plan.runs[1]!.drinkers).toMatchObject({ ordinary: 2 });
});

test("when one height or level was measured better than the others, its own doubt is kept", async () => {
  const host = await shown(FEED);
  await unfold("More");
  await expect
    .element(textbox("The height of its end may be off by"))
    .toHaveAttribute("placeholder", "1 cm, taken for granted");
  await type("The height of its end may be off by", "3 mm");
  await expect.poll(() => host.plan.runs[0]!.doubt).toBe("3 mm");
  const barrel = await shown(SOURCE);
  for (const details of barrel.view.shadowRoot!.querySelectorAll("details")) details.open = true;
  await type("Its water levels may be off by", "5 mm");
  await expect.poll(() => barrel.plan.sources[0]!.level?.doubt).toBe("5 mm");
  await type("The height it stands at may be off by", "4 mm");
  await expect.poll(() => barrel.plan.sources[0]!.doubt).toBe("4 mm");
});

test("when a joint was measured better than the others, its doubt is kept where its height is told", async () => {
  const byItself = await shown(TEE);
  await unfold("More");
  await type("Its height may be off by", "3 mm");
  await expect.poll(() => byItself.plan.points?.find(({ id }) => id === "tee")?.doubt).toBe("3 mm");
  document.body.replaceChildren();
  const { points: _, ...rest } = alderBank;
  const [feed, ...others] = rest.runs;
  const byRun = await shown(TEE, { ...rest, runs: [{ ...feed!, fall: "10 cm" }, ...others] });
  await unfold("More");
  await type("Its height may be off by", "2 mm");
  await expect.poll(() => byRun.plan.runs[0]!.doubt).toBe("2 mm");
});

test("when something needed is emptied, the field says so and the plan keeps it", async () => {
  const host = await shown(FEED);
  await type("Length", "");
  await expect.element(alert()).toHaveTextContent("Length: something has to stand here.");
  expect(host.plan.runs[0]!.length).toBe("4 m");
});

test("when what is typed cannot be read, it stays with what is wrong, whatever else changes, until Escape", async () => {
  const host = await shown(FEED);
  await type("Length", "four paces");
  await expect.element(alert()).toHaveTextContent("A length is a number with its unit");
  expect(getComputedStyle(textbox("Length").element()).borderTopWidth).toBe("2px");
  await type("Fall", "5");
  await expect.poll(() => host.plan.runs[0]!.fall ?? host.view.refusal).toBeTruthy();
  await expect.element(textbox("Length")).toHaveValue("four paces");
  await userEvent.click(textbox("Length"));
  await userEvent.keyboard("{Escape}");
  await expect.element(textbox("Length")).toHaveValue("4 m");
});

test("when a field is half-typed while the plan changes elsewhere, no letter is lost", async () => {
  const host = await shown(FEED);
  await userEvent.click(textbox("Length"));
  await userEvent.keyboard("{End}5");
  host.store.edit({ kind: "set", path: ["runs", 0, "length"], value: "9 m", what: "length" }, "metric");
  host.view.plan = host.plan;
  await host.view.updateComplete;
  await expect.element(textbox("Length")).toHaveValue("4 m5");
});

test("when an edit is refused, the field keeps what was typed and says why, until it is put right", async () => {
  const host = await shown(NIPPLES);
  await type("One every", "2 m");
  await expect.element(alert()).toHaveTextContent("12 drinkers would reach past the end of the run");
  await expect.element(textbox("One every")).toHaveValue("2 m");
  await userEvent.click(textbox("One every"));
  await userEvent.keyboard("{Escape}");
  await expect.element(textbox("One every")).toHaveValue("30 cm");
  await expect.element(alert()).not.toBeInTheDocument();
  await type("One every", "2 m");
  await expect.element(alert()).toBeVisible();
  await type("One every", "20");
  await expect.poll(() => host.plan.runs[1]!.drinkers).toMatchObject({ every: "20 cm" });
  await expect.element(alert()).not.toBeInTheDocument();
});

test("when the stand is slid, the edits of one slide carry one gesture and are one step to undo", async () => {
  const host = await shown(SOURCE);
  const slider = page.getByRole("slider", { name: "Stand, slider" }).element() as HTMLInputElement;
  const slide = (...values: string[]) => {
    for (const value of values) {
      slider.value = value;
      slider.dispatchEvent(new Event("input", { bubbles: true }));
    }
    slider.dispatchEvent(new Event("change", { bubbles: true }));
  };
  slide("0.7", "0.8", "0.9");
  slide("1", "1.1");
  const gestures = host.wanted.map(({ gesture }) => gesture);
  expect(new Set(gestures).size).toBe(2);
  expect(gestures[0]).toBe(gestures[2]);
  expect(gestures[3]).toBe(gestures[4]);
  expect(host.plan.sources[0]!.stand).toBe("110 cm");
  host.undo();
  expect(host.plan.sources[0]!.stand).toBe("90 cm");
  host.undo();
  expect(host.plan.sources[0]!.stand).toBe("60 cm");
});

test("when a level is typed, then emptied, the plan has it and then leaves it out again", async () => {
  const host = await shown(SOURCE);
  await type("Water level when full", "70");
  await expect.poll(() => host.plan.sources[0]!.level?.full).toBe("70 cm");
  await type("Water level when full", "");
  await expect.poll(() => host.plan.sources[0]!.level?.full).toBeUndefined();
  await expect.element(textbox("Water level when full")).toHaveValue("");
  const { placeholder } = textbox("Water level when full").element() as HTMLInputElement;
  expect(placeholder).toMatch(/^\d.* cm$/);
  await expect
    .element(page.getByText(`Above its inside bottom. ${placeholder} is taken for granted.`))
    .toBeVisible();
});

test("when a vessel of own size is chosen, it begins as large as the one before, and its sizes can be typed", async () => {
  const host = await shown(SOURCE);
  await userEvent.selectOptions(choice("Vessel"), "Own size: upright barrel");
  await expect.poll(() => host.plan.sources[0]!.vessel).toMatchObject({ shape: "upright" });
  const { diameter } = host.plan.sources[0]!.vessel as { diameter: string };
  const read = readQuantity(diameter, "length");
  expect(read.ok && read.quantity.si).toBeGreaterThan(0.5);
  await type("Height inside", "88");
  await expect.poll(() => host.plan.sources[0]!.vessel).toMatchObject({ height: "88 cm" });
});

test("when measured levels and volumes are pasted, the vessel has them", async () => {
  const host = await shown(SOURCE);
  await userEvent.selectOptions(choice("Vessel"), "Own shape: levels and volumes as measured");
  await userEvent.fill(
    textbox("All of them at once, one pair a line"),
    "level\tvolume\n0\t0\n40 cm\t80 L\n90\t200",
  );
  await userEvent.click(button("Take these readings"));
  await expect
    .poll(() => (host.plan.sources[0]!.vessel as Extract<PlanSource["vessel"], { shape: "table" }>).readings)
    .toEqual([
      { level: "0 cm", volume: "0 L" },
      { level: "40 cm", volume: "80 L" },
      { level: "90 cm", volume: "200 L" },
    ]);
});

test("when air comes through a tube, its foot and bore can be typed", async () => {
  const host = await shown(SOURCE);
  await unfold("More");
  await userEvent.selectOptions(choice("How air gets in"), "Through an air tube");
  await type("Foot of the air tube above the inside bottom", "12");
  await expect.poll(() => host.plan.sources[0]!.vent).toEqual({ airTube: "12 cm" });
  await userEvent.selectOptions(choice("How air gets in"), "Sealed");
  await expect.poll(() => host.plan.sources[0]!.vent).toBe("sealed");
});

test("how wide the outlet is can be typed, for a tap or strainer narrower than the pipe", async () => {
  const host = await shown(SOURCE);
  await unfold("More");
  await type("Bore of the outlet", "6");
  await expect.poll(() => host.plan.sources[0]!.outletBore).toBe("6 mm");
});

test("when the source is renamed, its runs follow", async () => {
  const host = await shown(SOURCE);
  await unfold("More");
  await type("Name", "rain tub");
  await expect.element(page.getByRole("heading", { name: "Source: rain tub" })).toBeVisible();
  expect(host.plan.sources[0]!.id).toBe("rain tub");
});

test("when units are US, a run drawn by its button is 15 ft long", async () => {
  const host = await shown(SOURCE, alderBank, "us");
  await userEvent.click(button("Draw a run from here"));
  await expect.poll(() => host.plan.runs.at(-1)!.length).toBe("15 ft");
});

test("when a part is chosen from the list of all, its name has the focus, and All parts leads back", async () => {
  const host = await shown();
  await userEvent.click(button("hens").first());
  await expect.poll(() => focused(host.view)?.textContent).toBe("Run: hens");
  await userEvent.click(button("All parts"));
  await expect.poll(() => focused(host.view)?.textContent).toBe("The whole plan");
  expect(host.chosen).toEqual([HENS, undefined]);
});

test("when the plan's own fields are typed, it keeps them", async () => {
  const host = await shown();
  await type("Name of the plan", "Alder Bank, spring");
  await unfold("More about the plan");
  await type("Temperature of the water", "12");
  await userEvent.selectOptions(choice("Friction law shown first"), "Darcy-Weisbach");
  await userEvent.fill(textbox("Note"), "two lines\nof note");
  await userEvent.tab();
  await expect
    .poll(() => host.plan)
    .toMatchObject({
      name: "Alder Bank, spring",
      water: "12 °C",
      friction: "darcy-weisbach",
      note: "two lines\nof note",
    });
});

test("when a name is markup, it is shown as text", async () => {
  const host = await shown(FEED);
  await unfold("More");
  await type("Name", "<img src=x onerror=alert(1)>");
  await expect
    .element(page.getByRole("heading", { name: "Run: <img src=x onerror=alert(1)>" }))
    .toBeVisible();
  expect(host.view.shadowRoot!.querySelector("img")).toBeNull();
});

test("when an edit made elsewhere is refused, the panel says why at its head, and no field is blamed", async () => {
  const host = await shown(FEED);
  host.view.refusal = "A run cannot end where it begins.";
  await expect.element(alert()).toHaveTextContent("A run cannot end where it begins.");
  expect(host.view.shadowRoot!.querySelector("[aria-invalid]")).toBeNull();
  host.view.refusal = "";
  await expect.element(alert()).not.toBeInTheDocument();
});
