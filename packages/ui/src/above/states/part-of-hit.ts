import type { Hit } from "../../kernels/above/hit.js";
import { partOfJoint } from "../../kernels/above/scene.js";
import { isSamePart, type Selected } from "../../kernels/selected.js";

/** What a press on a part chooses. */
export function partOfHit(hit: Hit | undefined): Selected | undefined {
  switch (hit?.kind) {
    case "joint":
      return partOfJoint(hit.joint);
    case "drinkers":
      return { kind: "drinkers", run: hit.drinker.run, group: hit.drinker.group, number: hit.drinker.number };
    case "corner":
    case "run":
      return { kind: "run", run: hit.run };
    case undefined:
      return undefined;
  }
}

/** A drag takes hold of what lies uppermost, but of chosen drinkers before the joint they hang at. */
export function heldOf(beneath: readonly Hit[], selected: Selected | undefined): Hit | undefined {
  const isChosen = (hit: Hit) =>
    hit.kind === "drinkers" &&
    selected?.kind === "drinkers" &&
    hit.drinker.run === selected.run &&
    hit.drinker.group === selected.group;
  return beneath.find(isChosen) ?? beneath[0];
}

/** A tap chooses what lies uppermost; a further one where that is chosen already, what lies beneath it. */
export function tappedOf(beneath: readonly Hit[], selected: Selected | undefined): Hit | undefined {
  const chosen = beneath.findLastIndex((hit) => isSamePart(partOfHit(hit), selected));
  return selected === undefined ? beneath[0] : (beneath[chosen + 1] ?? beneath[0]);
}
