import { expect, test } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { frostNightOf, hotDayOf } from "../../../packages/hydraulics/src/model/extremes.js";
import { createTypedValues } from "../../../packages/hydraulics/src/model/typed-values.js";

const reading = checkDocument({
  headfall: 1,
  sources: [{ vessel: "drum-55gal-plastic" }],
  runs: [{ length: "3 m" }],
  weather: { high: "10 C", frost: { low: "-8 C", high: "2 C", hours: "9 h", wind: "3 m/s" } },
});
if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
const { plan } = reading;

test("frostNightOf is the night that the plan tells, and of what is asked that first", () => {
  const told = { low: -8, high: 2, hours: 9 * 3600, wind: 3 };
  expect(frostNightOf(plan, {}, createTypedValues())).toEqual(told);
  for (const asked of [{ low: -12 }, { high: 5 }, { hours: 3600 }, { wind: 0 }])
    expect(frostNightOf(plan, asked, createTypedValues())).toEqual({ ...told, ...asked });
  // The day after is never colder than the night.
  expect(frostNightOf(plan, { low: 4 }, createTypedValues()).high).toBe(4);
});

test("hotDayOf is the plan's hot spell, else its own air or a hot day, whichever is hotter", () => {
  const weather = { high: 21, low: 11, light: 12 * 3600, dawn: 6 * 3600, hotSpell: undefined };
  const hot = (more: object) =>
    hotDayOf(plan, { ...weather, ...more } as never, {}, createTypedValues()).high;
  const usual = hot({});
  expect(usual).toBeGreaterThan(21);
  expect(hot({ high: usual + 4 })).toBe(usual + 4);
  expect(hot({ hotSpell: { high: 30, low: 20, days: 3 } })).toBe(30);
  expect(hotDayOf(plan, weather as never, { high: 41 }, createTypedValues()).high).toBe(41);
});
