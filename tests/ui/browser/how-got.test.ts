import { html, render } from "lit";
import { afterEach, beforeEach, expect, test } from "vitest";
import { userEvent } from "vitest/browser";
import type { HowSubject } from "../../../packages/ui/src/kernels/how-got/subject.js";
import { HeadfallHow } from "../../../packages/ui/src/verdicts/how-element.js";
import type { HowWantedEvent } from "../../../packages/ui/src/verdicts/how-wanted-event.js";
import { numberButton } from "../../../packages/ui/src/verdicts/number-button.js";
import "../../../packages/ui/src/define-rest.js";
import { checkedExample } from "../fixtures/checked-example.js";
import { accessibilityFaults } from "./accessibility.js";

const HEAD: HowSubject = { of: "drinkerHead", drinker: 3, moment: "fullBusiest" };
let page: HTMLElement;
let how: HeadfallHow;

/** A page with two numbers, a field, and the panel wired as the line wires it. */
beforeEach(async () => {
  page = document.createElement("main");
  document.body.append(page);
  how = new HeadfallHow();
  Object.assign(how, checkedExample());
  render(
    html`<p>Head ${numberButton("48 cm", HEAD)} mass ${numberButton("200 kg", { of: "sourceMass", source: 0 })}</p>
      <label>Stand <input type="text" /></label>
      <p id="elsewhere">Elsewhere</p>`,
    page,
  );
  page.append(how);
  page.addEventListener("how-wanted", (event: HowWantedEvent) => {
    how.subject = event.subject;
  });
});
afterEach(() => document.body.replaceChildren());

const panel = () => how.shadowRoot!.querySelector<HTMLElement>(".panel");
const words = () => panel()?.textContent?.replace(/\s+/g, " ").trim() ?? "";
const title = () => how.shadowRoot!.querySelector("#title")?.textContent;
const number = (at: number) => page.querySelectorAll<HTMLElement>("[data-how]")[at]!;
const inside = (name: string) =>
  [...how.shadowRoot!.querySelectorAll<HTMLElement>("button")].find((button) =>
    (button.getAttribute("aria-label") ?? button.textContent ?? "").includes(name),
  )!;

async function open(at = 0): Promise<void> {
  await userEvent.click(number(at));
  await expect.poll(() => panel()?.matches(":popover-open")).toBe(true);
}

test("headfall-how, open, has nothing that axe objects to, and neither have the numbers", async () => {
  await open();
  expect(await accessibilityFaults(page)).toEqual([]);
  how.subject = { of: "runLoss", run: 0, law: "darcyWeisbach" };
  await how.updateComplete;
  expect(await accessibilityFaults(page)).toEqual([]);
});

test("when a number is pressed, the panel tells formula, figures, range, second opinion and source", async () => {
  await open();
  expect(title()).toBe("Head at “pen 4”, full and busiest");
  expect(words()).toContain("head = water surface − drinker's height − lost in the pipe");
  expect(words()).toMatch(/Second opinion, Darcy-Weisbach: [\d.]+ m/);
  expect(words()).toContain("outside the range it was made for");
  expect(words()).toMatch(/Source: .*\[hazen-williams-si\]/);
  expect(how.shadowRoot!.activeElement?.id).toBe("title");
});

test("when Escape is pressed, the panel closes and the number has the focus again", async () => {
  await open();
  let closed = 0;
  page.addEventListener("how-closed", () => closed++);
  await userEvent.keyboard("{Escape}");
  await expect.poll(panel).toBeNull();
  expect(closed).toBe(1);
  expect(how.subject).toBeUndefined();
  expect(document.activeElement).toBe(number(0));
});

test("when its own button is pressed, the panel closes and the number has the focus again", async () => {
  await open();
  await userEvent.click(inside("Close"));
  await expect.poll(panel).toBeNull();
  expect(document.activeElement).toBe(number(0));
});

test("when elsewhere is pressed, the panel closes; a field or a drag leaves it open", async () => {
  await open();
  await userEvent.click(page.querySelector("input")!);
  expect(panel()).not.toBeNull();
  const elsewhere = page.querySelector("#elsewhere")!;
  const at = (type: string, x: number) =>
    elsewhere.dispatchEvent(
      new PointerEvent(type, { clientX: x, clientY: 5, bubbles: true, composed: true }),
    );
  at("pointerdown", 10);
  at("pointerup", 90);
  await how.updateComplete;
  expect(panel()).not.toBeNull();
  await userEvent.click(elsewhere);
  await expect.poll(panel).toBeNull();
});

test("when another number is pressed, the panel tells of that one", async () => {
  await open();
  await userEvent.click(number(1));
  await expect.poll(title).toBe("Mass on the stand of “barrel” when full");
});

test("when the plan changes, the open panel follows", async () => {
  await open();
  const before = words();
  Object.assign(how, checkedExample({ stand: "90 cm" }));
  await how.updateComplete;
  expect(words()).not.toBe(before);
  expect(panel()!.matches(":popover-open")).toBe(true);
});

test("when the part is gone from the plan, the panel says so", async () => {
  await open();
  Object.assign(how, checkedExample({ drinkers: 2 }));
  await how.updateComplete;
  expect(words()).toContain("this part is gone");
});

test("when the units are changed, the open panel writes in the others", async () => {
  await open();
  how.system = "us";
  await how.updateComplete;
  expect(words()).toMatch(/\d in\b/);
  expect(words()).not.toMatch(/\d cm\b/);
});

test("when a number inside is pressed, the panel tells of it, and Back leads back", async () => {
  await open();
  await userEvent.click(inside("water surface"));
  await expect.poll(title).toBe("Surface of “barrel”, full and busiest");
  await userEvent.click(inside("Back"));
  await expect.poll(title).toBe("Head at “pen 4”, full and busiest");
  expect(inside("Back")).toBeUndefined();
});

test("hostile names are shown as text", async () => {
  const { checked, plan } = checkedExample();
  const name = `<img src=x onerror="document.title='hit'">`;
  const drinkers = checked.drinkers.map((drinker) => ({ ...drinker, drinker: name }));
  Object.assign(how, { checked: { ...checked, drinkers }, plan });
  await open();
  expect(title()).toContain(name);
  expect(how.shadowRoot!.querySelector("img")).toBeNull();
});
