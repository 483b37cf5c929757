import type { Outcome, SceneReport } from "@headfall/hydraulics";

/** Where least is to spare, over all scenes of an outcome. */
export interface LeastSpare {
  readonly drinker: string;
  /** Negative where it falls short [m]. */
  readonly head: number;
  readonly scene: SceneReport;
}

/** The least head to spare of all that was asked; undefined without drinkers. */
export function leastSpareOf({ scenes, drinkers }: Outcome): LeastSpare | undefined {
  const known = scenes.flatMap((scene) =>
    scene.spare === undefined
      ? []
      : [{ scene, head: scene.spare.head, drinker: drinkers[scene.spare.drinker]?.drinker ?? "" }],
  );
  return known.reduce<LeastSpare | undefined>(
    (least, each) => (least === undefined || each.head < least.head ? each : least),
    undefined,
  );
}
