import { countVerdicts, judgeLine, worstOf } from "../judge/judge-line.js";
import type { Line } from "../model/line.js";
import type { Close, DrinkerOutcome, Outcome } from "./cure-answer.js";
import { judgeScene, lineInScene, type Requirement, type SceneReport, spareOf } from "./requirement.js";

/** How all drinkers of a line fare in every scene of a requirement. */
export function outcomeOf(requirement: Requirement, line: Line): Outcome {
  const [today, ...coming] = requirement.scenes;
  const judged = judgeLine(lineInScene(requirement, line, today));
  const scenes = [
    judgeScene(requirement, line, today, judged),
    ...coming.map((scene) => judgeScene(requirement, line, scene)),
  ];
  return {
    verdict: worstOf(judged.drinkers),
    counts: countVerdicts(judged.drinkers),
    scenes,
    drinkers: judged.drinkers.map(
      ({ drinker, verdict, moments }, d): DrinkerOutcome => ({
        drinker,
        verdict,
        spare: spareOf(judged, d).head,
        moments,
      }),
    ),
    meets: scenes.every(({ meets }) => meets),
  };
}

/** Where least is to spare, over all scenes. */
export function closestOf({ scenes }: Outcome, line: Line): Close | undefined {
  const least = scenes.reduce<SceneReport | undefined>(
    (worst, scene) =>
      scene.spare !== undefined && (worst?.spare === undefined || scene.spare.head < worst.spare.head)
        ? scene
        : worst,
    undefined,
  );
  if (least?.spare === undefined) return undefined;
  const { head, drinker, against } = least.spare;
  return { drinker: line.drinkers.id[drinker], spare: head, week: least.week, hot: least.hot, against };
}
