import { airAt } from "../../birds/air.js";
import type { ExposedRun, ExposedVessel, InSun, StandingWater } from "../../model/exposed.js";
import type { HotDay } from "../../model/extremes.js";
import { conductanceOfPipe, filmOfWind, HEAT_OF_WATER, STILL_AIR_FILM } from "../../physics/cooling.js";
import { groundThroughDay } from "../../physics/ground.js";
import { sunAt, sunRiseOfPipe, sunRiseOfVessel, throughDay } from "../../physics/sun.js";
import { colourById } from "../../tables/colours.js";
import type { HeatChange, HeatCurve, HeatLever, HeatPart } from "./heat-result.js";

/** Steps of the day's curves. */
const HEAT_STEPS = 96;
export const HEAT_STEP = 86_400 / HEAT_STEPS;

/**
 * Water above this is drunk less of [°C].
 *
 * @source kentucky-water-temperature, above 30 degC cuts intake, seen
 */
export const DRUNK_LESS_ABOVE = 30;

/**
 * Water above this is refused [°C].
 *
 * @source kentucky-water-temperature, refused above 44 degC, seen
 */
export const REFUSED_ABOVE = 44;

/**
 * Ground with some moisture or cover in the sun: share of the sun it takes, and the film with its radiation and drying
 * [W/(m² K)].
 *
 * @source common-practice, ground some 15 K over the air at noon, from memory
 */
const SUNNY_GROUND = { absorptance: 0.7, film: 40 } as const;

/** Changes that are tried: lagging and depths [m]; common practice, no source. */
export const TRIED = { lagging: 0.025, shallow: 0.15, deep: 0.3 } as const;

/** Which side of the doubt: still air and the darker end of a colour, or the wind and the middle. */
type Side = "hottest" | "expected";

const filmOn = (day: HotDay, side: Side) => (side === "hottest" ? STILL_AIR_FILM : filmOfWind(day.wind));
const takenBy = ({ colour }: InSun, side: Side) =>
  side === "hottest" ? colour.absorptanceHigh : colour.absorptance;

const steps = (of: (time: number) => number): number[] =>
  Array.from({ length: HEAT_STEPS }, (_, k) => of(k * HEAT_STEP));

export const airThroughDay = (day: HotDay): number[] => steps((time) => airAt(day, time));
const sunThroughDay = ({ sun, dawn, light }: HotDay) =>
  steps((time) => sunAt({ peak: sun, dawn, light }, time));

/** A curve with what it means for birds. */
export function curveOf(water: readonly number[]): HeatCurve {
  let hottest = 0;
  water.forEach((one, k) => {
    if (one > water[hottest]) hottest = k;
  });
  const above = (limit: number) => water.filter((one) => one > limit).length * HEAT_STEP;
  return {
    water,
    peak: water[hottest],
    at: hottest * HEAT_STEP,
    less: above(DRUNK_LESS_ABOVE),
    refused: above(REFUSED_ABOVE),
  };
}

/** What still water in a run tends to, step by step [°C]. */
export function towardsOfRun(run: ExposedRun, day: HotDay, side: Side): number[] {
  const air = airThroughDay(day);
  const sun = sunThroughDay(day);
  const inSun = 1 - run.shade;
  if (run.buried > 0) {
    const { absorptance, film } = SUNNY_GROUND;
    const surface = air.map((one, k) => one + (absorptance * inSun * sun[k]) / film);
    return groundThroughDay(surface, run.buried);
  }
  const pipe = { absorptance: takenBy(run, side), film: filmOn(day, side) };
  return air.map((one, k) => one + sunRiseOfPipe(pipe, inSun * sun[k]));
}

/** How late the water of a run follows [s]; in the ground it is as warm as the ground. */
export function lateness(run: ExposedRun, film: number): number {
  if (run.buried > 0) return 0;
  const { outside, lagging, bore } = run;
  return (HEAT_OF_WATER * (Math.PI / 4) * bore ** 2) / conductanceOfPipe({ outside, lagging, film });
}

const waterOfRun = (run: ExposedRun, day: HotDay, side: Side) =>
  throughDay(towardsOfRun(run, day, side), lateness(run, filmOn(day, side)));

/** A run of pipe through a hot day, as it is and changed. */
export function heatOfRun(run: ExposedRun, day: HotDay, drinkers: number): HeatPart {
  const hottest = (changed: Partial<ExposedRun>) =>
    curveOf(waterOfRun({ ...run, ...changed }, day, "hottest"));
  const white = colourById("white");
  const isOpen = run.buried === 0;
  const changes: readonly (readonly [HeatChange, boolean, Partial<ExposedRun>])[] = [
    ["white", isOpen && run.colour.id !== "white", { colour: white }],
    ["shade", run.shade < 1, { shade: 1 }],
    ["lagging", isOpen && run.lagging < TRIED.lagging, { lagging: TRIED.lagging }],
    ["buriedShallow", run.buried < TRIED.shallow, { buried: TRIED.shallow }],
    ["buriedDeep", run.buried < TRIED.deep, { buried: TRIED.deep }],
  ];
  return {
    ...sharedOf(run),
    kind: "pipe",
    path: `runs[${run.index}]`,
    drinkers,
    volume: run.volume,
    timeConstant: lateness(run, STILL_AIR_FILM),
    hottest: hottest({}),
    expected: curveOf(waterOfRun(run, day, "expected")),
    levers: leversOf(changes, hottest),
  };
}

const sharedOf = ({ id, colour, isColourSaid, shade, material }: ExposedRun | ExposedVessel) => ({
  id,
  colour: colour.id,
  isColourSaid,
  shade,
  ...(material === undefined ? {} : { material }),
});

const leversOf = <Body>(
  changes: readonly (readonly [HeatChange, boolean, Body])[],
  hottest: (changed: Body) => HeatCurve,
): HeatLever[] =>
  changes
    .filter(([, isOne]) => isOne)
    .map(([change, , changed]) => {
      const { peak, less, refused } = hottest(changed);
      return { change, peak, less, refused };
    });

/** A vessel through a hot day, at its ordinary level. */
export function heatOfVessel(vessel: ExposedVessel, day: HotDay): HeatPart {
  const standing = vessel.ordinary.volume > 0 ? vessel.ordinary : vessel.full;
  const water = (side: Side, changed: Partial<ExposedVessel>) =>
    curveOf(waterOfVessel({ ...vessel, ...changed }, standing, day, side));
  const changes: readonly (readonly [HeatChange, boolean, Partial<ExposedVessel>])[] = [
    ["white", vessel.colour.id !== "white", { colour: colourById("white") }],
    ["shade", vessel.shade < 1, { shade: 1 }],
  ];
  return {
    ...sharedOf(vessel),
    kind: "vessel",
    path: `sources[${vessel.index}]`,
    drinkers: 0,
    volume: standing.volume,
    timeConstant: latenessOfVessel(standing, STILL_AIR_FILM),
    hottest: water("hottest", {}),
    expected: water("expected", {}),
    levers: leversOf(changes, (changed) => water("hottest", changed)),
  };
}

const latenessOfVessel = ({ volume, wall }: StandingWater, film: number) =>
  (HEAT_OF_WATER * volume) / (film * wall);

function waterOfVessel(vessel: ExposedVessel, standing: StandingWater, day: HotDay, side: Side): number[] {
  const film = filmOn(day, side);
  const sun = sunThroughDay(day);
  const seen = { absorptance: takenBy(vessel, side), film, ...standing };
  const towards = airThroughDay(day).map(
    (air, k) => air + sunRiseOfVessel(seen, (1 - vessel.shade) * sun[k]),
  );
  return throughDay(towards, latenessOfVessel(standing, film));
}
