import { describe, expect, it, test } from "vitest";
import { readNames } from "../../../packages/hydraulics/src/document/name-list.js";
import { writeNames } from "../../../packages/hydraulics/src/report/name-ranges.js";

const known = ["hen line 1", "hen line 2", "hen line 3", "hen line 4", "duck trough", "east 1", "east 2"];
const hens = known.slice(0, 4);

describe("readNames", () => {
  test.each([
    ["hen line 3", ["hen line 3"]],
    ["hen line 2-4, duck trough", ["hen line 2", "hen line 3", "hen line 4", "duck trough"]],
    ["hen line 2 to 3", ["hen line 2", "hen line 3"]],
    ["east", ["east 1", "east 2"]],
    ["Duck Trough", ["duck trough"]],
    ["all", known],
    ["hen line 1-2, hen line 2-3", ["hen line 1", "hen line 2", "hen line 3"]],
  ])("reads %j", (typed, names) => {
    expect(readNames(typed, known)).toEqual({ ok: true, names });
  });

  it("reads numbers alone where every numbered name begins alike, and only there", () => {
    expect(readNames("2, 3-4", hens)).toEqual({ ok: true, names: hens.slice(1) });
    expect(readNames("2", known)).toMatchObject({ ok: false, found: '"2"' });
  });

  it("takes a name as it stands before any other reading", () => {
    expect(readNames("pen 1-2", ["pen 1", "pen 2", "pen 1-2"])).toEqual({ ok: true, names: ["pen 1-2"] });
  });

  it("takes one name that holds a comma", () => {
    expect(readNames("pen, west", ["pen, west", "pen"])).toEqual({ ok: true, names: ["pen, west"] });
  });

  test.each([
    ["hen line 5", '"hen line 5"', "Do you mean hen line 1?"],
    [
      "hen line 3-5",
      '"hen line 3-5"',
      "There are hen line 1, hen line 2, hen line 3, hen line 4, ... east 2.",
    ],
    ["hen line 4-2", '"hen line 4-2"', "There are"],
    ["hen line 1,", '""', "There are"],
    ["duck trogh", '"duck trogh"', "Do you mean duck trough?"],
    ["hen line 1-9999999", '"hen line 1-9999999"', "There are"],
  ])("says of %j what is no name", (typed, found, allowed) => {
    const read = readNames(typed, known);
    expect(read).toMatchObject({ ok: false, found });
    if (!read.ok) expect(read.allowed).toContain(allowed);
  });
});

describe("writeNames", () => {
  test.each([
    [["hen line 1", "hen line 2", "hen line 3", "hen line 7"], "hen line 1 to 3 and 7"],
    [["hen line 1", "hen line 2"], "hen line 1 and 2"],
    [["barrel"], "barrel"],
    [["feed", "riser", "wall"], "feed, riser and wall"],
    [["east 1", "east 3", "west 2", "west 4"], "east 1 and 3; west 2 and 4"],
  ])("%j is %j", (names, text) => expect(writeNames(names)).toBe(text));
});
