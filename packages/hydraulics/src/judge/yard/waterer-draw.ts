import type { Flock } from "../../model/flock.js";
import { type FlockIntake, intakeOfPen } from "../../model/flock-intake.js";
import { flockInAir, flockInDays } from "../../model/flock-on.js";
import type { LooseWaterer } from "../../model/yard.js";
import { evaporated, evaporationInAir } from "../../physics/evaporation.js";
import { spilledShareOf } from "../../tables/spilled-share.js";
import { hangAtForBirds } from "../birds/hang-range.js";
import type { WatererReport, WatererWeek, YardOfPlan } from "./yard-result.js";

const DAY = 86_400;

/** What a waterer's spill is counted as: pans as founts, troughs and bells as those of a line. */
export function spillOf({ kind }: LooseWaterer): number {
  const devices = {
    vacuum: "fount",
    pan: "fount",
    trough: "trough",
    bell: "bell",
    nipples: "nipple",
  } as const;
  return spilledShareOf(devices[kind.works]).spilled;
}

/** Water that stands open at one [m²]. */
export function openAreaOf({ kind }: LooseWaterer): number {
  switch (kind.works) {
    case "vacuum": {
      const ring = Math.PI * (kind.rim ** 2 - kind.jar ** 2);
      // Spouts are small cups: a tenth of the ring they stand in.
      return kind.lip === "spouts" ? ring / 10 : ring;
    }
    case "bell":
      return Math.PI * (kind.rim ** 2 - kind.jar ** 2);
    case "pan":
      return Math.PI * kind.rim ** 2;
    case "trough":
      return kind.length * kind.width;
    case "nipples":
      return 0;
  }
}

/** Water one loses to the air on a day of such a high [m³]. */
export function lostToAir(waterer: LooseWaterer, high: number): number {
  return evaporated({ rate: evaporationInAir(high, waterer.isShaded), area: openAreaOf(waterer), time: DAY });
}

/** What the weeks of one waterer are counted with. */
export interface Drawing {
  readonly flock: Flock;
  readonly hotDay: YardOfPlan["hotDay"];
  /** Position of its pen. */
  readonly pen: number;
  /** Share of what the pen drinks that is taken from one of these. */
  readonly share: number;
  readonly gives: number;
  readonly weeks: number;
}

/** The plan's day and each week after it, of one waterer. */
export function weeksOf(waterer: LooseWaterer, drawing: Drawing): readonly WatererWeek[] {
  return Array.from({ length: drawing.weeks + 1 }, (_, week) => weekOf(waterer, drawing, week));
}

function weekOf(
  waterer: LooseWaterer,
  { flock, hotDay, pen, share, gives }: Drawing,
  week: number,
): WatererWeek {
  const then = flockInDays(flock, 7 * week);
  const hot = flockInAir(then, hotDay);
  const drawOn = ({ pens, weather }: Flock): FlockIntake => {
    const taken = share * (1 + spillOf(waterer));
    const dry = lostToAir(waterer, weather.high);
    const { size, expect, low, high } = intakeOfPen(pens[pen], weather);
    return {
      size: size * taken + dry,
      expect: expect * taken + dry,
      low: low * taken + dry / 2,
      high: high * taken + dry * 2,
    };
  };
  const [draw, hotDraw] = [drawOn(then), drawOn(hot)];
  const refills = (drawn: FlockIntake) => (gives > 0 ? drawn.size / gives : undefined);
  return {
    week,
    day: then.day,
    draw,
    hotDraw,
    refills: refills(draw),
    hotRefills: refills(hotDraw),
    hang: hangAtForBirds(then.pens[pen], waterer.kind.heightAs),
  };
}

/** How long one lasts from full [s], on the figure to size on; undefined where nothing is drawn. */
export function lastsOf({ gives }: Pick<WatererReport, "gives">, drawn: number): number | undefined {
  return drawn > 0 ? (gives / drawn) * DAY : undefined;
}
