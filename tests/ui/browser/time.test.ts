import type { Plan } from "@headfall/hydraulics";
import { afterEach, expect, test, vi } from "vitest";
import { page, userEvent } from "vitest/browser";
import { HeadfallTime } from "../../../packages/ui/src/time/time-element.js";
import { HeadfallHow } from "../../../packages/ui/src/verdicts/how-element.js";
import { accessibilityFaults } from "./accessibility.js";
import { alderBank } from "./plan-host.js";
import { RoomHost, registerOnce, shown, unfold } from "./room-host.js";

registerOnce({ "headfall-time": HeadfallTime, "headfall-how": HeadfallHow });

afterEach(() => document.body.replaceChildren());

const withHens: Plan = {
  ...alderBank,
  weather: { high: "26 °C", low: "14 °C", hotSpell: { high: "34 °C" } },
  pens: [{ id: "hens", birds: { kind: "hen", count: 30 } }],
};

/** The room on the page, its days reckoned. */
async function timeRoom(plan: Plan, width = 420) {
  const view = document.createElement("headfall-time") as HeadfallTime;
  const host = await new RoomHost(view, plan).place(width);
  await expect.poll(() => view.shadowRoot?.querySelector("#lasts") !== null).toBe(true);
  return host;
}

test("headfall-time has nothing that axe objects to, in light and in dark, and fits into 336 px", async () => {
  const { view } = await timeRoom(withHens, 336);
  unfold(view);
  expect(await accessibilityFaults(view)).toEqual([]);
  view.style.colorScheme = "dark";
  expect(await accessibilityFaults(view)).toEqual([]);
  expect(view.scrollWidth).toBeLessThanOrEqual(336);
});

test("it tells when the first bird goes without, with its range, draws the level and writes it down", async () => {
  const { view } = await timeRoom(withHens);
  expect(shown(view)).toMatch(
    /Until the first bird goes without \d+ days .* on the cautious figure, \d+ days .* to expect/,
  );
  expect(shown(view)).toMatch(/From .* \(most drunk, heat, drips\) to \d+ days/);
  const chart = view.shadowRoot!.querySelector("svg.chart")!;
  expect(chart.getAttribute("aria-label")).toMatch(/^Level of barrel: full at the start; first drinker dry/);
  expect(chart.querySelector(".level-band")!.getAttribute("d")!.length).toBeGreaterThan(50);
});

test("a number tells how it was got", async () => {
  await timeRoom(withHens);
  await userEvent.click(page.getByRole("button", { name: /^\d+ days/ }).first());
  await expect.element(page.getByText(/can be drawn/).first()).toBeInTheDocument();
});

test("how a source is filled is said there, and can be taken back", async () => {
  const { view, store } = await timeRoom(withHens);
  await userEvent.selectOptions(page.getByLabelText("barrel is filled"), "every");
  expect(store.plan.sources[0]!.refill).toEqual({ every: "1 day" });
  await expect.poll(() => shown(view)).toContain("Filled as the plan says");
  await expect.poll(() => shown(view)).toContain("It keeps up");
  store.undo();
  expect(store.plan.sources[0]!.refill).toBeUndefined();
});

test("going away asks for days and tells what one failure does", async () => {
  const { view } = await timeRoom(withHens);
  await userEvent.fill(page.getByLabelText("Days nobody comes"), "21");
  await userEvent.keyboard("{Tab}");
  await expect.poll(() => shown(view)).toMatch(/It does not last: the pen hens goes without after \d+ days/);
  expect(shown(view)).toContain("If barrel gives nothing: the pen hens goes without at once.");
});

test("the strip is put for the printer in millimetres of paper, and taken away after", async () => {
  await timeRoom(withHens);
  const printed = vi.spyOn(window, "print").mockImplementation(() => undefined);
  await userEvent.click(page.getByRole("button", { name: "Print the strip" }));
  expect(printed).toHaveBeenCalledOnce();
  const sheet = document.querySelector(".headfall-printed")!.shadowRoot!.querySelector("svg.page")!;
  expect([sheet.getAttribute("width"), sheet.getAttribute("viewBox")]).toEqual(["210mm", "0 0 210 297"]);
  window.dispatchEvent(new Event("afterprint"));
  expect(document.querySelector(".headfall-printed")).toBeNull();
  printed.mockRestore();
});

test("where nobody drinks it says so, leads to the birds, and tells no days", async () => {
  const view = document.createElement("headfall-time") as HeadfallTime;
  await new RoomHost(view, alderBank).place(420);
  const wanted = vi.fn();
  view.addEventListener("room-wanted", (event) => wanted((event as CustomEvent).detail));
  await userEvent.click(page.getByRole("button", { name: "Go to the birds" }));
  expect(wanted).toHaveBeenCalledWith({ room: "birds" });
  expect(view.shadowRoot!.querySelector("#lasts")).toBeNull();
  const cautions = view.shadowRoot!.querySelector(".cautions")!.textContent!;
  for (const words of ["every day", "drown", "ask a vet"]) expect(cautions).toContain(words);
});

test("the day one goes is said there, and counts for the whole plan", async () => {
  const { store, view } = await timeRoom(withHens);
  await userEvent.fill(page.getByLabelText("The day you go"), "2026-08-01");
  await expect.poll(() => store.plan.day).toBe("2026-08-01");
  await expect.poll(() => shown(view)).toContain("The whole plan is reckoned for that day.");
});

test("where no hot spell is told it says so, shows no days of one, and takes one on there", async () => {
  const { view, store } = await timeRoom({ ...withHens, weather: { high: "26 °C", low: "14 °C" } });
  expect(shown(view)).toContain("No heat is counted in");
  expect([...view.shadowRoot!.querySelectorAll(".spans th[scope=col]")].map((th) => th.textContent)).toEqual([
    "To expect",
    "To size on",
  ]);
  await userEvent.click(page.getByRole("checkbox", { name: "Be ready for a hot spell" }));
  await expect.poll(() => store.plan.weather?.hotSpell).toEqual({ high: "35 °C" });
  await expect.poll(() => shown(view)).toContain("(most drunk, heat, drips)");
  expect(shown(view)).not.toContain("No heat is counted in");
});

test("what going away needs, and what reaches the birds, tell how they were got", async () => {
  const { view } = await timeRoom(withHens);
  const panel = view.shadowRoot!.querySelector("headfall-how")!;
  const press = (what: string) =>
    view.shadowRoot!.querySelector<HTMLButtonElement>(`[data-how*='"away","what":"${what}"']`)!.click();
  press("needed");
  await expect.poll(() => panel.shadowRoot!.textContent).toMatch(/Needed, 5 days away/);
  press("usable");
  await expect.poll(() => panel.shadowRoot!.textContent).toMatch(/Reaches the birds, 5 days away/);
});
