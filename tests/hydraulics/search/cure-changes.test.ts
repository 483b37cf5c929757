import { expect, it } from "vitest";
import { changesOf } from "../../../packages/hydraulics/src/search/cure-changes.js";
import { buildCureLines } from "../../../packages/hydraulics/src/search/cure-lines.js";
import { buildCureSpace } from "../../../packages/hydraulics/src/search/cure-space.js";
import { barrel, nipples, planOf } from "./ailing.js";

it("changesOf names each stand that moves and each run that gets other pipe, with what it was", () => {
  const lane = (id: string, from: string) => ({
    ...{ id, from, fall: "0 cm", length: "5 m", pipe: "hose-1/2", drinkers: nipples(2) },
  });
  const plan = planOf({
    sources: [barrel(), barrel({ id: "tub", stand: "20 cm" })],
    runs: [lane("east", "barrel"), lane("west", "tub")],
    shelf: [{ pipe: "hose-1/2" }, { pipe: "hose-3/4" }],
  });
  const options = { standMost: 0.6, standStep: 0.3 };
  const building = buildCureLines(buildCureSpace(plan, options, { pipes: true, stands: true }));
  if (!building.ok) throw new Error(JSON.stringify(building.problems));
  const changes = (picks: readonly number[]) => changesOf(building.lines, picks);
  const pipe = { code: "pipe", length: 5, from: "hose-1/2", to: "hose-3/4" };
  expect(changes([0, 0, 0, 0])).toEqual([]);
  // A stand's first option is as it is; then come 0, 30 and 60 cm.
  expect(changes([0, 1, 0, 2])).toEqual([
    { code: "stand", source: "tub", from: 0.2, to: 0.3 },
    { ...pipe, run: "west" },
  ]);
  expect(changes([1, 0, 3, 0])).toEqual([
    { code: "stand", source: "barrel", from: 0.4, to: 0.6 },
    { ...pipe, run: "east" },
  ]);
});
