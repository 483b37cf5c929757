import { EDGE_SINKS, HELD_ASIDE } from "../../../model/waterer-mishap.js";
import type { LooseWaterer } from "../../../model/yard.js";
import { pushThatTips } from "../../../physics/tipping.js";
import { LEAVE, tiltOf } from "../../yard/waterer-tilt.js";
import { DAILY } from "../guard.js";
import { type PenAsked, runWaterer, type WithGuard } from "./run-waterer.js";
import {
  TIME_TO_SET_RIGHT,
  WATERER_GUARD_KINDS,
  type WatererGuard,
  type WatererGuardResult,
} from "./waterer-guard.js";
import type { WatererEnd, WatererMishapResult } from "./waterer-mishap-result.js";

const HOUR = 3600;
/** Steps in which boards are cut and cords tied [m], and the longest of them. */
const STEP = 0.1;
const MOST = { board: 1.2, cord: 3 } as const;
/**
 * Mass of what is laid into a pan [kg]: a brick.
 *
 * @source common-practice, a house brick, from memory
 */
const BRICK = 2.5;

/** What guards are tried on. */
export interface WatererGuarding {
  readonly asked: PenAsked;
  readonly result: WatererMishapResult;
  readonly nothing: WatererEnd;
}

/** Every guard that does something against a mishap of a loose waterer, the cheapest kind first. */
export function watererGuardsAgainst(guarding: WatererGuarding): WatererGuardResult[] {
  const { waterer } = guarding.asked.yard.waterers[guarding.result.mishap.waterer];
  const found = [
    look(guarding),
    ...standings(guarding, waterer),
    ventHole(guarding),
    weight(guarding, waterer),
    secondWaterer(guarding, waterer),
  ];
  return found
    .filter((one): one is WatererGuardResult => one !== undefined && doesSomething(one))
    .sort((a, b) => WATERER_GUARD_KINDS.indexOf(a.guard.kind) - WATERER_GUARD_KINDS.indexOf(b.guard.kind));
}

const doesSomething = ({ guard, buysTime, savesWater }: WatererGuardResult): boolean =>
  guard.kind === "look" ||
  guard.kind === "weight" ||
  buysTime === undefined ||
  buysTime >= HOUR / 2 ||
  savesWater >= 1e-4;

function resultWith(
  guard: WatererGuard,
  before: WatererMishapResult,
  after: Pick<WatererGuardResult, "harmAfter" | "birdHours" | "lost">,
): WatererGuardResult {
  const [was, is] = [before.harmAfter, after.harmAfter];
  return {
    guard,
    harmAfter: is,
    birdHours: after.birdHours,
    lost: after.lost,
    buysTime: was === undefined ? 0 : is === undefined ? undefined : is - was,
    savesWater: before.lost - after.lost,
    isEnough: is === undefined || is >= DAILY + TIME_TO_SET_RIGHT,
  };
}

const again = ({ asked, result }: WatererGuarding, guard: WatererGuard, more: WithGuard) =>
  resultWith(guard, result, runWaterer(asked, result.mishap, more));

/** Found at the look, it is set right and filled: in whole hours, at most a day, that leave an hour before harm. */
function look({ result }: WatererGuarding): WatererGuardResult | undefined {
  const most = Math.min(DAILY, (result.harmAfter ?? Number.MAX_VALUE) - TIME_TO_SET_RIGHT);
  if (most < HOUR) return undefined;
  const every = Math.floor(most / HOUR) * HOUR;
  return {
    ...resultWith({ kind: "look", every }, result, { harmAfter: undefined, birdHours: 0, lost: result.lost }),
    isEnough: every >= DAILY,
  };
}

/** It is stood or hung otherwise before it happens. */
function standings(guarding: WatererGuarding, waterer: LooseWaterer): WatererGuardResult[] {
  const { kind, slope, cord } = waterer;
  const run = (guard: WatererGuard, instead: LooseWaterer) => again(guarding, guard, { instead });
  switch (guarding.result.mishap.kind) {
    case "offLevel":
      return [
        ...turns(waterer).map((way) => run({ kind: "turnHole", way }, { ...waterer, hole: way })),
        ...(slope > 0 ? [run(shimOf(waterer), { ...waterer, slope: 0 })] : []),
        ...boards(waterer).map((across) =>
          run({ kind: "board", across }, { ...waterer, kind: { ...kind, base: across } }),
        ),
      ];
    case "holeUphill":
      return slope > 0 ? [run(shimOf(waterer), { ...waterer, slope: 0 })] : [];
    case "heldAside":
      return cords(waterer, cord).map((length) =>
        run({ kind: "longerCord", cord: length }, { ...waterer, cord: length }),
      );
    default:
      return [];
  }
}

/** Under the lower edge until it stands level. */
const shimOf = (waterer: LooseWaterer): WatererGuard => {
  const tilt = tiltOf(waterer);
  return { kind: "shim", height: "shims" in tilt ? tilt.shims.level : 0 };
};

/** Ways to turn the hole that drain later, the least far first. */
function turns({ kind, hole }: LooseWaterer): ("sideways" | "downhill")[] {
  if (kind.works !== "vacuum") return [];
  return hole === "uphill" ? ["sideways", "downhill"] : hole === "sideways" ? ["downhill"] : [];
}

/** The narrowest board, in steps of 10 cm, on which the same sinking leaves half of the slope that drains it. */
function boards(waterer: LooseWaterer): number[] {
  const { kind, slope } = waterer;
  const tilt = tiltOf(waterer);
  const limit = "drainsAt" in tilt ? tilt.drainsAt : undefined;
  if (limit === undefined || slope >= LEAVE * limit) return [];
  const across = Math.ceil(EDGE_SINKS / (LEAVE * limit - slope) / STEP - 1e-9) * STEP;
  return across > kind.base && across <= MOST.board ? [across] : [];
}

/** The shortest cord, in steps of 10 cm, by which it may be held aside without spilling. */
function cords(waterer: LooseWaterer, cord: number): number[] {
  const tilt = tiltOf(waterer);
  if (tilt.works !== "bell" || tilt.swing === undefined) return [];
  const length = Math.ceil((HELD_ASIDE * cord) / tilt.swing / STEP + 1e-6) * STEP;
  return length > cord && length <= MOST.cord ? [length] : [];
}

/** Another opening for air: the lid may be as tight as it likes. */
function ventHole({ result, nothing }: WatererGuarding): WatererGuardResult | undefined {
  if (result.mishap.kind !== "ventShut") return undefined;
  return resultWith({ kind: "ventHole" }, result, { ...nothing, lost: 0 });
}

/** A brick in it: it takes a harder push to tip, most when it is nearly empty; tipped all the same, it is as empty. */
function weight({ asked, result }: WatererGuarding, { kind }: LooseWaterer): WatererGuardResult | undefined {
  if (kind.works !== "pan" && kind.works !== "trough") return undefined;
  if (result.mishap.kind !== "kickedOver") return undefined;
  const left = asked.yard.waterers[result.mishap.waterer];
  const mass = kind.empty + (left.stays - left.gives) * asked.line.water.density;
  const stand = { base: kind.works === "pan" ? kind.base : kind.width, height: kind.depth };
  const guard: WatererGuard = {
    kind: "weight",
    mass: BRICK,
    tippedBy: pushThatTips({ mass, ...stand }),
    tippedThenBy: pushThatTips({ mass: mass + BRICK, ...stand }),
  };
  return { ...resultWith(guard, result, result), isEnough: false };
}

const secondWaterer = (guarding: WatererGuarding, waterer: LooseWaterer): WatererGuardResult =>
  again(guarding, { kind: "secondWaterer" }, { beside: waterer });
