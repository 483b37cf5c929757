import { expect, test } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { buildSheetOf } from "../../../../packages/hydraulics/src/judge/build/build-of-plan.js";

test("a jug is held for a time that is easily read, long enough for a tenth of a litre", () => {
  const times = [15, 30, 60, 120, 180, 300];
  const chosen = [5, 12, 30, 60, 120, 400].map((quarter) => {
    const reading = checkDocument({
      headfall: 1,
      sources: [{ vessel: "drum-55gal-plastic", stand: "60 cm", level: { full: "60 cm" } }],
      ownDrinkers: {
        own: {
          readings: [
            { head: "25 cm", flow: `${quarter} mL/min` },
            { head: "1 m", flow: `${2 * quarter} mL/min` },
          ],
          holdsUpTo: "5 m",
          need: "10 mL/min",
        },
      },
      runs: [{ length: "1 m", drinkers: { kind: "own", count: 1 } }],
    });
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
    const answer = buildSheetOf(reading.plan, { samples: 4, weeks: 0 });
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    const { seconds, volume } = answer.sheet.jugs[0]!;
    const flow = volume / seconds;
    for (const shorter of times.filter((time) => time < seconds)) expect(flow * shorter).toBeLessThan(1e-4);
    if (seconds < 300) expect(volume).toBeGreaterThanOrEqual(1e-4);
    return seconds;
  });
  expect(chosen).toEqual([300, 300, 120, 60, 30, 15]);
});
