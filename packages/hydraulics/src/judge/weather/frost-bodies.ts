import type { ExposedRun, ExposedVessel } from "../../model/exposed.js";
import type { FrostNight } from "../../model/extremes.js";
import type { DrinkerGroup } from "../../model/line.js";
import {
  conductanceOfPipe,
  filmOfWind,
  flowThatHolds,
  HEAT_OF_WATER,
  STILL_AIR_FILM,
  timeToCool,
} from "../../physics/cooling.js";
import { iceAfter, leastTimeToFreeze, timeToFreezeRound, timeToIce } from "../../physics/freezing.js";
import { timeOfFrostAt } from "../../physics/ground.js";
import { drinkerById } from "../../tables/drinkers.js";
import type { FrostBand, FrostPart, FrostPartKind } from "./frost-result.js";

/**
 * Ice that no beak gets through [m].
 *
 * @source common-practice, a skin that hens leave alone, from memory
 */
export const STOPPING_ICE = 0.003;

/**
 * A drinker's pin: a thread of water in a body of brass, steel or plastic, both across [m].
 *
 * @source common-practice, sizes of a nipple; frozen in one to two hours at -2 degC as keepers report, from memory
 */
const PIN = { water: 0.004, body: 0.01 } as const;

/**
 * Temperature of the ground where a frost meets it [°C].
 *
 * @source common-practice, early winter ground under a lawn, from memory
 */
const GROUND_BEFORE_FROST = 4;

/** Temperatures that water is held at [°C]: a vessel by heat, a run's far end by flow. */
const [HELD_AT, LEAVES_AT] = [2, 1] as const;

/** A night and the water that meets it. */
export interface InFrost {
  readonly night: FrostNight;
  /** Temperature of the water at dusk [°C]. */
  readonly water: number;
}

const filmOfNight = (night: FrostNight) => filmOfWind(night.wind);

/** Both ends of a band: the film of that night's wind with the least water, and of still air with the most. */
const bandOf = (night: FrostNight, of: (film: number, isLeast: boolean) => number): FrostBand => {
  const soonest = of(filmOfNight(night), true);
  return { soonest, latest: Math.max(soonest, of(STILL_AIR_FILM, false)) };
};

export const lastsOf = ({ soonest, latest }: FrostBand, { hours }: FrostNight): FrostPart["lasts"] =>
  soonest >= hours ? "yes" : latest >= hours ? "perhaps" : "no";

/** Water that loses heat over an area for each volume [m²/m³ = 1/m] and is open or not. */
interface Body {
  readonly volume: number;
  readonly wall: number;
}

const cooled = (body: Body, film: number, { night, water }: InFrost) =>
  timeToCool(
    { capacity: HEAT_OF_WATER * body.volume, conductance: film * body.wall, from: water, air: night.low },
    0,
  );
const frozen = (body: Body, film: number, { night }: InFrost) =>
  leastTimeToFreeze({ volume: body.volume, conductance: film * body.wall }, night.low);

const plus = (a: FrostBand, b: FrostBand): FrostBand => ({
  soonest: a.soonest + b.soonest,
  latest: a.latest + b.latest,
});

/** A thread of water a metre long stands for the pin: its ends are short of nothing. */
export function pinBands(frost: InFrost) {
  const body = { volume: (Math.PI / 4) * PIN.water ** 2, wall: Math.PI * PIN.body };
  const cold = bandOf(frost.night, (film) => cooled(body, film, frost));
  return {
    cold,
    solid: plus(
      cold,
      bandOf(frost.night, (film) => frozen(body, film, frost)),
    ),
  };
}

/** A group of drinkers: pins, or bowls of open water. */
export function frostOfDrinkers(group: DrinkerGroup, path: string, frost: InFrost): FrostPart {
  const known = drinkerById(group.kindId);
  const held = known?.held ?? 0;
  const shared = { id: group.id, count: group.count, path };
  if (held === 0) {
    const { cold, solid } = pinBands(frost);
    const lasts = lastsOf(solid, frost.night);
    const volume = { least: 0, full: 0 };
    return { ...shared, kind: "pin", volume, cold, blocked: solid, solid, lasts, ice: undefined, watts: 0 };
  }
  const depth = BOWL_DEPTH[known?.kind ?? "cup"];
  const area = held / depth;
  return openWater(
    { ...shared, kind: "bowl" },
    { full: held, least: held, surface: area, wall: 2 * area },
    frost,
  );
}

/**
 * Depth of the water in drinkers that hold some [m].
 *
 * @source common-practice, cups, bells and float troughs, from memory
 */
const BOWL_DEPTH = { nipple: 0.01, cup: 0.015, bell: 0.03, trough: 0.05 } as const;

/** Open water, full and as little as is reckoned with [m³], its surface and all that loses heat [m²]. */
export interface OpenWater {
  readonly full: number;
  readonly least: number;
  readonly surface: number;
  readonly wall: number;
}

/** Water that lies open: a beak is stopped by a skin of ice. */
export function openWater(
  part: { readonly id: string; readonly kind: FrostPartKind; readonly count: number; readonly path: string },
  water: OpenWater,
  frost: InFrost,
): FrostPart {
  const { night } = frost;
  const body = (isLeast: boolean) => ({ volume: isLeast ? water.least : water.full, wall: water.wall });
  const cold = bandOf(night, (film, isLeast) => cooled(body(isLeast), film, frost));
  const skin = bandOf(night, (film) => timeToIce(STOPPING_ICE, { film, air: night.low }));
  const through = bandOf(night, (film, isLeast) => frozen(body(isLeast), film, frost));
  const blocked = plus(cold, skin);
  const left = night.hours - cold.soonest;
  const outside = { film: filmOfNight(night), air: night.low };
  return {
    ...part,
    volume: { least: water.least, full: water.full },
    cold,
    blocked,
    solid: plus(cold, through),
    lasts: lastsOf(blocked, night),
    ice: left > 0 ? iceAfter({ from: 0, time: left }, outside) : 0,
    watts: filmOfNight(night) * water.wall * Math.max(0, HELD_AT - night.low),
  };
}

/** A run of pipe, over ground or under it. */
export function frostOfRun(run: ExposedRun, frost: InFrost): FrostPart {
  const { night, water } = frost;
  const per = (film: number) => conductanceOfPipe({ outside: run.outside, lagging: run.lagging, film });
  const capacity = HEAT_OF_WATER * (Math.PI / 4) * run.bore ** 2;
  const isBuried = run.buried > 0;
  const reached = timeOfFrostAt({ depth: run.buried, ground: GROUND_BEFORE_FROST, air: night.low });
  const cold = isBuried
    ? { soonest: reached, latest: reached }
    : bandOf(night, (film) =>
        timeToCool({ capacity, conductance: per(film), from: water, air: night.low }, 0),
      );
  const through = bandOf(night, (film) =>
    timeToFreezeRound(run.bore, { film: per(film) / (Math.PI * run.bore), air: night.low }),
  );
  const solid = plus(cold, through);
  const holds = water > LEAVES_AT && run.length > 0 && !isBuried;
  const conductance = per(filmOfNight(night));
  return {
    id: run.id,
    kind: "pipe",
    count: 1,
    path: `runs[${run.index}]`,
    volume: { least: run.volume, full: run.volume },
    cold,
    blocked: solid,
    solid,
    lasts: lastsOf(solid, night),
    ice: undefined,
    watts: isBuried ? 0 : conductance * run.length * Math.max(0, HELD_AT - night.low),
    ...(holds
      ? {
          holdingFlow: flowThatHolds(
            { conductance, length: run.length },
            { enters: water, leaves: LEAVES_AT, air: night.low },
          ),
        }
      : {}),
    ...(run.material === undefined ? {} : { material: run.material }),
  };
}

/** A vessel of the line: its outlet and pipe stop long before it does. */
export function frostOfVessel(vessel: ExposedVessel, frost: InFrost): FrostPart {
  const { full, lowest } = vessel;
  const part = { id: vessel.id, kind: "vessel" as const, count: 1, path: `sources[${vessel.index}]` };
  const { night } = frost;
  const body = (isLeast: boolean) => (isLeast && lowest.volume > 0 ? lowest : full);
  const cold = bandOf(night, (film, isLeast) => cooled(body(isLeast), film, frost));
  const solid = plus(
    cold,
    bandOf(night, (film, isLeast) => frozen(body(isLeast), film, frost)),
  );
  const film = filmOfNight(night);
  const left = night.hours - cold.soonest;
  return {
    ...part,
    volume: { least: body(true).volume, full: full.volume },
    cold,
    blocked: undefined,
    solid,
    lasts: lastsOf(solid, night),
    ice: left > 0 ? iceAfter({ from: 0, time: left }, { film, air: night.low }) : 0,
    watts: film * full.wall * Math.max(0, HELD_AT - night.low),
    ...(vessel.material === undefined ? {} : { material: vessel.material }),
  };
}
