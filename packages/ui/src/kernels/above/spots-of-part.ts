import type { Selected } from "../selected.js";
import type { AboveLayout } from "./lay-above.js";
import { type PlacedDrinker, placeAlong } from "./place-drinkers.js";
import type { Ground } from "./spot.js";

/** Places that show where a part is, to bring it into sight; none when the plan has no such part. */
export function spotsOfPart(
  part: Selected,
  layout: AboveLayout,
  drinkers: readonly PlacedDrinker[],
): readonly Ground[] {
  switch (part.kind) {
    case "source":
      return layout.joints.filter(({ source }) => source === part.source);
    case "joint":
      return layout.joints.filter(({ name }) => name === part.joint);
    case "run": {
      const run = layout.runs[part.run];
      return run === undefined ? [] : [...run.spots, placeAlong(run, run.length / 2)];
    }
    case "drinkers":
      return drinkers
        .filter(({ run, group }) => run === part.run && group === part.group)
        .filter(({ number }) => part.number === undefined || number === part.number)
        .map(({ at }) => at);
  }
}
