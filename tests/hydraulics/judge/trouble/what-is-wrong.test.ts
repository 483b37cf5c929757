import { describe, expect, it, test } from "vitest";
import type { Sign } from "../../../../packages/hydraulics/src/judge/trouble/signs.js";
import { whatIsWrong } from "../../../../packages/hydraulics/src/judge/trouble/what-is-wrong.js";
import { example, planOf, sight, troubleOf, worked } from "./ask.js";

const hens = example("alder-bank-hen-house");
const pens = example("alder-bank-two-pens");
/** Five nipples on a bucket: quicker to ask about. */
const chicks = example("alder-bank-brooder");
const bucket = (look: "night" | "day" | "water", sees: string) => sight(look, "source", "bucket", sees);
const firstOf = (signs: readonly Sign[], plan = hens) => {
  const [first] = troubleOf(plan, signs).likely;
  return first!;
};
const barrel = (look: "night" | "day" | "water" | "lid", sees: string) =>
  sight(look, "source", "barrel", sees);

describe("whatIsWrong", () => {
  it("finds the place of a stoppage between the last drinker that gives and the first that is dry", () => {
    const found = firstOf([
      ...worked("hen line", [1, 6, 12], "fine"),
      ...worked("hen line", [13, 20, 24], "dry"),
    ]);
    expect(found).toMatchObject({ code: "runBlocked", places: ["hen line"], against: [] });
    // Drinkers hang every 30 cm from 15 cm on: between 12 and 13 lie 3.45 m and 3.75 m.
    expect(found.severity.along).toBeGreaterThan(3.3);
    expect(found.severity.along).toBeLessThan(3.8);
    expect(found.share).toBeGreaterThan(0.9);
  });

  it("finds the one drinker that is dry among others that give", () => {
    expect(
      firstOf([...worked("hen line", [6, 8, 9], "fine"), ...worked("hen line", [7], "dry")]),
    ).toMatchObject({
      code: "drinkerBlocked",
      places: ["hen line 7"],
    });
  });

  it("finds the drinker that drips while the level falls overnight", () => {
    expect(
      firstOf([sight("drips", "drinker", "hen line 3", "drips"), barrel("night", "falls")]),
    ).toMatchObject({
      code: "drinkerStuckOpen",
      places: ["hen line 3"],
    });
  });

  it("finds a vent that is shut by what taking the lid off does", () => {
    const dry = worked("hen line", [1, 12, 24], "dry");
    expect(firstOf([...dry, barrel("night", "holds"), barrel("lid", "helps")])).toMatchObject({
      code: "ventBlocked",
      places: ["barrel"],
    });
    expect(
      firstOf([...dry, barrel("night", "holds"), barrel("lid", "noChange"), barrel("water", "asThought")])
        .code,
    ).toBe("runBlocked");
  });

  it("finds a regulator that holds nothing back by its drinkers that all drip", () => {
    const drips = [1, 5, 10, 20].map((k) => sight("drips", "drinker", `low pen nipples ${k}`, "drips"));
    expect(firstOf(drips, pens)).toMatchObject({ code: "regulatorGone", places: ["to the low pen"] });
  });

  it("takes birds that drink more for it where only the day's fall is larger", () => {
    const { code } = firstOf([
      barrel("day", "faster"),
      barrel("night", "holds"),
      ...worked("hen line", [1, 4, 8, 12, 16, 20, 24], "fine"),
    ]);
    expect(code).toBe("moreDrunk");
  });

  it("says that a plan which starves its drinkers does so itself", () => {
    const shed = example("alder-bank-rain-barrel");
    const [first] = troubleOf(shed, [
      sight("gives", "drinker", "duck trough", "weak"),
      ...worked("chick nipples", [1, 4], "dry"),
      ...worked("pullet cups", [1, 2], "fine"),
      sight("water", "source", "rain barrel", "asThought"),
    ]).likely;
    expect(first).toMatchObject({ code: "asDesigned", against: [] });
  });

  it("tells a cup that hangs askew from one whose float hangs low by what the birds find in it", () => {
    const bells = planOf({
      headfall: 1,
      sources: [{ id: "barrel", vessel: "rain-barrel-50gal", stand: "1 m" }],
      runs: [
        {
          id: "line",
          length: "4 m",
          fall: "10 cm",
          drinkers: { id: "bells", kind: "bell", count: 3, every: "1 m" },
        },
      ],
      pens: [{ id: "hens", birds: { kind: "hen", count: 12 } }],
    });
    const wet = sight("ground", "drinker", "bells 2", "wet");
    const run = sight("drips", "drinker", "bells 2", "drips");
    const firstWith = (found: string) =>
      troubleOf(bells, [wet, run, ...worked("bells", [2], found)]).likely.find(
        ({ code }) => code === "cupTipped" || code === "floatStuckOpen",
      )!;
    expect(firstWith("dry")).toMatchObject({ code: "cupTipped", places: ["bells 2"] });
    expect(firstWith("fine")).toMatchObject({ code: "floatStuckOpen", places: ["bells 2"] });
    // Without a look into it the two stand beside each other, and that look is the one to take.
    const { likely, nextLook } = troubleOf(bells, [wet, run]);
    const shares = likely.filter(({ code }) => code === "cupTipped" || code === "floatStuckOpen");
    expect(shares.map(({ share }) => share)[0]).toBeCloseTo(shares[1]!.share, 6);
    expect(nextLook?.look).toMatchObject({ look: "gives", id: "bells 2" });
  });

  it("does not hold dry drinkers against a cause where their source was found empty", () => {
    const empty = barrel("water", "empty");
    const dry = worked("hen line", [1, 12, 24], "dry");
    const [alone, both] = [troubleOf(hens, [empty]), troubleOf(hens, [empty, ...dry])];
    expect(both.setAside).toEqual(dry);
    expect(both.likely.map(({ code }) => code).slice(0, 2)).toEqual(
      alone.likely.map(({ code }) => code).slice(0, 2),
    );
    expect(both.nextLook?.afterFilling === true || both.nextLook?.look.look === "ground").toBe(true);
  });

  it("keeps a cause out of hand where a jug says that its drinker gives what it should", () => {
    const jug: Sign = { look: "jug", at: "drinker", id: "hen line 7", flow: 1.83e-6 };
    const signs = [barrel("day", "less"), jug];
    const blocked = troubleOf(hens, signs).likely.find(
      ({ code, places }) => code === "drinkerBlocked" && places.includes("hen line 7"),
    );
    expect(blocked?.share ?? 0).toBeLessThan(0.02);
  });

  it("gives the same answer whatever the order of the signs, and a share to everything", () => {
    const signs = [
      ...worked("chick nipples", [1, 2], "weak"),
      bucket("night", "holds"),
      bucket("day", "less"),
    ];
    const [one, other] = [troubleOf(chicks, signs), troubleOf(chicks, [...signs].reverse())];
    expect(other.likely.map(({ code, places }) => [code, places])).toEqual(
      one.likely.map(({ code, places }) => [code, places]),
    );
    for (const [k, { share }] of one.likely.entries()) expect(other.likely[k]!.share).toBeCloseTo(share, 9);
    const total = one.likely.reduce((sum, { share }) => sum + share, one.otherShare);
    expect(total).toBeCloseTo(1, 9);
  });

  it("says of its one look which of the first two each answer speaks for, and how far", () => {
    const { nextLook } = troubleOf(chicks, worked("chick nipples", [1, 3, 5], "dry"));
    expect(nextLook!.information).toBeGreaterThan(0.3);
    const sums = [0, 1].map((k) => nextLook!.answers.reduce((sum, { chances }) => sum + chances[k]!, 0));
    for (const sum of sums) expect(sum).toBeCloseTo(1, 9);
    for (const { chances, firstShare } of nextLook!.answers)
      expect(firstShare).toBeCloseTo(chances[0] / (chances[0] + chances[1]), 12);
  });

  it("tells of its progress, up to one, and that changes nothing", () => {
    const told: number[] = [];
    const signs = worked("chick nipples", [2], "dry");
    const trouble = troubleOf(chicks, signs, { progress: (share) => told.push(share) });
    expect(told.at(-1)).toBe(1);
    expect(trouble).toEqual(troubleOf(chicks, signs));
  });

  test.each([
    [{ look: "gives", at: "drinker", id: "hen line 99", sees: "dry" }, "signs[0].id", "unknownName"],
    [{ look: "gives", at: "run", id: "feed", sees: "dry" }, "signs[0].at", "notAChoice"],
    [{ look: "gives", at: "drinker", id: "hen line 1", sees: "wet" }, "signs[0].sees", "notAChoice"],
    [{ look: "smells", at: "drinker", id: "hen line 1", sees: "bad" }, "signs[0].look", "notAChoice"],
    [{ look: "jug", at: "drinker", id: "hen line 1", flow: -1 }, "signs[0].flow", "outOfRange"],
  ])("refuses %j at %s", (sign, path, code) => {
    const answer = whatIsWrong(hens, [sign as Sign], { day: "2026-07-04" });
    expect(answer).toMatchObject({ ok: false, problems: [{ path, code }] });
  });

  it("refuses a look told twice, and a level or time that cannot be", () => {
    const twice = [...worked("hen line", [7], "dry"), ...worked("hen line", [7], "fine")];
    expect(whatIsWrong(hens, twice)).toMatchObject({
      ok: false,
      problems: [{ path: "signs[1]", code: "nameTwice" }],
    });
    expect(() => whatIsWrong(hens, [], { day: "2026-07-04", levels: [3] })).toThrow(RangeError);
    expect(() => whatIsWrong(hens, [], { day: "2026-07-04", lastSeen: 0 })).toThrow(RangeError);
  });
});
