import { describe, expect, it } from "vitest";
import { buildCureLines } from "../../../packages/hydraulics/src/search/cure-lines.js";
import { buildCureSpace } from "../../../packages/hydraulics/src/search/cure-space.js";
import { highestStands } from "../../../packages/hydraulics/src/search/demand-forest.js";
import { barrel, nipples, planOf } from "./ailing.js";

/** The height of the highest stand from which a run of this length comes down to the ground. */
function highest(length: string) {
  const plan = planOf({
    sources: [barrel()],
    points: [{ id: "end", ground: "0 cm", above: "0 cm" }],
    runs: [{ id: "line", to: "end", length, drinkers: nipples(2) }],
  });
  const space = buildCureSpace(plan, { standMost: 1.5, standStep: 0.1 }, { pipes: false, stands: true });
  const building = buildCureLines(space);
  if (!building.ok) throw new Error(JSON.stringify(building.problems));
  const [option] = highestStands(building.lines);
  return space.sources[0]!.options[option!]!.height;
}

describe("highestStands", () => {
  it("is the highest that is thought of, or from which the pipe is long enough to come down", () => {
    expect(highest("5 m")).toBeCloseTo(1.5, 9);
    const low = highest("80 cm");
    expect(low).toBeGreaterThan(0.5);
    expect(low).toBeLessThanOrEqual(0.8);
  });
});
