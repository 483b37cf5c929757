import { describe, expect, it } from "vitest";
import type { Seen } from "../../../../packages/hydraulics/src/judge/trouble/chances.js";
import {
  isTold,
  lookAmong,
  looksBetween,
  looksLeft,
} from "../../../../packages/hydraulics/src/judge/trouble/next-look.js";
import type { Look } from "../../../../packages/hydraulics/src/judge/trouble/signs.js";
import type { Alike, Weighed } from "../../../../packages/hydraulics/src/judge/trouble/weigh.js";
import { sight } from "./ask.js";

const ground = (run: string): Look => ({ look: "ground", at: "run", id: run });
const drips = (drinker: string): Look => ({ look: "drips", at: "drinker", id: drinker });
const night: Look = { look: "night", at: "source", id: "barrel" };
const RUNS = ["a", "b", "c", "d", "e", "f", "g", "h", "i", "j"];
const seen = {
  usual: { flow: new Float64Array(1), need: new Float64Array(1), lastSeen: 86_400 },
  places: {
    drinker: new Map([["nipple", 0]]),
    run: new Map(RUNS.map((id, r) => [id, r])),
    source: new Map([["barrel", 0]]),
  },
} as Seen;

/** A cause in one state: ground that is wet along one run, a nipple that drips or holds, a level that falls at night. */
const cause = (wet: string | undefined, { share = 0.5, dripping = false, nightFall = 0 } = {}): Weighed => {
  const leaks =
    wet === undefined
      ? []
      : [{ at: "run" as const, index: RUNS.indexOf(wet), run: RUNS.indexOf(wet), flow: 1 }];
  const expectation = {
    leaks,
    overSeal: Float64Array.of(dripping ? Number.POSITIVE_INFINITY : -1),
    sources: [{ nightFall, nightUsual: 0, isKeptFull: false }],
    endShare: () => 1,
  };
  const states = [{ weight: 1, severity: {}, expectation }];
  return { candidate: { states }, share, logFit: 0, stateShares: [1] } as unknown as Weighed;
};
const UNKNOWN = { candidate: { states: [] }, share: 0.5, logFit: 0, stateShares: [] } as unknown as Weighed;
const alike = (...members: Weighed[]): Alike => ({
  members,
  share: members.reduce((sum, { share }) => sum + share, 0),
});
const bits = (...chances: number[]) => chances.reduce((sum, p) => sum - p * Math.log2(p), 0);
/** Three answers in a hundred are slips; of those at the ground two in five say wet. */
const WET = 0.97 + 0.03 * 0.4;
const SLIP = 0.03 * 0.4;

describe("looksBetween", () => {
  const looking = { looks: [ground("a"), ground("b"), drips("nipple")], seen, isEmpty: false };

  it("tells by how many bits an answer tells two causes apart, and how sure the first then is", () => {
    const [look, ...more] = looksBetween(alike(cause("a")), alike(cause(undefined)), looking);
    expect(more).toEqual([]);
    expect(look!.look).toEqual(ground("a"));
    const mixed = (WET + SLIP) / 2;
    const information = bits(mixed, 1 - mixed) - (bits(WET, 1 - WET) + bits(SLIP, 1 - SLIP)) / 2;
    expect(look!.information).toBeCloseTo(information, 9);
    expect(look!.answers.map(({ sees }) => sees)).toEqual(["wet", "dry"]);
    const [wet, dry] = look!.answers;
    expect(wet!.chances).toEqual([expect.closeTo(WET, 9), expect.closeTo(SLIP, 9)]);
    expect(wet!.firstShare).toBeCloseTo(WET / (WET + SLIP), 9);
    expect(dry!.firstShare).toBeCloseTo((1 - WET) / (2 - WET - SLIP), 9);
  });

  it("mixes causes taken together as likely as they are, not one as good as the other", () => {
    const both = alike(cause("a", { share: 0.3 }), cause(undefined, { share: 0.1 }));
    const [look] = looksBetween(both, alike(cause("b")), { ...looking, looks: [ground("a")] });
    expect(look!.answers[0]!.chances[0]).toBeCloseTo(0.75 * WET + 0.25 * SLIP, 9);
    const unlikely = alike(cause("a", { share: 0 }), cause(undefined, { share: 0 }));
    const [other] = looksBetween(unlikely, alike(cause("b")), { ...looking, looks: [ground("a")] });
    expect(other!.answers[0]!.chances[0]).toBeCloseTo((WET + SLIP) / 2, 9);
  });

  it("takes of more than eight alike eight that stand evenly among them", () => {
    const many = RUNS.map((run) => cause(run, { share: 0.01 }));
    const chanceAt = (run: string) =>
      looksBetween(alike(...many), alike(cause(run)), { ...looking, looks: [ground(run)] })[0]!.answers[0]!
        .chances[0];
    // Of ten, those at 0.625, 1.875, 3.125 and so on: the third and the eighth are left out.
    const one = (WET + 7 * SLIP) / 8;
    expect(RUNS.map(chanceAt)).toEqual(
      RUNS.map((_, k) => expect.closeTo(k === 2 || k === 7 ? SLIP : one, 9)),
    );
    const eight = many.slice(0, 8);
    const [look] = looksBetween(alike(...eight), alike(cause("j")), { ...looking, looks: [ground("c")] });
    expect(look!.answers[0]!.chances[0]).toBeCloseTo(one, 9);
  });

  it("takes what foretells nothing as giving any answer alike", () => {
    const [look] = looksBetween(alike(cause("a")), alike(UNKNOWN), { ...looking, looks: [ground("a")] });
    expect(look!.answers.map(({ chances }) => chances[1])).toEqual([0.5, 0.5]);
  });

  it("puts a glance before a night's wait that tells as much, and looks without water first where it is empty", () => {
    const first = alike(cause("a", { dripping: true, nightFall: 1 }));
    const second = alike(cause(undefined));
    const looks = [night, ground("a"), drips("nipple")];
    const order = (isEmpty: boolean) => looksBetween(first, second, { looks, seen, isEmpty });
    expect(
      order(false)
        .map(({ look }) => look.look)
        .at(-1),
    ).toBe("night");
    expect(order(false).every(({ afterFilling }) => !afterFilling)).toBe(true);
    expect(order(true).map(({ look, afterFilling }) => [look.look, afterFilling])).toEqual([
      ["ground", false],
      ["drips", true],
      ["night", true],
    ]);
  });
});

describe("isTold", () => {
  it("is whether some look tells two causes apart, one is enough", () => {
    const [first, second] = [alike(cause("a")), alike(cause("b"))];
    expect(isTold(first, second, { looks: [drips("nipple"), ground("b")], seen, isEmpty: false })).toBe(true);
    expect(isTold(first, second, { looks: [drips("nipple")], seen, isEmpty: false })).toBe(false);
    expect(isTold(first, first, { looks: [ground("a")], seen, isEmpty: false })).toBe(false);
  });
});

describe("lookAmong", () => {
  const looks = RUNS.map(ground);
  const looking = { looks, seen, isEmpty: false };

  it("is the look that tells most of which one it is: at the likeliest place", () => {
    const among = alike(cause("a", { share: 0.1 }), cause("b", { share: 0.2 }), cause("c", { share: 0.1 }));
    const found = lookAmong(among, looking)!;
    expect(found.look).toEqual(ground("b"));
    // Of shares of a quarter, a half and a quarter, a look at the second tells whether it is that.
    const mixed = (WET + SLIP) / 2;
    const within = 0.5 * bits(WET, 1 - WET) + 0.5 * bits(SLIP, 1 - SLIP);
    expect(found.information).toBeCloseTo(bits(mixed, 1 - mixed) - within, 9);
  });

  it("is none of a single one, of what has no share, or where all show the same", () => {
    expect(lookAmong(alike(cause("a")), looking)).toBeUndefined();
    expect(lookAmong(alike(cause("a", { share: 0 }), cause("b", { share: 0 })), looking)).toBeUndefined();
    expect(lookAmong(alike(cause("a"), cause("a")), looking)).toBeUndefined();
  });

  it("waits for water to be poured in where it is empty, and says so", () => {
    const among = alike(cause(undefined, { dripping: true }), cause(undefined));
    const found = lookAmong(among, { looks: [drips("nipple")], seen, isEmpty: true });
    expect(found?.afterFilling).toBe(true);
  });
});

describe("looksLeft", () => {
  it("is what was not yet looked at; a jug is a look at its drinker", () => {
    const gives: Look = { look: "gives", at: "drinker", id: "nipple" };
    const looks = [ground("a"), ground("b"), gives, drips("nipple")];
    expect(looksLeft(looks, [sight("ground", "run", "b", "dry")])).toEqual([looks[0], looks[2], looks[3]]);
    expect(looksLeft(looks, [{ look: "jug", at: "drinker", id: "nipple", flow: 0 }])).toEqual([
      looks[0],
      looks[1],
      looks[3],
    ]);
  });
});
