import { expect, test } from "vitest";
import { writeMargin, writeMass, writeVelocity } from "../../../packages/hydraulics/src/report/words.js";

test.each([
  [182.4, "182 kg", "402 lb"],
  [4.53592, "4.5 kg", "10 lb"],
  [0, "0.0 kg", "0 lb"],
])("writeMass(%d kg) is %s, or %s", (mass, metric, us) => {
  expect(writeMass(mass, "metric")).toBe(metric);
  expect(writeMass(mass, "us")).toBe(us);
});

test.each([
  [0.0921, "9.2 cm/s", "0.3 ft/s"],
  [-1.524, "1.52 m/s", "5 ft/s"],
  [0, "0 cm/s", "0 ft/s"],
  [1, "1 m/s", "3.3 ft/s"],
])("writeVelocity(%d m/s) is %s, or %s", (velocity, metric, us) => {
  expect(writeVelocity(velocity, "metric")).toBe(metric);
  expect(writeVelocity(velocity, "us")).toBe(us);
});

test("writeMargin always has its sign", () => {
  expect(writeMargin(0.152, "metric")).toBe("+15 cm");
  expect(writeMargin(-0.152, "us")).toBe("-6 in");
});
