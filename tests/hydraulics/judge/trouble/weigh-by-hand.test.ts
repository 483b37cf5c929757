import { describe, expect, it, test } from "vitest";
import type { Seen } from "../../../../packages/hydraulics/src/judge/trouble/chances.js";
import {
  chancesUnder,
  fitOfSign,
  groupAlike,
  splitByFit,
  weighCauses,
} from "../../../../packages/hydraulics/src/judge/trouble/weigh.js";
import { sight } from "./ask.js";

const seen = {
  usual: { flow: new Float64Array(1), need: new Float64Array(1), lastSeen: 86_400 },
  places: { drinker: new Map([["nipple", 0]]), run: new Map(), source: new Map() },
} as Seen;
const drips = sight("drips", "drinker", "nipple", "drips");
const holds = sight("drips", "drinker", "nipple", "holds");
/** Three in a hundred answers are slips, 15 of a hundred of them that it drips. */
const [RUNS, TIGHT] = [0.97 + 0.03 * 0.15, 0.03 * 0.15];

/** A state in which the nipple runs, or holds for sure. */
const state = (isRunning: boolean, weight = 1) => ({
  weight,
  expectation: { overSeal: Float64Array.of(isRunning ? Number.POSITIVE_INFINITY : -9) },
});
const candidate = (states: readonly object[], more: object = {}) =>
  ({ cause: { code: "sealsWorn", at: "group", id: "lane", index: 0 }, prior: 1, states, ...more }) as never;

describe("weighCauses, by hand", () => {
  const [worn, mixed, other] = weighCauses(
    [
      candidate([state(true)]),
      candidate([state(true, 0.25), state(false, 0.75)], { prior: 2 }),
      candidate([]),
    ],
    [drips],
    seen,
  );

  it("gives each cause its prior times what its states make of the signs; what foretells nothing, a half", () => {
    const weights = [RUNS, 2 * (0.25 * RUNS + 0.75 * TIGHT), 0.5];
    const all = weights.reduce((sum, one) => sum + one, 0);
    expect([worn, mixed, other].map((one) => one!.share)).toEqual(
      weights.map((one) => expect.closeTo(one / all, 9)),
    );
    expect(Math.exp(worn!.logFit)).toBeCloseTo(RUNS, 9);
    expect(mixed!.stateShares[0]).toBeCloseTo((0.25 * RUNS) / (0.25 * RUNS + 0.75 * TIGHT), 9);
    expect(other!.stateShares).toEqual([]);
  });

  it("holds a sign against a cause by its chance over that of knowing nothing", () => {
    expect(fitOfSign(worn!, drips, seen)).toBeCloseTo(2 * RUNS, 9);
    expect(fitOfSign(worn!, holds, seen)).toBeCloseTo(2 * (1 - RUNS), 9);
    const [share] = mixed!.stateShares;
    expect(fitOfSign(mixed!, holds, seen)).toBeCloseTo(
      2 * (share! * (1 - RUNS) + (1 - share!) * (1 - TIGHT)),
      9,
    );
    expect(fitOfSign(other!, drips, seen)).toBe(1);
  });

  it("foretells a look by its states as the signs left them, the least of them left out", () => {
    const [share] = mixed!.stateShares;
    expect(chancesUnder(mixed!, drips as never, seen)[0]).toBeCloseTo(
      share! * RUNS + (1 - share!) * TIGHT,
      9,
    );
    const unlikely = { candidate: candidate([state(true), state(false)]), stateShares: [0.99995, 0.00005] };
    expect(chancesUnder(unlikely as never, drips as never, seen)).toEqual([
      expect.closeTo(RUNS, 12),
      expect.closeTo(1 - RUNS, 12),
    ]);
  });
});

test("splitByFit tells what speaks for a cause from a quarter more on, what does not fit it below a half, strongest first", () => {
  const of = (ratio: number) => ({ sign: drips, ratio });
  const { fits, against } = splitByFit([of(1.25), of(0.5), of(2), of(0.1), of(1.24), of(0.49), of(3)]);
  expect(fits.map(({ ratio }) => ratio)).toEqual([3, 2, 1.25]);
  expect(against.map(({ ratio }) => ratio)).toEqual([0.1, 0.49]);
});

describe("groupAlike", () => {
  const weighed = (code: string, at: string, index: number, logFit: number, share: number) =>
    ({
      candidate: { cause: { code, at, id: `${at} ${index}`, index } },
      logFit,
      share,
      stateShares: [],
    }) as never;

  it("takes together what is of one kind, at one sort of place, and fits within a tenth as well; in the line's order", () => {
    const groups = groupAlike([
      weighed("drinkerBlocked", "drinker", 7, -1, 0.1),
      weighed("drinkerBlocked", "drinker", 2, -1.09, 0.1),
      weighed("drinkerBlocked", "drinker", 4, -1.2, 0.25),
      weighed("jointApart", "point", 1, -1, 0.3),
      weighed("jointApart", "run", 1, -1, 0.22),
    ]);
    expect(
      groups.map(({ members, share }) => [members.map(({ candidate: one }) => one.cause.id), share]),
    ).toEqual([
      [["point 1"], 0.3],
      [["drinker 4"], 0.25],
      [["run 1"], 0.22],
      [["drinker 2", "drinker 7"], 0.2],
    ]);
  });
});
