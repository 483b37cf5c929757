import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";

/** An upright tub of half a square metre (79.8 cm across), and nipples so low under it that all of it is drunk. */
export const AREA = (Math.PI / 4) * 0.798 ** 2;
export const tubPlan = (full: string, more: Record<string, unknown> = {}) => ({
  headfall: 1,
  day: "2026-07-04",
  sources: [
    {
      ...{ id: "tub", vessel: { shape: "upright", diameter: "79.8 cm", height: "1 m" }, stand: "40 cm" },
      ...{ outlet: "0 cm", level: { full, lowest: "0 cm" } },
    },
  ],
  runs: [{ id: "lane", length: "2 m", fall: "30 cm", drinkers: { kind: "nipple-side-action", count: 6 } }],
  weather: { high: "21 degC", light: "16 h" },
  pens: [{ id: "hens", birds: { kind: "hen", count: 20, age: "60 weeks", lay: "90 %" } }],
  ...more,
});
export function read(document: unknown) {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}
