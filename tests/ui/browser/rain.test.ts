import { afterEach, expect, test, vi } from "vitest";
import { page, userEvent } from "vitest/browser";
import { accessibilityFaults } from "./accessibility.js";
import { alderBank } from "./plan-host.js";
import {
  answered,
  clearTable,
  openText,
  rainLines,
  rainRoom,
  shown,
  underRoof,
  withHens,
} from "./rain-host.js";

afterEach(() => document.body.replaceChildren());

const unfold = (view: HTMLElement) => {
  for (const details of view.shadowRoot!.querySelectorAll("details")) details.open = true;
};

test("headfall-rain has nothing that axe objects to, in light and in dark, full and empty, and fits into 336 px", async () => {
  for (const plan of [alderBank, withHens]) {
    const { view } = await rainRoom(plan, 336);
    expect(await accessibilityFaults(view)).toEqual([]);
    expect(view.scrollWidth).toBeLessThanOrEqual(336);
    view.remove();
  }
  const { view } = await rainRoom(underRoof, 336);
  openText(view, "rain.csv", clearTable);
  await answered(view);
  unfold(view);
  expect(await accessibilityFaults(view)).toEqual([]);
  view.style.colorScheme = "dark";
  expect(await accessibilityFaults(view)).toEqual([]);
  expect(view.scrollWidth).toBeLessThanOrEqual(336);
});

test("all that can be pressed or typed into is 44 px high", async () => {
  const { view } = await rainRoom(underRoof, 336);
  openText(view, "rain.csv", clearTable);
  await answered(view);
  unfold(view);
  const low = [...view.shadowRoot!.querySelectorAll("button, select, summary, input")]
    .filter((each) => each.getBoundingClientRect().height < 44)
    .map((each) => each.outerHTML);
  expect(low).toEqual([]);
});

test("where nobody drinks it says so and leads to the birds", async () => {
  const { view } = await rainRoom(alderBank);
  const wanted = vi.fn();
  view.addEventListener("room-wanted", (event) => wanted((event as CustomEvent).detail));
  await userEvent.click(page.getByRole("button", { name: "Go to the birds" }));
  expect(wanted).toHaveBeenCalledWith({ room: "birds" });
  expect(shown(view)).toContain("Rain from a roof is not drinking water for people.");
});

test("a roof is put up in one edit, by keyboard, and goes with one undo", async () => {
  const { view, store, undo } = await rainRoom(withHens);
  await userEvent.click(page.getByLabelText("Area, seen from above"));
  await userEvent.keyboard("{Enter}");
  expect(shown(view)).toContain("How large is it?");
  await userEvent.keyboard("no idea{Enter}");
  await expect.poll(() => shown(view)).toContain('Found "no idea"');
  await userEvent.fill(page.getByLabelText("Area, seen from above"), "8");
  await userEvent.selectOptions(page.getByLabelText("Surface"), "metal");
  await userEvent.fill(page.getByLabelText("First flush a diverter keeps"), "5");
  await userEvent.keyboard("{Enter}");
  await expect
    .poll(() => store.plan.sources[0]!.roof)
    .toEqual({ area: "8 m2", kind: "metal", firstFlush: "5 L" });
  await expect.poll(() => shown(view)).toContain("92 % runs off (90 % to 95 %)");
  expect(view.shadowRoot!.activeElement?.textContent).toBe("Roof over barrel");
  undo();
  await expect.poll(() => shown(view)).toContain("No roof fills it yet.");
  expect(store.plan).toBe(withHens);
});

test("a roof that is there is changed, refused with a reason, and taken away", async () => {
  const { view, store } = await rainRoom(underRoof);
  await userEvent.fill(page.getByLabelText("First flush"), "200 m3");
  await userEvent.keyboard("{Tab}");
  await expect.poll(() => shown(view)).toMatch(/first ?flush/i);
  await expect
    .poll(() => view.shadowRoot!.querySelector('[role="alert"]')?.textContent ?? "")
    .toContain("10 m³");
  expect(store.plan.sources[0]!.roof).toEqual({ area: "8 m2", kind: "metal" });
  unfold(view);
  await userEvent.click(page.getByRole("button", { name: "Take the roof away" }));
  expect(store.plan.sources[0]!.roof).toBeUndefined();
});

test("days short, both ways begun full and empty, sizes and balance are told of a table that says everything", async () => {
  const { view } = await rainRoom(underRoof);
  openText(view, "rain.csv", clearTable);
  await answered(view);
  const text = shown(view);
  expect(text).toMatch(/Days short of water \d+ of 730, at most \d+ in a row/);
  expect(text).toContain(
    "rain.csv: 730 days, 2023-01-01 to 2024-12-30; wettest 14 mm. It has no temperatures.",
  );
  expect(text).toMatch(/June to August\d+/);
  expect(text).toContain("rain of the day counted, begun empty");
  expect(text).toMatch(/Unaccounted for ?0\.000 L/);
  expect(text).toMatch(/usable \(sequent peak\)/);
  expect(view.shadowRoot!.querySelectorAll("svg.calendar[role='img']")).toHaveLength(2);
});

test("an unclear unit is asked with what each would mean; the record before stays until it is answered", async () => {
  const { view } = await rainRoom(underRoof);
  openText(view, "first.csv", clearTable);
  await answered(view);
  openText(
    view,
    "mine.csv",
    ["date,rain", ...rainLines(400, (date, rain) => `${date},${rain * 4}`)].join("\n"),
  );
  await expect.poll(() => shown(view)).toContain('Which unit is the rain of "mine.csv" in?');
  expect(shown(view)).toContain("The most in a day is 56");
  expect(shown(view)).toContain("the wettest day had 1420 mm; hardly anywhere rains so much");
  expect(shown(view)).toContain("first.csv: 730 days");
  expect(view.shadowRoot!.activeElement?.id).toBe("rain-asked");
  await userEvent.keyboard("{Tab}{Enter}");
  await expect.poll(() => shown(view)).toContain("mine.csv: 400 days");
  // The button that was pressed is gone; the keyboard is where it was, not at the top of the page.
  expect(view.shadowRoot!.activeElement?.textContent).toBe("Record of rain");
  expect(shown(view)).toContain("wettest 56 mm");
});

test("dates that can be read two ways, and several places, are asked one after the other", async () => {
  const { view } = await rainRoom(underRoof);
  const lines = rainLines(12, (date, rain) => `${date.slice(8)}/02/2023,${rain}`);
  const text = [
    "date,rain mm,place",
    ...["Brook", "Hill"].flatMap((place) => lines.map((line) => `${line},${place}`)),
  ];
  openText(view, "two.csv", text.join("\n"));
  await userEvent.click(page.getByRole("button", { name: "Hill" }));
  await expect.poll(() => shown(view)).toContain("written day first or month first?");
  expect(shown(view)).toContain("2023-02-12");
  await userEvent.click(page.getByRole("button", { name: "Day first" }));
  await expect.poll(() => shown(view)).toContain("two.csv: 12 days, 2023-02-01 to 2023-02-12");
});

test("a faulty file tells where and what, the record before stays, and a question can be left", async () => {
  const { view } = await rainRoom(underRoof);
  openText(view, "first.csv", clearTable);
  await answered(view);
  openText(view, "bad.csv", "date,rain mm\n2024-01-01,3\n2024-01-02,wet\n");
  await expect.poll(() => shown(view)).toContain('"bad.csv" could not be read. The record before it stays.');
  expect(shown(view)).toContain('the record (line 3): found "wet". The rain of the day, a number');
  expect(shown(view)).toContain("first.csv: 730 days");
  openText(view, "sheet.xlsx", new Uint8Array([0x50, 0x4b, 3, 4]));
  await expect.poll(() => shown(view)).toContain("Save the sheet as CSV");
  openText(view, "mine.csv", "date,rain\n2024-01-01,3\n2024-01-02,1\n");
  await userEvent.click(page.getByRole("button", { name: "Not this file" }));
  expect(shown(view)).not.toContain("Which unit");
  expect(shown(view)).toContain("first.csv: 730 days");
});

test("a station file, packed, is read with its missing days told and marked", async () => {
  const { view } = await rainRoom(underRoof);
  const values = Array.from(
    { length: 31 },
    (_, k) => `${String(k < 29 ? (k % 7 === 0 ? 140 : 0) : -9999).padStart(5)}   `,
  );
  const line = `ZZ000099999202401PRCP${values.join("")}`;
  const packed = await new Response(
    new Blob([line]).stream().pipeThrough(new CompressionStream("gzip")),
  ).arrayBuffer();
  openText(view, "ZZ000099999.dly.gz", packed);
  await answered(view);
  expect(shown(view)).toContain("2 days (6.5 %) are not known; they are taken as dry.");
  expect(view.shadowRoot!.querySelector(".year .unknown")!.getAttribute("d")!.split("M")).toHaveLength(3);
});

test("one day is looked at by its square, by its date, and short day by short day", async () => {
  const { view } = await rainRoom(underRoof);
  openText(view, "rain.csv", clearTable);
  await answered(view);
  const told = () =>
    view
      .shadowRoot!.querySelector("[aria-labelledby='calendar'] [role='status']")!
      .textContent!.replace(/\s+/g, " ");
  expect(told()).toMatch(/2023-01-01.*14 mm of rain/);
  const calendar = view.shadowRoot!.querySelector("svg.calendar[role='img']")!;
  const box = calendar.getBoundingClientRect();
  const scale = box.width / 336;
  calendar.dispatchEvent(
    // The third of February.
    new MouseEvent("click", {
      clientX: box.left + (26 + 24) * scale,
      clientY: box.top + (14 + 16) * scale,
      bubbles: true,
    }),
  );
  await expect.poll(told).toContain("2023-02-03");
  await userEvent.click(page.getByRole("button", { name: "Next short day" }));
  await expect.poll(told).toMatch(/2023-0[678].*Birds were short/);
  const date = view.shadowRoot!.querySelector<HTMLInputElement>("input[type='date']")!;
  date.value = "2024-07-19";
  date.dispatchEvent(new Event("change"));
  await expect.poll(told).toContain("2024-07-19");
  unfold(view);
  expect(shown(view)).toContain("Day by day, 2024 Jul");
});

test("a number tells how it was got, and another way of reckoning is shown where it is chosen", async () => {
  const { view } = await rainRoom(underRoof);
  openText(view, "rain.csv", clearTable);
  await answered(view);
  await userEvent.selectOptions(page.getByLabelText("Shown from here on"), "3");
  await expect
    .poll(() => view.shadowRoot!.querySelector("[aria-labelledby='litres'] caption")!.textContent)
    .toBe("rain of the day counted, begun empty");
  await userEvent.click(page.getByRole("button", { name: "0.000 L" }));
  await expect
    .element(page.getByText("The balance of water, rain of the day counted, begun empty"))
    .toBeInTheDocument();
  await expect.element(page.getByText(/unaccounted for = there at the start/)).toBeInTheDocument();
});

test("the example is fetched when it is chosen, with where it is from; US units are kept to", async () => {
  const { view } = await rainRoom(underRoof, 700, "us");
  expect(shown(view)).toContain("a data set of the US Government");
  await userEvent.click(page.getByRole("button", { name: "New York, 2012 to 2015" }));
  await answered(view);
  expect(shown(view)).toMatch(/New York, 2012 to 2015: 1461 days.*wettest [\d.]+ in\. It has temperatures/);
  expect(shown(view)).toMatch(/Came in off the roof ?[\d,]+\.\d{4} gal/);
});

test("an example that cannot be fetched says so, and what is there stays", async () => {
  const { view } = await rainRoom(underRoof);
  openText(view, "first.csv", clearTable);
  await answered(view);
  const fetching = vi.spyOn(window, "fetch").mockRejectedValue(new TypeError("no network"));
  unfold(view);
  await userEvent.click(page.getByRole("button", { name: "Seattle, 2012 to 2015" }));
  await expect
    .poll(() => shown(view))
    .toContain('"Seattle, 2012 to 2015" could not be read. The record before it stays.');
  expect(shown(view)).toContain("Is the network there?");
  fetching.mockRestore();
});

test("a vessel that no pen drinks from is told as such, not as one that never fails", async () => {
  const { view } = await rainRoom({
    ...underRoof,
    sources: [
      { id: "barrel", vessel: "drum-55gal-plastic", stand: "60 cm" },
      { id: "spare", vessel: "drum-55gal-plastic", stand: "60 cm", roof: { area: "8 m2" } },
    ],
    runs: underRoof.runs.map((run) => (run.id === "feed" ? { ...run, from: "barrel" } : run)),
  });
  expect(shown(view)).toContain("Roof over spare");
  openText(view, "rain.csv", clearTable);
  await answered(view);
  expect(shown(view)).toContain("No pen drinks from spare");
  expect(shown(view)).not.toContain("Yes:");
  await userEvent.selectOptions(page.getByLabelText("Vessel the rain fills"), "barrel");
  await expect.poll(() => shown(view)).toContain("No roof fills it yet.");
});
