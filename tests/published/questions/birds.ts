import { busiestHour, dayCurve, shareBetween } from "../../../packages/hydraulics/src/birds/day-curve.js";
import { needOfFlow } from "../../../packages/hydraulics/src/birds/flow-need.js";
import { heatFactor, intakeOf } from "../../../packages/hydraulics/src/birds/intake.js";
import { erlangB, erlangC } from "../../../packages/hydraulics/src/birds/queue.js";
import { HEAT_TRIAL } from "../../../packages/hydraulics/src/judge/birds/bird-findings.js";
import {
  type Device,
  drinkersNeeded,
  EDGES,
  type Region,
} from "../../../packages/hydraulics/src/judge/birds/drinkers-needed.js";
import type { Batch, Pen, Weather } from "../../../packages/hydraulics/src/model/flock.js";
import { intakeOfPen } from "../../../packages/hydraulics/src/model/flock-intake.js";
import { crowdLoad } from "../../../packages/hydraulics/src/simulate/crowd-load.js";
import { birdById } from "../../../packages/hydraulics/src/tables/birds.js";
import type { Figure, Givens } from "../figures.js";
import { plain, type Question } from "./question.js";

const HOUR = 3600;
const volumeOf = (si: number): Figure => ({ kind: "volume", si });

function penOf(given: Givens): Pen {
  const kind = birdById(given.text("kind"));
  if (kind === undefined) throw new Error(`no bird is called ${given.text("kind")}`);
  const batch: Batch = {
    kind,
    index: 0,
    count: given.number("count"),
    ageDays: given.has("ageDays") ? given.number("ageDays") : kind.grownDays,
    lay: given.has("lay") ? given.number("lay") : 0,
  };
  return { id: "pen", index: 0, batches: [batch], drinkers: [] };
}

/** One temperature all day; 21 °C if none is given. */
function airOf(given: Givens): Weather {
  const high = given.has("air") ? given.number("air") : 21;
  return { high, low: high, light: 12 * HOUR, dawn: 6 * HOUR, hotSpell: undefined };
}

/** What so many birds of the table drink in a day, and how many days a vessel lasts them. */
const flockIntake: Question = (given) => {
  const { size, expect } = intakeOfPen(penOf(given), airOf(given));
  return {
    size: volumeOf(size),
    expect: volumeOf(expect),
    ...(given.has("vessel") ? { days: plain(given.measure("vessel", "volume") / size) } : {}),
  };
};

/** What one bird of the table drinks from its first day to its last, in all. */
const intakeSince: Question = (given) => {
  const [{ kind, ageDays }] = penOf(given).batches as [Batch];
  const days = Array.from({ length: ageDays }, (_, k) => k + 1);
  const sum = (points: typeof kind.size) => days.reduce((total, day) => total + intakeOf(points, day, 0), 0);
  return { size: volumeOf(sum(kind.size)), expect: volumeOf(sum(kind.expect)) };
};

/** Between the rows of a table that is given. */
const rowIntake: Question = (given) => {
  const points = given.list("rows").map((row) => ({
    ageDays: row.number("ageDays"),
    lay: undefined,
    intake: row.measure("intake", "volume"),
  }));
  const each = intakeOf(points, given.number("ageDays"), 0);
  return { each: volumeOf(each), all: volumeOf(each * given.number("count")) };
};

/** A printed volume for so many birds, read and shared out. */
const volumeEach: Question = (given) => ({
  each: volumeOf(given.measure("volume", "volume") / given.number("count")),
});

const heat: Question = (given) => ({ factor: plain(heatFactor(given.number("air"))) });

const flowNeed: Question = (given) => {
  const kind = birdById(given.text("kind"));
  if (kind === undefined) throw new Error("no such bird");
  return { flow: { kind: "flow", si: needOfFlow(kind.flowNeed, 7 * given.number("weeks")) } };
};

/** Nothing is given: the two flows are the library's own constants. */
const heatTrial: Question = () => ({
  low: { kind: "flow", si: HEAT_TRIAL.low },
  high: { kind: "flow", si: HEAT_TRIAL.high },
});

/** How a day's drinking lies in its light. */
const dayShares: Question = (given) => {
  const light = given.number("lightHours") * HOUR;
  const curve = dayCurve({ shape: given.text("shape") as "evening", dawn: 6 * HOUR, light });
  const dark = 6 * HOUR + light;
  return {
    lastTwoHours: plain(shareBetween(curve, dark - 2 * HOUR, dark)),
    lastThreeHours: plain(shareBetween(curve, dark - 3 * HOUR, dark)),
    busiestHour: plain(busiestHour(curve).share),
  };
};

const crowd: Question = (given) => {
  const each = given.measure("intake", "volume");
  const { load, atOnceAlone } = crowdLoad(
    [
      {
        count: given.number("count"),
        demand: (each * given.number("share")) / HOUR,
        fastest: 1e-6,
        boutVolume: each / 40,
      },
    ],
    [{ flow: given.measure("flow", "flow"), workedBy: "trigger", places: 1 }],
  );
  return { load: plain(load), share: plain(load / given.number("count")), atOnce: plain(atOnceAlone) };
};

/** What one source of rules asks of a pen. */
const allowance: Question = (given) => {
  const device = given.text("device") as Device;
  const pen = penOf(given);
  const { asked } = drinkersNeeded(pen, device, {
    region: given.text("region") as Region,
    atOnce: { birds: 0, places: 1 },
  });
  const rules = asked.filter(({ rule }) => rule.citation.source === given.text("source"));
  const figureOf = (counts: string) => rules.find(({ rule }) => rule.counts === counts)?.rule.figure ?? 0;
  const edge = figureOf("edge");
  return {
    needed: plain(Math.max(0, ...rules.map(({ needed }) => needed))),
    edge: { kind: "length", si: edge * given.number("count") },
    ...(device === "bell" && edge > 0 ? { birdsOnOne: plain(Math.floor(EDGES.bell / edge)) } : {}),
  };
};

const loss: Question = (given) => ({
  chance: plain(erlangB(given.number("places"), given.number("load"))),
});

const delay: Question = (given) => ({
  chance: plain(erlangC(given.number("places"), given.number("load"))),
});

export const BIRD_QUESTIONS: Readonly<Record<string, Question>> = {
  flockIntake,
  intakeSince,
  rowIntake,
  volumeEach,
  heat,
  flowNeed,
  heatTrial,
  dayShares,
  crowd,
  allowance,
  loss,
  delay,
};
