import { describe, expect, it } from "vitest";
import { ANSWERS, type Sign } from "../../../../packages/hydraulics/src/judge/trouble/signs.js";
import { example, sight, troubleOf, worked } from "./ask.js";

/** Five nipples on a bucket. */
const chicks = example("alder-bank-brooder");
const dry = worked("chick nipples", [1, 2, 3, 4, 5], "dry");
const PLACES = {
  drinker: [1, 2, 3, 4, 5].map((k) => `chick nipples ${k}`),
  run: ["hose", "chick line"],
  source: ["bucket"],
};

/** Every look there is on the brooder, each with the answer at this place among its own. */
const allLooks = (sees: Partial<Record<keyof typeof ANSWERS, string>>): Sign[] => {
  const at = (place: keyof typeof PLACES, look: keyof typeof ANSWERS) =>
    PLACES[place].map((id) => sight(look, place, id, sees[look] ?? ANSWERS[look].at(-1)!));
  return [
    ...(["water", "ground", "lid", "night", "day"] as const).flatMap((look) => at("source", look)),
    ...(["ground", "end"] as const).flatMap((look) => at("run", look)),
    ...(["gives", "drips", "ground"] as const).flatMap((look) => at("drinker", look)),
  ];
};

describe("what is likely", () => {
  it("is listed from the likeliest, at most eight, none but the first below one in a hundred", () => {
    for (const signs of [dry, worked("chick nipples", [2], "weak")]) {
      const { likely, otherShare } = troubleOf(chicks, signs);
      const shares = likely.map(({ share }) => share);
      expect(shares).toEqual([...shares].sort((a, b) => b - a));
      expect(likely.length).toBeLessThanOrEqual(8);
      expect(Math.min(1, ...shares.slice(1))).toBeGreaterThanOrEqual(0.01);
      expect(shares.reduce((sum, share) => sum + share, otherShare)).toBeCloseTo(1, 9);
    }
  });
});

describe("what is not told from the likeliest", () => {
  it("is all that is listed besides it once nothing is left to look at, but for what foretells nothing", () => {
    const { likely, nextLook, moreLooks, lookAmong, notToldFromFirst } = troubleOf(
      chicks,
      allLooks({ day: "asMarked" }),
    );
    expect([nextLook, moreLooks, lookAmong]).toEqual([undefined, [], undefined]);
    expect(likely.length).toBeGreaterThan(2);
    expect(notToldFromFirst).toEqual(
      likely.flatMap(({ code }, k) => (k > 0 && code !== "somethingElse" ? [k] : [])),
    );
  });

  it("is nothing that the next look tells from it", () => {
    const { likely, nextLook, notToldFromFirst } = troubleOf(chicks, dry);
    expect(likely.length).toBeGreaterThan(1);
    expect(nextLook!.information).toBeGreaterThan(0.03);
    // The next look is chosen to tell the second from the first.
    expect(notToldFromFirst).not.toContain(1);
    expect(notToldFromFirst).not.toContain(0);
  });
});

describe("a source found empty", () => {
  const empty = sight("water", "source", "bucket", "empty");

  it("sets aside that its drinkers are dry, which tells nothing of why it is empty", () => {
    const { setAside, likely } = troubleOf(chicks, [empty, ...dry]);
    expect(setAside).toEqual(dry);
    expect(likely).toEqual(troubleOf(chicks, [empty]).likely);
  });

  it("keeps what was looked at after some water was poured in, and what is not of drinkers", () => {
    const after = dry.map((sign) => ({ ...sign, afterFilling: true }));
    const ground = sight("ground", "run", "hose", "wet");
    expect(troubleOf(chicks, [empty, ...after, ground]).setAside).toEqual([]);
    const jug: Sign = { look: "jug", at: "drinker", id: "chick nipples 2", flow: 0 };
    expect(troubleOf(chicks, [empty, jug]).setAside).toEqual([jug]);
  });

  it("is filled before any look that needs water", () => {
    const { moreLooks, nextLook } = troubleOf(chicks, [empty, ...dry]);
    for (const { look, afterFilling } of [nextLook!, ...moreLooks])
      expect([look.look, afterFilling]).toEqual([look.look, !["water", "ground"].includes(look.look)]);
  });
});
