import { HeadfallQuantity, type QuantityChangedEvent } from "@headfall/ui";
import { afterEach, beforeEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import "../../../packages/ui/src/define.js";
import { accessibilityFaults } from "./accessibility.js";

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
  await expect.poll(() => told.length, { timeout: 10_000 }).toBe(1);
  expect(told[0]!.value).toBeCloseTo(0.72 + 0.3048, 3);
});

test("when a sum is no length, the field says so and tells nobody", async () => {
  await type("=3 kg");
  const words = page.getByText('"=3 kg" does not come out as a length');
  await expect.element(words, { timeout: 10_000 }).toBeVisible();
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

test("when it counts, only whole numbers are taken", async () => {
  Object.assign(field, { kind: "count", typed: "8", value: 8, max: 24 });
  await field.updateComplete;
  await type("7.5");
  await expect.element(page.getByText('"7.5" is not a whole number')).toBeVisible();
  await type("9");
  await expect.poll(() => told.map(({ value }) => value)).toEqual([9]);
});
