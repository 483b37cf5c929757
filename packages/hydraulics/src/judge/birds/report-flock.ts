import type { Pen } from "../../model/flock.js";
import type { Line } from "../../model/line.js";
import type { PenCrowd } from "../../simulate/crowd.js";
import { meanRate, waitsOf } from "../../simulate/crowd-load.js";
import { ordinaryOf } from "../../simulate/crowd-numbers.js";
import { deviceOf, groupOf } from "../../simulate/crowd-want.js";
import { spilledShareOf } from "../../tables/spilled-share.js";
import type { DrinkerVerdict } from "../check-result.js";
import { heightAboveGround } from "../height-above-ground.js";
import { findBirdTroubles } from "./bird-findings.js";
import { needAtAge } from "./bird-needs.js";
import { drinkersOfPens } from "./drinkers-for-plan.js";
import type { BatchReport, FlockReport, GroupCrowd, PenReport } from "./flock-report.js";
import { hangAtForBirds } from "./hang-range.js";
import type { MannedLine } from "./man-line.js";

/** What a check says of the birds: each pen at its busiest hour, what each group was judged with, what is amiss. */
export function reportFlock(
  manned: MannedLine,
  drinkers: readonly Omit<DrinkerVerdict, "certainty">[],
): FlockReport {
  const pens = manned.crowd.pens.map((pen) => reportPen(manned.line, pen));
  const groups = manned.line.drinkers.groups.map((_, g) => reportGroup(manned, g));
  const needed = drinkersOfPens(manned);
  return {
    day: manned.flock.day,
    pens,
    groups,
    findings: findBirdTroubles(manned, { pens, groups, drinkers, needed }),
    region: manned.region,
    needed,
    intakeSize: pens.reduce((sum, pen) => sum + pen.intakeSize, 0),
    intakeExpect: pens.reduce((sum, pen) => sum + pen.intakeExpect, 0),
  };
}

function reportPen(line: Line, crowd: PenCrowd): PenReport {
  const { pen, want, load } = crowd;
  const flows = load.rate > 0;
  const boutVolume = meanBout(crowd);
  const boutSeconds = flows ? boutVolume / load.rate : undefined;
  const waits = waitsOf(load, crowd.places, boutSeconds ?? 0);
  return {
    pen: pen.id,
    index: pen.index,
    birds: want.birds,
    ...(pen.isElsewhere === undefined ? {} : { isElsewhere: pen.isElsewhere }),
    batches: pen.batches.map((_, k) => reportBatch(crowd, k)),
    drinkers: pen.drinkers.length,
    giving: crowd.giving.length,
    places: crowd.places,
    ...intakeWithSpill(line, crowd),
    busiestHour: want.busiestHour,
    demand: load.demand,
    capacity: load.capacity,
    boutVolume,
    boutSeconds,
    load: Number.isFinite(load.load) ? load.load : undefined,
    atOnceAlone: load.atOnceAlone,
    atOnce: load.atOnce,
    busiest: crowd.busiest,
    ordinary: ordinaryOf(crowd),
    ...waits,
    saturates: load.saturates,
    short: load.saturates ? 1 - load.capacity / load.demand : 0,
    rounds: crowd.rounds,
  };
}

/**
 * What is spilled at the drinkers of a pen on average, over what is drunk there.
 *
 * @example spilledAtPen(line, flock.pens[0])   // 0.05
 */
export function spilledAtPen(line: Line, { drinkers }: Pen): number {
  if (drinkers.length === 0) return 0;
  const spilled = drinkers.reduce((sum, d) => sum + spilledShareOf(deviceOf(groupOf(line, d))).spilled, 0);
  return spilled / drinkers.length;
}

/** What the pen takes in the day, with what its drinkers spill of it [m3]. */
function intakeWithSpill(line: Line, { pen, want }: PenCrowd): { intakeSize: number; intakeExpect: number } {
  const taken = 1 + spilledAtPen(line, pen);
  const sum = (pick: "size" | "expect") =>
    want.batches.reduce((total, { count }, k) => total + count * want.intakes[k][pick], 0);
  return { intakeSize: sum("size") * taken, intakeExpect: sum("expect") * taken };
}

/** Mean over the birds of what one drinks in a bout [m3]. */
function meanBout({ want }: PenCrowd): number {
  if (want.birds === 0) return 0;
  return want.batches.reduce((sum, { count, boutVolume }) => sum + count * boutVolume, 0) / want.birds;
}

function reportBatch({ pen, want, load, giving }: PenCrowd, k: number): BatchReport {
  const { kind, index, count, ageDays } = pen.batches[k];
  const { fastest, boutVolume } = want.batches[k];
  const intake = want.intakes[k];
  const isThere = ageDays >= 0;
  const rate =
    isThere && load.rate > 0
      ? meanRate(
          giving.map(({ place }) => place),
          fastest,
        )
      : 0;
  return {
    kind: kind.id,
    kindName: kind.name,
    index,
    count,
    ageDays,
    intakeSize: isThere ? intake.size : 0,
    intakeExpect: isThere ? intake.expect : 0,
    bouts: isThere && boutVolume > 0 ? intake.size / boutVolume : 0,
    boutVolume,
    boutSeconds: rate > 0 ? boutVolume / rate : undefined,
    rate,
    flowNeed: needAtAge(kind, ageDays),
  };
}

function reportGroup({ line, flock, origins }: MannedLine, g: number): GroupCrowd {
  const group = line.drinkers.groups[g];
  const { pen, busiest, ordinary, need } = origins[g];
  const members = Array.from({ length: group.count }, (_, k) => group.first + k);
  return {
    group: group.id,
    index: g,
    pen,
    busiest: { count: group.busiest, from: busiest },
    ordinary: { count: group.ordinary, from: ordinary },
    need: { flow: group.need, from: need },
    height: heightAboveGround(line, members),
    hangAt: pen === undefined ? undefined : hangAtForBirds(flock.pens[pen], deviceOf(group)),
  };
}
