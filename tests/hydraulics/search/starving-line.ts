import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { wholeOf } from "../../../packages/hydraulics/src/search/branch-and-bound.js";
import { compareBy } from "../../../packages/hydraulics/src/search/cost.js";
import { buildCureLines } from "../../../packages/hydraulics/src/search/cure-lines.js";
import { buildCureSpace } from "../../../packages/hydraulics/src/search/cure-space.js";
import { buildDemandForest } from "../../../packages/hydraulics/src/search/demand-forest.js";
import { buildRequirement, judgeScene } from "../../../packages/hydraulics/src/search/requirement.js";

export const compare = compareBy("money");

/** A low barrel, a thin hose of 20 m and a thin lane of 6 m with four thirsty bells: it starves as it is. A drain is shut. */
function starving() {
  const reading = checkDocument({
    headfall: 1,
    sources: [
      {
        id: "barrel",
        vessel: "drum-55gal-plastic",
        stand: "20 cm",
        level: { full: "60 cm", lowest: "10 cm" },
      },
    ],
    points: [{ id: "tee", ground: "0 cm", above: "10 cm" }],
    runs: [
      { id: "feed", to: "tee", length: "20 m", pipe: "hose-1/2" },
      {
        ...{ id: "lane", from: "tee", length: "6 m", fall: "0 cm", pipe: "hose-1/2" },
        drinkers: { kind: "bell", count: 4, busiest: 4, every: "1 m" },
      },
      { id: "drain", from: "tee", length: "1 m", tap: "shut" },
    ],
    shelf: [
      { pipe: "hose-1/2", price: 1 },
      { pipe: "hose-5/8", price: 2 },
      { pipe: "hose-3/4", price: 3 },
    ],
    prices: { stand: 2 },
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const options = { standMost: 1.2, standStep: 0.4 };
  const space = buildCureSpace(reading.plan, options, { pipes: [0, 1], stands: true });
  const building = buildCureLines(space);
  if (!building.ok) throw new Error(JSON.stringify(building.problems));
  const { lines } = building;
  const requiring = buildRequirement(reading.plan, lines.present, {});
  if (!requiring.ok) throw new Error(JSON.stringify(requiring.problems));
  const { requirement } = requiring;
  const forest = buildDemandForest(lines, requirement, requirement.scenes[0]!)!;
  const works = (picks: readonly number[]) => {
    const line = lines.lineOf(picks);
    return line !== undefined && judgeScene(requirement, line, requirement.scenes[0]!).meets;
  };
  return { space, lines, forest, works };
}
export const { space, lines, forest, works } = starving();
export const whole: readonly (readonly number[])[] = wholeOf(space);
export const plans = whole.reduce<number[][]>(
  (all, domain) => all.flatMap((picks) => domain.map((k) => [...picks, k])),
  [[]],
);
export const working = plans.filter(works);
