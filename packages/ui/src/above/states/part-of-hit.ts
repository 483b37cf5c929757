import type { Hit } from "../../kernels/above/hit.js";
import { partOfJoint } from "../../kernels/above/scene.js";
import type { Selected } from "../../kernels/selected.js";

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
