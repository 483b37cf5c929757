import { SOILS } from "../../packages/hydraulics/src/document/soil-names.js";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import type { PlanData } from "./plans.js";
import { type Chooser, chooserOf } from "./typed.js";

/** A plan with something to be built from: footings, soil, lengths sold and on hand, prices, people to call. */
export function withRandomBuilding(plan: PlanData, seed: number): PlanData {
  const choose = chooserOf(randomFrom(seed));
  const sources = (plan["sources"] as PlanData[]).map((source) =>
    choose.chance(0.5) ? { ...source, footing: randomFooting(choose) } : source,
  );
  const laid = (plan["runs"] as PlanData[]).flatMap(({ pipe }) => (typeof pipe === "string" ? [pipe] : []));
  const shelf = [...new Set(laid)].slice(0, 4).map((pipe) => randomShelf(choose, pipe));
  return {
    ...plan,
    sources,
    ...(shelf.length > 0 && choose.chance(0.6) ? { shelf } : {}),
    ...(choose.chance(0.5) ? { soil: choose.oneOf(SOILS) } : {}),
    ...(choose.chance(0.3) ? { contacts: [{ who: "Next door", phone: "555 0100" }] } : {}),
    ...(choose.chance(0.4)
      ? { prices: { drinker: 2, joint: 1, parts: { "elbow-90": 0.9, "a part nobody has": 5 } }, money: "EUR" }
      : {}),
  };
}

function randomFooting(choose: Chooser): PlanData {
  return {
    ...(choose.chance(0.5) ? { feet: choose.whole(3, 8) } : {}),
    ...(choose.chance(0.5) ? { foot: choose.length(choose.uniform(0.02, 0.3)) } : {}),
    ...(choose.chance(0.3) ? { pad: { length: choose.length(choose.uniform(0.1, 0.6)) } } : {}),
    ...(choose.chance(0.5) ? { width: choose.length(choose.uniform(0.2, 2)) } : {}),
    ...(choose.chance(0.5) ? { weighs: choose.whole(0, 60) } : {}),
    ...(choose.chance(0.5) ? { vessel: choose.whole(0, 40) } : {}),
    ...(choose.chance(0.2) ? { tied: true } : {}),
  };
}

/** Pieces shorter together than what is on hand, where both are told. */
function randomShelf(choose: Chooser, pipe: string): PlanData {
  const pieces = Array.from({ length: choose.whole(0, 4) }, () => choose.uniform(0.1, 4));
  const sold = choose.uniform(1.5, 12);
  return {
    pipe,
    ...(choose.chance(0.5)
      ? { sold: choose.chance(0.5) ? choose.length(sold) : [choose.length(sold), choose.length(1.5 * sold)] }
      : {}),
    ...(choose.chance(0.5) ? { pieces: pieces.map((each) => choose.length(each)) } : {}),
    ...(choose.chance(0.2) ? { onHand: `${(pieces.reduce((a, b) => a + b, 0) + 1).toFixed(3)} m` } : {}),
    ...(choose.chance(0.5) ? { price: 4, per: "10 ft" } : {}),
  };
}
