import type { Plan } from "@headfall/hydraulics";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { page, userEvent } from "vitest/browser";
import { accessibilityFaults } from "./accessibility.js";
import { dayRoom, withHens } from "./day-host.js";
import { alderBank } from "./plan-host.js";

const CROWDED: Plan = withHens(900);

afterEach(() => document.body.replaceChildren());

const shown = (view: HTMLElement) => view.shadowRoot!.textContent!.replace(/\s+/g, " ");
const slider = () => page.getByRole("slider", { name: "Time of day" });
const timeOf = () => Number((slider().element() as HTMLInputElement).value);

test("headfall-day has nothing that axe objects to, in light and in dark, and fits into 336 px", async () => {
  const view = await dayRoom(CROWDED, 336);
  for (const details of view.shadowRoot!.querySelectorAll("details")) details.open = true;
  expect(await accessibilityFaults(view)).toEqual([]);
  view.style.colorScheme = "dark";
  expect(await accessibilityFaults(view)).toEqual([]);
  expect(view.scrollWidth).toBeLessThanOrEqual(336);
});

test("it tells what the day was like, who came short, and what each drinker did", async () => {
  const view = await dayRoom(CROWDED);
  expect(shown(view)).toMatch(/\d+ of 900 birds came short/);
  expect(shown(view)).toMatch(/hens: 900 birds came \d+ times and drank/);
  expect(shown(view)).toMatch(/\d+ of 900, Laying hen of hens: .* missing together; the worst got \d+ %/);
  const rows = view.shadowRoot!.querySelectorAll("section[aria-labelledby=each] tbody tr");
  expect(rows.length).toBe(view.checked!.line.drinkers.count);
});

test("birds stand at their drinkers on the drawing, as many as the words say", async () => {
  const view = await dayRoom(withHens(60));
  const birds = view.shadowRoot!.querySelectorAll(".marks .bird.drinks");
  const more = [...view.shadowRoot!.querySelectorAll(".marks text")].map(
    (text) => Number(text.textContent) - 1,
  );
  const drink = birds.length + more.reduce((sum, one) => sum + one, 0);
  expect(drink).toBeGreaterThan(1);
  expect(shown(view)).toContain(`${drink} birds drink at`);
});

test("the slider goes over the day by keyboard and says the time and who drinks", async () => {
  const view = await dayRoom(CROWDED);
  (slider().element() as HTMLElement).focus();
  await userEvent.keyboard("{Home}");
  await expect
    .element(slider())
    .toHaveAttribute("aria-valuetext", expect.stringMatching(/^00:00, \d+ drink, 0 wait$/));
  await userEvent.keyboard("{ArrowRight}");
  expect(timeOf()).toBe(60);
  await userEvent.keyboard("{End}");
  await expect.element(slider()).toHaveAttribute("aria-valuetext", expect.stringMatching(/^24:00/));
  await userEvent.click(page.getByRole("button", { name: "Go to the busiest moment" }));
  const most = shown(view).match(/At most (\d+) drank at once \((\d\d:\d\d)\)/)!;
  await expect
    .element(slider())
    .toHaveAttribute("aria-valuetext", expect.stringContaining(`${most[2]}, ${most[1]} drink`));
});

describe("with a clock of the test's own", () => {
  beforeEach(() => vi.restoreAllMocks());
  afterEach(() => vi.useRealTimers());

  const playFor = async (view: Awaited<ReturnType<typeof dayRoom>>, milliseconds: number) => {
    vi.advanceTimersByTime(milliseconds);
    await view.updateComplete;
  };
  const press = (view: HTMLElement, name: string) =>
    [...view.shadowRoot!.querySelectorAll("button")]
      .find(({ textContent }) => textContent?.trim() === name)!
      .click();
  const fakeFrames = () =>
    vi.useFakeTimers({ toFake: ["requestAnimationFrame", "cancelAnimationFrame", "performance"] });

  test("it stands still until it is played, goes on by its speed, and stands still again", async () => {
    const view = await dayRoom(withHens(60));
    fakeFrames();
    const before = timeOf();
    await playFor(view, 2000);
    expect(timeOf()).toBe(before);
    press(view, "Play");
    await playFor(view, 2000);
    // Two seconds at five minutes a second, to a picture and the slider's minute.
    expect(Math.abs(timeOf() - before - 600)).toBeLessThanOrEqual(66);
    press(view, "Pause");
    const paused = timeOf();
    await playFor(view, 2000);
    expect(timeOf()).toBe(paused);
    expect(shown(view)).toContain("Play");
  });

  test("it ends with the day, and begins anew when played again", async () => {
    const view = await dayRoom(withHens(60));
    fakeFrames();
    press(view, "Play");
    for (let second = 0; second < 400 && timeOf() < 86_400; second += 1) await playFor(view, 1000);
    expect(timeOf()).toBe(86_400);
    await view.updateComplete;
    press(view, "Play");
    await playFor(view, 1000);
    expect(timeOf()).toBeLessThanOrEqual(360);
  });

  test("where less motion is wanted its picture moves once a second only", async () => {
    const real = window.matchMedia.bind(window);
    vi.spyOn(window, "matchMedia").mockImplementation((query) =>
      real(query.includes("reduced-motion") ? "all" : query),
    );
    const view = await dayRoom(withHens(60));
    fakeFrames();
    const before = timeOf();
    press(view, "Play");
    await playFor(view, 900);
    expect(timeOf()).toBe(before);
    await playFor(view, 200);
    expect(timeOf()).toBeGreaterThan(before);
  });
});

test("a press on a chart goes to that time", async () => {
  const view = await dayRoom(withHens(60));
  const chart = view.shadowRoot!.querySelector<SVGElement>("svg.chart")!;
  const box = chart.getBoundingClientRect();
  chart.dispatchEvent(new MouseEvent("click", { clientX: box.right, clientY: box.top + 10, composed: true }));
  await view.updateComplete;
  expect(timeOf()).toBe(86_400);
});

test("another day is another, and day 1 comes back as it was", async () => {
  const view = await dayRoom(withHens(60));
  const told = () => view.shadowRoot!.querySelector("section[aria-labelledby=told] p")!.textContent;
  const first = told();
  await userEvent.click(page.getByRole("button", { name: "Another day" }));
  await expect.poll(told).not.toBe(first);
  await userEvent.click(page.getByRole("button", { name: "Back to day 1" }));
  await expect.poll(told).toBe(first);
});

test("in the hot spell, and to size on, birds drink more", async () => {
  const view = await dayRoom(withHens(60));
  const drawn = () => Number(/: ([\d.]+) L drawn/.exec(shown(view))?.[1]);
  const usual = drawn();
  expect(usual).toBeGreaterThan(0);
  await userEvent.selectOptions(page.getByLabelText("Birds drink"), "size");
  await expect.poll(drawn).toBeGreaterThan(usual);
  const sized = drawn();
  await userEvent.selectOptions(page.getByLabelText("Weather"), "hot");
  await expect.poll(drawn).toBeGreaterThan(sized);
});

test("a hundred days are run beside the page, can be cancelled, and are told in a table", async () => {
  const view = await dayRoom(CROWDED);
  await userEvent.click(page.getByRole("button", { name: "Run a hundred days" }));
  await expect.element(page.getByRole("progressbar", { name: "Days run" })).toBeInTheDocument();
  await userEvent.click(page.getByRole("button", { name: "Cancel" }));
  expect(view.shadowRoot!.querySelector("progress")).toBeNull();
  view.plan = withHens(20);
  await userEvent.click(page.getByRole("button", { name: "Run a hundred days" }));
  await expect
    .poll(() => view.shadowRoot!.querySelectorAll("table.days tbody tr").length, { timeout: 40_000 })
    .toBe(7);
  expect(shown(view)).toMatch(/hens: 20 birds, some short on \d+ % of the days/);
}, 60_000);

test("a number by formula tells how it was got, and the rules of the day are written down", async () => {
  const view = await dayRoom(withHens(60));
  view.shadowRoot!.querySelector<HTMLElement>("section[aria-labelledby=told] button.number")!.click();
  await expect.element(page.getByRole("heading", { name: /^Mean wait/ }).first()).toBeInTheDocument();
  expect(shown(view)).toMatch(/the line was solved for those at work: \d+ different sets/);
});

test("where nobody drinks it says so and leads to the birds", async () => {
  const view = await dayRoom(alderBank);
  const wanted = vi.fn();
  document.addEventListener("room-wanted", (event) => wanted((event as CustomEvent).detail), { once: true });
  await userEvent.click(page.getByRole("button", { name: "Go to the birds" }));
  expect(wanted).toHaveBeenCalledWith({ room: "birds" });
  for (const words of ["drown", "every day", "ask a vet"]) expect(shown(view)).toContain(words);
  expect(await accessibilityFaults(view)).toEqual([]);
});

test("a figure of the day is one tap from how it was got, and a drinker's are one stop of the tab key", async () => {
  const view = await dayRoom(CROWDED);
  const root = view.shadowRoot!;
  for (const details of root.querySelectorAll("details")) details.open = true;
  const wait = [...root.querySelectorAll<HTMLElement>(".figures div")].find((row) =>
    row.textContent!.startsWith("Mean wait"),
  )!;
  wait.querySelector<HTMLElement>("button")!.focus();
  await userEvent.keyboard("{Enter}");
  const dialog = page.getByRole("dialog");
  await expect.element(dialog).toHaveTextContent("mean wait = waited by all / times");
  await expect.element(dialog).toHaveTextContent("Who found no water is no wait");
  await userEvent.keyboard("{Escape}");
  const each = root.querySelector("section[aria-labelledby=each]")!;
  expect(each.querySelectorAll("[data-how]:not([tabindex='-1'])").length).toBe(1);
  each.querySelector<HTMLElement>("[tabindex='0'][data-how]")!.focus();
  await userEvent.keyboard("{ArrowRight}{ArrowRight}{Enter}");
  await expect.element(dialog).toHaveTextContent("Time with a bird at it");
});

test("birds that found no water are told by themselves, from when none came", async () => {
  const view = await dayRoom(CROWDED);
  expect(shown(view)).toMatch(/None of their drinkers gave water .* of the light, first at \d\d:\d\d/);
  expect(shown(view)).toMatch(/\d+ times a bird found no water and went without; that counts as no wait/);
  expect(shown(view)).toMatch(/No water ?from \d\d:\d\d/);
});

test("the grade line drawn is called that of an ordinary hour", async () => {
  const view = await dayRoom(withHens(60));
  const key = view.shadowRoot!.querySelector("headfall-profile")!.shadowRoot!.querySelector("figcaption")!;
  expect(key.textContent).toContain("grade line of an ordinary hour");
  expect(key.textContent).not.toContain("now");
});

test("of two pens on two ways that of the busiest is drawn, and each way tells whose it is", async () => {
  const [first, second] = [alderBank.runs[1]!, alderBank.runs[2]!];
  const apart: Plan = {
    ...alderBank,
    runs: [alderBank.runs[0]!, first, { ...second, drinkers: { id: "cups", kind: "cup-float", count: 4 } }],
    pens: [
      { id: "few", birds: { kind: "hen", count: 4 }, drinkers: ["hens"] },
      { id: "many", birds: { kind: "hen", count: 300 }, drinkers: ["cups"] },
    ],
  };
  const view = await dayRoom(apart);
  const ways = page.getByRole("combobox", { name: "Drawn as far as" });
  const chosen = () => {
    const { selectedOptions } = ways.element() as HTMLSelectElement;
    return selectedOptions[0]!.textContent!.trim();
  };
  expect(chosen()).toContain("many");
  expect(view.shadowRoot!.querySelectorAll(".marks .bird.drinks").length).toBeGreaterThan(0);
  const other = [...(ways.element() as HTMLSelectElement).options].find(
    (option) => !option.textContent!.includes("many"),
  )!;
  await userEvent.selectOptions(ways, other.value);
  expect(chosen()).toContain("few");
  await userEvent.click(page.getByRole("button", { name: "Go to the busiest moment" }));
  await expect.poll(chosen).toContain("many");
});
