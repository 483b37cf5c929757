import { describe, expect, it } from "vitest";
import { feedFarEnd } from "../../../../packages/hydraulics/src/search/remedies/feed-again.js";
import { leaveOff } from "../../../../packages/hydraulics/src/search/remedies/leave-off.js";
import { openTaps } from "../../../../packages/hydraulics/src/search/remedies/open-what-is-shut.js";
import { ailingOf, barrel, nipples } from "../ailing.js";

const bells = (count: number) => ({ kind: "bell", count, busiest: count, every: "30 cm" });
/** Two thin lanes from one tee, of which the second is longer and has more bells: it starves more. */
const lanes = {
  sources: [barrel({ stand: "0 cm" })],
  points: [{ id: "tee", ground: "0 cm", above: "5 cm" }],
  runs: [
    { id: "feed", to: "tee", length: "4 m", pipe: "hose-5/8" },
    { id: "short", from: "tee", fall: "0 cm", length: "6 m", pipe: "hose-1/2", drinkers: bells(8) },
    { id: "long", from: "tee", fall: "0 cm", length: "24 m", pipe: "hose-1/2", drinkers: bells(10) },
  ],
};

describe("feedFarEnd", () => {
  const remedies = feedFarEnd(ailingOf(lanes));

  it("feeds again the run that fails worst before the others", () => {
    expect(remedies.map(({ changes: [change] }) => change?.code === "newRun" && change.to)).toEqual([
      "long end",
      "short end",
    ]);
  });

  it("lays as much of the run's own pipe as leads there, from the vessel", () => {
    const [first] = remedies;
    expect(first!.plan.runs.at(-1)).toMatchObject({
      from: "barrel",
      to: "long end",
      length: "2800 cm",
      pipe: "hose-1/2",
    });
    expect(first!.changes).toMatchObject([
      { code: "newRun", from: "barrel", length: 28, pipe: "hose-1/2", isCut: false },
    ]);
    expect(first!.fresh).toBe(3);
  });
});

describe("openTaps", () => {
  it("opens what is shut and what is half open, and nothing that is open", () => {
    const taps = ["half", "shut", undefined] as const;
    const runs = lanes.runs.map((run, r) => (taps[r] === undefined ? run : { ...run, tap: taps[r] }));
    const [remedy] = openTaps(ailingOf({ ...lanes, runs }));
    expect(remedy!.changes).toEqual([
      { code: "openTap", run: "feed", was: "half" },
      { code: "openTap", run: "short", was: "shut" },
    ]);
    expect(remedy!.plan.runs.map(({ tap }) => tap)).toEqual([undefined, undefined, undefined]);
    expect(openTaps(ailingOf(lanes))).toEqual([]);
  });
});

describe("leaveOff, where one group is good", () => {
  it("leaves off of the group that fails alone", () => {
    const remedies = leaveOff(
      ailingOf({
        sources: [barrel()],
        points: [
          { id: "low", ground: "0 cm", above: "10 cm" },
          { id: "end", ground: "0 cm", above: "38 cm" },
        ],
        runs: [
          { id: "down", to: "low", length: "2 m", drinkers: nipples(6, { first: "1 m", every: "10 cm" }) },
          { id: "lane", to: "end", length: "6 m", drinkers: nipples(12, { first: "50 cm", every: "50 cm" }) },
        ],
        pens: [{ id: "hens", birds: { kind: "hen", count: 20 } }],
      }),
    );
    expect(remedies.map(({ changes: [change] }) => change?.code === "leaveOff" && change.group)).toEqual([
      "lane",
    ]);
  });
});
