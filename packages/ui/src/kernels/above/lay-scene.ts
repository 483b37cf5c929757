import { drinkerGroupsOf, type Plan } from "@headfall/hydraulics";
import { type FlowArrow, flowArrows } from "./flow-arrows.js";
import { gatherMarks } from "./gather-marks.js";
import { type AboveLayout, type AboveRun, layAbove, spotAt } from "./lay-above.js";
import { type PlacedDrinker, placeDrinkers } from "./place-drinkers.js";
import { placeTexts } from "./place-texts.js";
import { figuresOf, strokeOfBore } from "./run-figures.js";
import type { Scene, SceneFeed, SceneGroup, SceneJoint, SceneRequest, SceneRun } from "./scene.js";
import { coveredBoxes, wantedTexts } from "./scene-texts.js";
import { halfWidthOf, vesselOutline } from "./vessel-outline.js";
import type { Pixel } from "./viewport.js";

/** Least distance between two marks, and how small a vessel may be drawn (half) [px]. */
export const MARK_ROOM = 13;
const LEAST_VESSEL = 10;
const BARE_STROKE = 3.5;

export function layScene(request: SceneRequest): Scene {
  const { plan, checked, scale } = request;
  const layout = layAbove(plan);
  const drinkers = placeDrinkers(plan, layout, checked);
  const groups = sceneGroups(plan, layout, drinkers, scale);
  const marks = marksByRun(groups);
  const bare = {
    layout,
    drinkers,
    groups,
    runs: layout.runs.map((run) => sceneRun(run, marks.get(run.index) ?? [], request)),
    joints: sceneJoints(plan, layout, scale),
    feeds: sceneFeeds(plan, layout, scale),
  };
  return { ...bare, texts: placeTexts(wantedTexts(bare, request), coveredBoxes(bare), request.seen) };
}

/** A place on the ground in the pixels of the scene. */
export const inScene = ({ x, y }: { readonly x: number; readonly y: number }, scale: number): Pixel => ({
  x: x * scale,
  y: -y * scale,
});

function sceneRun(
  run: AboveRun,
  marks: readonly Pixel[],
  { checked, moment, scale }: SceneRequest,
): SceneRun {
  const pixels = run.spots.map((spot) => inScene(spot, scale));
  const figures = figuresOf(run, checked, moment);
  return {
    run,
    pixels,
    stroke: figures === undefined ? BARE_STROKE : strokeOfBore(figures.bore),
    figures,
    arrows:
      figures === undefined ? [] : flowArrows(pixels, (share) => figures.flowAt(share * run.length), marks),
    cut: run.isToScale ? undefined : cutOf(run, scale),
  };
}

function marksByRun(groups: readonly SceneGroup[]): ReadonlyMap<number, readonly Pixel[]> {
  const byRun = new Map<number, Pixel[]>();
  for (const { run, marks } of groups) {
    const pixels = byRun.get(run) ?? [];
    pixels.push(...marks.map(({ pixel }) => pixel));
    byRun.set(run, pixels);
  }
  return byRun;
}

/** A break in the middle of the run. */
function cutOf({ spots }: AboveRun, scale: number): FlowArrow {
  const [before, at, after] = [0.49, 0.5, 0.51].map((share) => inScene(spotAt(spots, share), scale));
  const degrees = (Math.atan2(after!.y - before!.y, after!.x - before!.x) * 180) / Math.PI;
  return { at: at!, degrees };
}

/** From the point that fills a header tank to the tank. */
function sceneFeeds(plan: Plan, { joints, jointByName }: AboveLayout, scale: number): SceneFeed[] {
  return joints.flatMap((tank) => {
    const from = jointByName.get(plan.sources[tank.source]?.feed?.from ?? "");
    return from === undefined ? [] : [{ from: inScene(from, scale), to: inScene(tank, scale) }];
  });
}

function sceneJoints(plan: Plan, layout: AboveLayout, scale: number): SceneJoint[] {
  const meeting = new Map<string, number>();
  for (const { from, to } of layout.runs)
    for (const name of new Set([from, to])) meeting.set(name, (meeting.get(name) ?? 0) + 1);
  return layout.joints.map((joint) => {
    const source = plan.sources[joint.source];
    const outline = source && vesselOutline(source.vessel);
    return {
      joint,
      at: inScene(joint, scale),
      meeting: meeting.get(joint.name) ?? 0,
      vessel: outline && { outline, half: Math.max(LEAST_VESSEL, halfWidthOf(outline) * scale) },
    };
  });
}

function sceneGroups(
  plan: Plan,
  layout: AboveLayout,
  drinkers: readonly PlacedDrinker[],
  scale: number,
): SceneGroup[] {
  const byGroup = new Map<string, PlacedDrinker[]>();
  for (const drinker of drinkers) {
    const key = `${drinker.run} ${drinker.group}`;
    const there = byGroup.get(key);
    if (there === undefined) byGroup.set(key, [drinker]);
    else there.push(drinker);
  }
  return layout.runs.flatMap(({ index, name }) => {
    const groups = drinkerGroupsOf(plan.runs[index]!);
    return groups.map((typed, group): SceneGroup => {
      const own = byGroup.get(`${index} ${group}`) ?? [];
      const marks = gatherMarks(own, MARK_ROOM / scale);
      return {
        run: index,
        group,
        name: typed.id ?? (groups.length === 1 ? name : `${name} group ${group + 1}`),
        kind: typed.kind,
        drinkers: own,
        marks: marks.map((mark) => ({ ...mark, pixel: inScene(mark.at, scale) })),
      };
    });
  });
}
