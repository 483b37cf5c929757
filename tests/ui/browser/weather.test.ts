import type { Plan } from "@headfall/hydraulics";
import { afterEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { HeadfallHow } from "../../../packages/ui/src/verdicts/how-element.js";
import { HeadfallWeather } from "../../../packages/ui/src/weather/weather-element.js";
import { accessibilityFaults } from "./accessibility.js";
import { alderBank } from "./plan-host.js";
import { RoomHost, registerOnce, shown, unfold } from "./room-host.js";

registerOnce({
  "headfall-weather": HeadfallWeather,
  "headfall-how": HeadfallHow,
});

afterEach(() => document.body.replaceChildren());

const yard: Plan = {
  ...alderBank,
  weather: { high: "33 °C", low: "20 °C", frost: { low: "-8 °C", hours: "12 h", wind: "3 m/s" } },
  pens: [
    {
      id: "hens",
      birds: { kind: "hen", count: 30 },
      waterers: [{ id: "pan", kind: "rubber-pan-3gal" }],
    },
  ],
};

/** The room on the page, its night and day reckoned. */
async function weatherRoom(plan: Plan, width = 420) {
  const view = document.createElement("headfall-weather") as HeadfallWeather;
  const host = await new RoomHost(view, plan).place(width);
  await expect.poll(() => view.shadowRoot?.querySelector("#frost") !== null).toBe(true);
  // On a phone what can be changed is folded away.
  view.shadowRoot!.querySelector<HTMLDetailsElement>(".say details")!.open = true;
  return host;
}

test("headfall-weather has nothing that axe objects to, in light and in dark, and fits into 336 px", async () => {
  const { view } = await weatherRoom(yard, 336);
  unfold(view);
  expect(await accessibilityFaults(view)).toEqual([]);
  view.style.colorScheme = "dark";
  expect(await accessibilityFaults(view)).toEqual([]);
  expect(view.scrollWidth).toBeLessThanOrEqual(336);
});

test("it tells what stops first, draws the night on one axis, what to drain, and refills of the pan", async () => {
  const { view } = await weatherRoom(yard);
  expect(shown(view)).toMatch(/First to stop: .+, \d+ min after dusk/);
  expect(shown(view)).toContain("-8 °C for 12 h from dusk");
  expect(shown(view)).toMatch(/drain the pipe, [\d.]+ m?L in all, at its low ends/);
  expect(shown(view)).toMatch(/pan: filled at dawn and \d+ more times before dark/);
  const bars = view.shadowRoot!.querySelectorAll("svg.chart")[0]!;
  expect(bars.getAttribute("aria-label")).toMatch(/^Hours from dusk until each part stops\. .+ stops first/);
  expect(bars.querySelectorAll(".wet").length).toBeGreaterThan(3);
});

test("numbers of both tell how they were got", async () => {
  const { view } = await weatherRoom(yard);
  const [first] = view.shadowRoot!.querySelectorAll<HTMLElement>("#frost ~ p .number");
  await userEvent.click(first!);
  await expect.element(page.getByText(/Cooling: t =/).first()).toBeInTheDocument();
  await userEvent.keyboard("{Escape}");
  const [drunk, , peak] = view.shadowRoot!.querySelectorAll<HTMLElement>("#heat ~ p .number");
  await userEvent.click(drunk!);
  await expect
    .element(page.getByText(/A day's water of all birds, to size on, on the hot day/))
    .toBeInTheDocument();
  await userEvent.keyboard("{Escape}");
  await userEvent.click(peak!);
  await expect.element(page.getByText(/the noon sun adds/).first()).toBeInTheDocument();
});

test("shade and colour of a run are said there, change its curve, and can be taken back", async () => {
  const { view, store, show } = await weatherRoom(yard);
  const peak = () => Number(/At worst (\d+) °C/.exec(shown(view))?.[1]);
  const before = peak();
  expect(before).toBeGreaterThan(50);
  const drawn = view.shadowRoot!.querySelector<HTMLSelectElement>(".told select")!;
  const name = drawn.selectedOptions[0]!.textContent!;
  await userEvent.selectOptions(page.getByLabelText("Run or vessel"), name);
  await userEvent.selectOptions(page.getByLabelText("Colour the sun sees"), "white");
  await expect.poll(peak).toBeLessThan(before - 8);
  expect(store.plan.runs.some(({ colour }) => colour === "white")).toBe(true);
  store.undo();
  show();
  await expect.poll(peak).toBe(before);
});

test("the night is typed there: a plan that says nothing of weather is told a plain frost, and gets one", async () => {
  const { weather: _, ...silent } = yard;
  const { view, store } = await weatherRoom(silent);
  expect(shown(view)).toContain("-5 °C for 12 h");
  const low = page.getByLabelText("Lowest of the night");
  await userEvent.fill(low, "-15");
  await userEvent.keyboard("{Enter}");
  await expect.poll(() => shown(view)).toContain("-15 °C for 12 h");
  expect(store.plan.weather).toEqual({ high: "21 °C", frost: { low: "-15 °C" } });
});

test("how hot it gets is typed there, birds or none; what they drink that day follows, and without birds it says where to tell of them", async () => {
  const { view, store } = await weatherRoom(yard);
  const litres = () => Number(/The birds drink ([\d.]+) L that day/.exec(shown(view))?.[1]);
  await userEvent.fill(page.getByLabelText("Warmest of the hot day"), "40");
  await userEvent.keyboard("{Enter}");
  await expect.poll(() => shown(view)).toContain("27 °C to 40 °C, clear sun");
  expect(store.plan.weather).toMatchObject({ high: "33 °C", hotSpell: { high: "40 °C" } });
  const hot = litres();
  await userEvent.fill(page.getByLabelText("Warmest of the hot day"), "");
  await userEvent.keyboard("{Enter}");
  await expect.poll(() => shown(view)).toContain("20 °C to 33 °C, clear sun");
  expect(hot).toBeGreaterThan(1.2 * litres());
  expect(store.plan.weather?.hotSpell).toBeUndefined();
  document.body.replaceChildren();
  const { pens: _, ...birdless } = yard;
  const other = await weatherRoom(birdless);
  await userEvent.fill(page.getByLabelText("Warmest of the hot day"), "40");
  await userEvent.keyboard("{Enter}");
  await expect.poll(() => shown(other.view)).toContain("to 40 °C, clear sun");
  expect(shown(other.view)).toContain("Go to the birds");
});

/** Gives the room a file, as if it had been chosen. */
function open(view: HTMLElement, name: string, content: string): void {
  const input = view.shadowRoot!.querySelector<HTMLInputElement>("#air-file")!;
  const files = new DataTransfer();
  files.items.add(new File([content], name));
  input.files = files.files;
  input.dispatchEvent(new Event("change"));
}

test("a daily record tells nights of frost and hot days by year; what it leaves open is asked, and a bad one told", async () => {
  const { view } = await weatherRoom(yard, 336);
  expect(shown(view)).toContain("pan: ");
  open(
    view,
    "own.csv",
    "date,tmin,tmax\n2024-12-31,28,40\n2025-01-01,14,36\n2025-07-01,61,88\n2025-07-02,63,93\n",
  );
  await userEvent.click(page.getByRole("button", { name: "F", exact: true }));
  await expect
    .poll(() => view.shadowRoot!.querySelector("#by-year ~ div table"), { timeout: 20_000 })
    .not.toBeNull();
  expect(shown(view)).toMatch(
    /Nights of frost ?[\d.]+ nights of frost a year, the coldest -10 °C on 2025-01-01/,
  );
  expect(shown(view)).toMatch(
    /Hot days ?[\d.]+ days a year of 30 °C and more, the hottest 34 °C on 2025-07-02\. Water standing in/,
  );
  unfold(view);
  expect(await accessibilityFaults(view)).toEqual([]);
  expect(view.scrollWidth).toBeLessThanOrEqual(336);
  open(view, "none.csv", "date,rain\n2025-01-01,3\n");
  await expect.poll(() => shown(view)).toContain('"none.csv" could not be read. The record before it stays.');
});
