import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { buildSheetOf } from "../../../../packages/hydraulics/src/judge/build/build-of-plan.js";

export const PIPE = "pvc-sch40-3/4";

/** A barrel on a stand, a hose to a tee, and two lanes from there, one with cups. */
export function sheetOf(
  more: Record<string, unknown> = {},
  runs: Record<string, Record<string, unknown>> = {},
  others: readonly Record<string, unknown>[] = [],
) {
  const reading = checkDocument({
    headfall: 1,
    sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "60 cm" }],
    points: [
      { id: "tee", ground: "0 cm", above: "30 cm" },
      { id: "hump", ground: "0 cm", above: "50 cm", bleed: true },
    ],
    runs: [
      { id: "far", from: "hump", length: "3 m", fall: "50 cm", pipe: PIPE, ...runs["far"] },
      {
        ...{ id: "left", from: "tee", length: "8 m", fall: "30 cm", pipe: PIPE },
        ...{ drinkers: { id: "nipples", kind: "nipple-side-action", count: 3 }, ...runs["left"] },
      },
      {
        ...{ id: "right", from: "tee", to: "hump", length: "3 m", pipe: PIPE },
        ...{ drinkers: { id: "cups", kind: "cup-float", count: 2 }, ...runs["right"] },
      },
      { id: "hose", from: "barrel", to: "tee", length: "2 m", pipe: PIPE, ...runs["hose"] },
      ...others,
    ],
    shelf: [{ pipe: PIPE, sold: "3 m" }],
    ...more,
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const answer = buildSheetOf(reading.plan, { samples: 1, weeks: 0 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.sheet;
}
