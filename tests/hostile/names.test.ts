import { expect, test } from "vitest";
import { checkDocument } from "../../packages/hydraulics/src/document/read-plan.js";
import { checkPlan } from "../../packages/hydraulics/src/judge/check-plan.js";
import { writeCheckDocument } from "../../packages/hydraulics/src/report/check-document.js";
import { writeCheckText } from "../../packages/hydraulics/src/report/check-text.js";

const NAMES = [
  "<script>alert(1)</script>",
  '"><img src=x onerror=alert(1)>',
  "=HYPERLINK(1+1)",
  "@SUM(1+1)*cmd|' /C calc'!A0",
  "דלי ליד הלול",
  "حظيرة الدجاج",
  "🐔👩‍🌾 hens",
  "$&$1`'",
  "%s%n%d",
  "constructor",
  "e\u0301\u0323 e",
];

/** A plan that gives one strange name to everything that can have one. */
const planNamed = (name: string) => ({
  headfall: 1,
  name,
  note: `${name}\nsecond line`,
  sources: [{ id: name, vessel: "drum-55gal-plastic", stand: "50 cm" }],
  points: [{ id: `${name} p`, ground: "-10 cm" }],
  runs: [
    {
      id: `${name} r`,
      from: name,
      to: `${name} p`,
      length: "3 m",
      pipe: { name: `${name} pipe`, bore: "13 mm" },
      fittings: [{ name, k: 2 }],
      drinkers: { id: `${name} g`, kind: name, count: 2, every: "50 cm" },
    },
  ],
  ownDrinkers: {
    [name]: {
      readings: [
        { head: "25 cm", flow: "60 mL/min" },
        { head: "1 m", flow: "120 mL/min" },
      ],
      holdsUpTo: "3 m",
      need: "50 mL/min",
    },
  },
  money: name.slice(0, 12).replace(/[\ud800-\udbff]$/, ""),
});

test.each(NAMES)("a plan whose every name is %s is checked, and the name comes out as it went in", (name) => {
  const reading = checkDocument(planNamed(name));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const checking = checkPlan(reading.plan, { samples: 5 });
  if (!checking.ok) throw new Error(JSON.stringify(checking.problems));
  const document = writeCheckDocument(checking.checked, "metric");
  expect(document.plan.name).toBe(name);
  expect(document.drinkers.map(({ drinker, kind, run }) => [drinker, kind, run])).toEqual([
    [`${name} g 1`, name, `${name} r`],
    [`${name} g 2`, name, `${name} r`],
  ]);
  expect(document.drinkers[0]?.sentence.startsWith(`${name} g 1 (`)).toBe(true);
  expect(JSON.parse(JSON.stringify(document)).sources[0].source).toBe(name);
  expect(writeCheckText(checking.checked, "us", (text) => text)).toContain(`${name} g 1`);
});
