import { beforeAll, describe, expect, it, test } from "vitest";
import { buildCommand, HEN_HOUSE, headfall, TWO_PENS } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

const day = ["--day", "2026-07-04"];
const ask = (...words: readonly string[]) => headfall(["trouble", HEN_HOUSE, ...day, ...words]);

describe("headfall trouble", () => {
  it("tells the likeliest cause with its share, why, the one look and what to do", () => {
    const run = ask("--dry", "hen line 13-24", "--fine", "1-12");
    expect(run).toMatchObject({ status: 0, stderr: "" });
    expect(run.stdout).toMatch(/^Alder Bank, hen house: what is likely wrong\n/);
    expect(run.stdout).toContain("Seen: hen line 13 to 24 dry; hen line 1 to 12 fine.");
    expect(run.stdout).toMatch(/1 +over 99 % +Something sits in the pipe of hen line about 3\.6 m along/);
    for (const title of ["Why", "The one look", "What to do", "What this is", "Cautions"])
      expect(run.stdout).toContain(`\n${title}\n`);
  });

  it("takes the answer to its one look and comes to another cause first", () => {
    const first = ask("--level", "found-empty").stdout;
    expect(first).toMatch(/1 +\d+ % +One of hen line 1 to 24 is stuck open/);
    const [, drinker] = /Pour some water in, then work (hen line \d+) with a finger/.exec(first) ?? [];
    const then = ask("--level", "found-empty", "--dry", drinker!, "--after-filling", drinker!).stdout;
    expect(then).toMatch(/1 +\d+ % +The pipe is apart/);
    // Dry while the source stands empty tells nothing.
    expect(ask("--level", "found-empty", "--dry", drinker!).stdout).toMatch(
      /1 sign says nothing more|1 such sign says/,
    );
  });

  it("reads a jug, an opened end, a lid and where the water stands", () => {
    const words = [
      "--jug",
      "hen line 3: 250 mL in 4 min",
      "--end",
      "feed: little",
      "--lid",
      "barrel: no-change",
    ];
    const run = ask(...words, "--stands", "60 cm", "--seen", "2 days", "--json");
    expect(run.stderr).toBe("");
    const document = JSON.parse(run.stdout);
    expect(document.signs).toEqual([
      { look: "end", at: "run", id: "feed", sees: "little" },
      { look: "lid", at: "source", id: "barrel", sees: "noChange" },
      { look: "jug", at: "drinker", id: "hen line 3", flow: 250e-6 / 240 },
    ]);
    expect(document.levels).toEqual([{ source: "barrel", level: 0.6 }]);
    expect(document.likely[0].sentence).toMatch(/\.$/);
  });

  it("asks which of several sources a level is of", () => {
    const words = ["trouble", TWO_PENS, ...day];
    expect(headfall([...words, "--level", "low"]).stderr).toBe(
      'headfall: --level: of which source? Write for instance "tote: low". See: headfall help trouble\n',
    );
    expect(headfall([...words, "--level", "header tank: low"])).toMatchObject({ status: 0, stderr: "" });
  });

  test.each([
    [[], "Tell at least one thing you see"],
    [["--dry", "hen line 99"], '--dry: no drinker is called "hen line 99".'],
    [["--level", "sinks"], "--level is falls-overnight, holds-overnight,"],
    [["--dry", "hen line 3", "--fine", "hen line 3"], "hen line 3 is told twice: dry and fine."],
    [["--jug", "hen line 3"], "--jug is a drinker and what it gives"],
    [["--jug", "hen line 3: 4 cows"], "--jug is a drinker and what it gives"],
    [["--end", "feed: much"], "--end is a run and nothing or little or plenty"],
    [["--lid", "well: helps"], '--lid: no source is called "well".'],
    [["--wet", "cellar"], '--wet: no run, source or drinker is called "cellar".'],
    [["--dry", "3", "--stands", "high"], '--stands: found "high".'],
    [["--dry", "3", "--stands", "3 m"], "--stands is a level from the bottom up to the full level."],
    [["--dry", "3", "--seen", "yesterday"], "--seen is how long ago there was water in it"],
    [["--dry", "3", "--after-filling", "4"], "--after-filling: what was seen of hen line 4 then?"],
  ])("%j is refused with status 2, in one line", (words, sentence) => {
    const run = ask(...words);
    expect(run).toMatchObject({ status: 2, stdout: "" });
    expect(run.stderr).toContain(`headfall: ${sentence}`);
    expect(run.stderr.trimEnd().split("\n")).toHaveLength(1);
  });
});
