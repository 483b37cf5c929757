import { describe, expect, it } from "vitest";
import { feedFarEnd } from "../../../../packages/hydraulics/src/search/remedies/feed-again.js";
import { leaveOff } from "../../../../packages/hydraulics/src/search/remedies/leave-off.js";
import { openTaps } from "../../../../packages/hydraulics/src/search/remedies/open-what-is-shut.js";
import { changeDrinkers } from "../../../../packages/hydraulics/src/search/remedies/other-drinkers.js";
import { widenOutlets } from "../../../../packages/hydraulics/src/search/remedies/widen-outlet.js";
import { pipeById } from "../../../../packages/hydraulics/src/tables/pipes.js";
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

describe("where one group is good", () => {
  const half = ailingOf({
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
  });

  it("leaves off of the group that fails alone", () => {
    const groups = leaveOff(half).map(({ changes: [change] }) => change?.code === "leaveOff" && change.group);
    expect(groups).toEqual(["lane"]);
  });

  it("changes the drinkers of the group that fails alone", () => {
    const groups = changeDrinkers(half).flatMap(({ changes }) =>
      changes.map((change) => change.code === "drinkers" && change.group),
    );
    expect(new Set(groups)).toEqual(new Set(["lane"]));
  });
});

describe("widenOutlets", () => {
  it("widens what is narrower than its pipe, and not what is as wide", () => {
    const with12 = (outletBore: string) => {
      const [source, ...others] = lanes.sources;
      return widenOutlets(ailingOf({ ...lanes, sources: [{ ...source, outletBore }, ...others] })).length;
    };
    const bore = pipeById("hose-5/8")!.bore * 1000;
    expect([with12("3 mm"), with12(`${bore} mm`)]).toEqual([1, 0]);
  });
});
