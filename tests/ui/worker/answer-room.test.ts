import { expect, test } from "vitest";
import { checkDocument, readAirRecord, writeProblem } from "../../../packages/hydraulics/src/index.js";
import { answerRoom } from "../../../packages/ui/src/worker/answer-room.js";

const reading = checkDocument({
  headfall: 1,
  sources: [],
  runs: [],
  pens: [{ id: "hens", birds: { kind: "hen", count: 5 }, waterers: [{ id: "fount", kind: "fount-1gal" }] }],
});
if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
const { plan } = reading;
const day = "2026-07-04";

test("how long the water lasts, asked of a plan without a line, is answered that there is none", () => {
  const told = answerRoom({ kind: "time", plan, day, daysAway: 5, source: 0 });
  if (told.ok) throw new Error("there is no line");
  expect(told.problems.map(writeProblem)).toEqual([
    "sources: found a list of 0. This is asked of a line, and the plan has none. Add a vessel and a run; what founts and pans hold is told in the room Yard.",
  ]);
});

test("a daily record of the air is read, and gone through with the plan", () => {
  const text = "date,tmin C,tmax C\n2025-01-01,-6,2\n2025-07-01,17,33\n";
  const read = answerRoom({ kind: "airRecord", text, options: {} });
  expect(read).toEqual({ ok: true, answer: readAirRecord(text) });
  const air = readAirRecord(text);
  if (!air.ok) throw new Error("it can be read");
  const shares: number[] = [];
  const told = answerRoom({ kind: "weatherRecord", plan, day, record: air.record }, (share) =>
    shares.push(share),
  );
  expect(told).toMatchObject({
    ok: true,
    answer: {
      frost: { seasons: [{ nights: 1 }, {}] },
      heat: { hottest: { high: 33 }, often: [{ id: "fount" }] },
    },
  });
  expect(shares.at(-1)).toBe(1);
});
