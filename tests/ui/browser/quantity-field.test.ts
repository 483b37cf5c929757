import { HeadfallQuantity, type QuantityChangedEvent } from "@headfall/ui";
import { afterEach, beforeEach, expect, test } from "vitest";
import { cdp, page, userEvent } from "vitest/browser";
import { accessibilityFaults } from "./accessibility.js";

if (customElements.get("headfall-quantity") === undefined)
  customElements.define("headfall-quantity", HeadfallQuantity);

let field: HeadfallQuantity;
let told: QuantityChangedEvent[];
const slider = () => page.getByRole("slider", { name: "Stand, slider" });
const text = () => page.getByRole("textbox", { name: "Stand" });

beforeEach(async () => {
  field = new HeadfallQuantity();
  Object.assign(field, { label: "Stand", typed: "60 cm", value: 0.6, min: 0, max: 2.5 });
  told = [];
  field.addEventListener("quantity-changed", (event) => told.push(event));
  document.body.append(field);
  await field.updateComplete;
});
afterEach(() => document.body.replaceChildren());

async function type(words: string): Promise<void> {
  await userEvent.fill(text(), words);
  await userEvent.keyboard("{Enter}");
}

test("headfall-quantity has nothing that axe objects to, also while it shows a problem", async () => {
  expect(await accessibilityFaults(field)).toEqual([]);
  await type("twelve furlongs");
  await expect.element(text()).toHaveAttribute("aria-invalid", "true");
  expect(await accessibilityFaults(field)).toEqual([]);
});

test("headfall-quantity shows what was typed, and the slider says the same aloud", async () => {
  await expect.element(text()).toHaveValue("60 cm");
  await expect.element(slider()).toHaveAttribute("aria-valuetext", "60 cm");
});

test("headfall-quantity gives a thumb 44 px to press", () => {
  for (const input of field.shadowRoot!.querySelectorAll("input")) {
    expect(input.getBoundingClientRect().height).toBeGreaterThanOrEqual(44);
  }
});

test("when the slider is moved by an arrow key, the text follows by one step and the change is told", async () => {
  (slider().element() as HTMLInputElement).focus();
  await userEvent.keyboard("{ArrowRight}");
  await expect.element(text()).toHaveValue("61 cm");
  expect(told.map(({ typed }) => typed)).toEqual(["61 cm"]);
});

test("when feet and inches are typed, they are kept as typed and told in SI", async () => {
  await type("2 ft 6 in");
  await expect.poll(() => told.length).toBe(1);
  expect(told[0]!.typed).toBe("2 ft 6 in");
  expect(told[0]!.value).toBeCloseTo(0.762, 12);
});

test("when a bare number is typed, it is taken in the field's own unit", async () => {
  await type("75");
  await expect.poll(() => told.map(({ typed }) => typed)).toEqual(["75 cm"]);
});

test("when a sum is typed after an equals sign, its result is told", async () => {
  await type("=3*24 cm + 1 ft");
  // The part that works out sums is loaded now.
  await expect.poll(() => told.length).toBe(1);
  expect(told[0]!.value).toBeCloseTo(0.72 + 0.3048, 3);
});

test("when a sum is no length, the field says so and tells nobody", async () => {
  await type("=3 kg");
  const words = page.getByText('"=3 kg" does not come out as a length');
  await expect.element(words).toBeVisible();
  expect(told).toEqual([]);
});

test("when what is typed cannot be read, the field says what is allowed, and Escape takes it back", async () => {
  await type("twelve furlongs");
  await expect.element(page.getByText(/A length is a number with its unit/)).toBeVisible();
  expect(told).toEqual([]);
  await userEvent.keyboard("{Escape}");
  await expect.element(text()).toHaveValue("60 cm");
});

test("when units are US, the slider writes inches and the text shows a metric value in them", async () => {
  field.system = "us";
  await expect.element(text()).toHaveValue("1 ft 11.5 in");
});

test("when a sum takes away and divides, its result is told", async () => {
  await type("=(2 m - 50 cm) / 3");
  await expect.poll(() => told.map(({ typed }) => typed)).toEqual(["50 cm"]);
});

test("when the slider is slid twice, each slide has one gesture of its own, and typing has none", async () => {
  const input = slider().element() as HTMLInputElement;
  for (const [values, end] of [
    [["0.7", "0.8"], "change"],
    [["0.9"], "change"],
  ] as const) {
    for (const value of values) {
      input.value = value;
      input.dispatchEvent(new Event("input", { bubbles: true }));
    }
    input.dispatchEvent(new Event(end, { bubbles: true }));
  }
  await type("1 m");
  await expect.poll(() => told.length).toBe(4);
  const [one, two, three, four] = told.map(({ gesture }) => gesture);
  expect(one).toBe(two);
  expect(three).not.toBe(one);
  expect(three).toMatch(/\S/);
  expect(four).toBeUndefined();
});

test("when something stands in, the field may be emptied, and shows what is taken for granted", async () => {
  field.standIn = "0 cm, taken for granted";
  await type("");
  await expect.poll(() => told.map(({ typed }) => typed)).toEqual([""]);
  await expect.element(text()).toHaveValue("");
  await expect.element(text()).toHaveAttribute("placeholder", "0 cm, taken for granted");
});

test("when a value comes from elsewhere while a hand is typing, no letter is lost", async () => {
  await userEvent.click(text());
  await userEvent.keyboard("{End}5");
  Object.assign(field, { typed: "90 cm", value: 0.9 });
  await field.updateComplete;
  await expect.element(text()).toHaveValue("60 cm5");
});

/** A finger that goes down at the middle of the slider, moves so far, and goes up. */
async function swipe(across: number, down: number): Promise<void> {
  const box = slider().element().getBoundingClientRect();
  const frame = window.frameElement?.getBoundingClientRect() ?? { x: 0, y: 0 };
  const scale = window.frameElement === null ? 1 : frameScale();
  const at = (part: number) => [
    {
      x: frame.x + scale * (box.x + box.width * 0.3 + across * part),
      y: frame.y + scale * (box.y + box.height / 2 + down * part),
    },
  ];
  const send = (type: string, touchPoints: { x: number; y: number }[]) =>
    cdp().send("Input.dispatchTouchEvent" as never, { type, touchPoints } as never);
  await send("touchStart", at(0));
  for (let step = 1; step <= 10; step++) {
    await send("touchMove", at(step / 10));
    await new Promise((done) => setTimeout(done, 20));
  }
  await send("touchEnd", []);
}

const frameScale = () =>
  window.frameElement!.getBoundingClientRect().width / (window.frameElement as HTMLIFrameElement).offsetWidth;

test("when a thumb slides along the slider, the value follows and the page stays", async () => {
  const tall = document.createElement("div");
  tall.style.height = "3000px";
  document.body.append(tall);
  await swipe(60, 2);
  await expect.poll(() => field.value).not.toBe(0.6);
  expect(window.scrollY).toBe(0);
});

test("when a thumb scrolls the page over the slider, the page moves and the value stays", async () => {
  const tall = document.createElement("div");
  tall.style.height = "3000px";
  document.body.append(tall);
  await swipe(0, -120);
  await expect.poll(() => window.scrollY).toBeGreaterThan(40);
  expect(field.value).toBe(0.6);
  window.scrollTo(0, 0);
});

test("when the page takes the finger for scrolling, what it moved on its way is put back in the same gesture", async () => {
  const input = slider().element() as HTMLInputElement;
  input.value = "1.9";
  input.dispatchEvent(new Event("input", { bubbles: true }));
  input.dispatchEvent(new PointerEvent("pointercancel", { bubbles: true }));
  expect(told.map(({ typed }) => typed)).toEqual(["190 cm", "60 cm"]);
  expect(told[0]!.gesture).toBe(told[1]!.gesture);
  await expect.element(text()).toHaveValue("60 cm");
});

test("when it counts, only whole numbers are taken", async () => {
  Object.assign(field, { kind: "count", typed: "8", value: 8, max: 24 });
  await field.updateComplete;
  await type("7.5");
  await expect.element(page.getByText('"7.5" is not a whole number')).toBeVisible();
  await type("9");
  await expect.poll(() => told.map(({ value }) => value)).toEqual([9]);
});
