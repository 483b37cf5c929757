import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { doubtsOf } from "../../../../packages/hydraulics/src/judge/sureness/doubts.js";
import { buildLine } from "../../../../packages/hydraulics/src/model/build-line.js";

/** A barrel, a tee, and a lane of 4 m surveyed each metre. */
function doubtsIn(more: Record<string, unknown> = {}, lane: Record<string, unknown> = {}, feed = {}) {
  const reading = checkDocument({
    headfall: 1,
    sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "60 cm" }],
    points: [{ id: "tee", ground: "0 cm", above: "30 cm" }],
    runs: [
      { id: "feed", to: "tee", length: "2 m", ...feed },
      {
        ...{ id: "lane", from: "tee", length: "4 m", fall: "4 cm" },
        ...{ drinkers: { kind: "nipple-side-action", count: 2, every: "1 m", first: "50 cm" } },
        ...lane,
      },
    ],
    ...more,
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const built = buildLine(reading.plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const { heights, levels } = doubtsOf(reading.plan, built.line);
  const { points, runs } = built.line;
  const atAlong = (metres: number) => {
    const k = [...runs[1]!.along].findIndex((along) => Math.abs(along - metres) < 1e-6);
    return heights[runs[1]!.points[k]!];
  };
  const of = (id: string) => heights[points.id.indexOf(id)];
  return { of, atAlong, levels: [...levels], end: heights[runs[1]!.points.at(-1)!] };
}

describe("doubtsOf", () => {
  it("is what the plan says of all, and nothing of what lies straight between measured places", () => {
    const { of, atAlong, end, levels } = doubtsIn({ doubts: { heights: "3 cm", level: "15 mm" } });
    expect([of("barrel"), of("tee"), end]).toEqual([0.03, 0.03, 0.03]);
    expect(atAlong(0.5)).toBe(0);
    expect(levels).toEqual([0.015]);
  });

  it("is of a place what the plan says of that", () => {
    const { of, end, levels } = doubtsIn(
      {
        doubts: { heights: "3 cm", level: "15 mm" },
        points: [{ id: "tee", ground: "0 cm", above: "30 cm", doubt: "1 cm" }],
        sources: [
          {
            ...{ id: "barrel", vessel: "drum-55gal-plastic", stand: "60 cm", doubt: "5 mm" },
            level: { doubt: "2 mm" },
          },
        ],
      },
      { doubt: "4 mm" },
    );
    expect([of("barrel"), of("tee"), end, levels[0]]).toEqual([0.005, 0.01, 0.004, 0.002]);
  });

  it("is of two told of one joint the smaller: the better measurement", () => {
    const tee = (ofPoint: string, ofRun: string) =>
      doubtsIn(
        { points: [{ id: "tee", ground: "0 cm", above: "30 cm", doubt: ofPoint }] },
        {},
        { doubt: ofRun, fall: "-30 cm" },
      ).of("tee");
    expect(tee("1 cm", "4 mm")).toBe(0.004);
    expect(tee("4 mm", "1 cm")).toBe(0.004);
  });

  it("is of a surveyed place what its own reading says, before all", () => {
    const { atAlong } = doubtsIn(
      { doubts: { heights: "3 cm" } },
      {
        survey: [
          { along: "1 m", fall: "1 cm", doubt: "7 mm" },
          { along: "2 m", fall: "2 cm" },
        ],
      },
    );
    expect([atAlong(1), atAlong(2)]).toEqual([0.007, 0.03]);
  });
});
