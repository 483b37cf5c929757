import type { HotDay } from "../../model/extremes.js";
import type { LooseWaterer } from "../../model/yard.js";
import { HEAT_OF_WATER, STILL_AIR_FILM } from "../../physics/cooling.js";
import { heightOfVessel } from "../../physics/vessel.js";
import { COLOUR_NOT_SAID, colourById } from "../../tables/colours.js";
import { vesselById } from "../../tables/vessels.js";
import { drunkFrom } from "./frost-waterers.js";
import { curveOf, DRUNK_LESS_ABOVE, HEAT_STEP } from "./heat-bodies.js";
import type { HeatLever, HeatPart, HeatRefresh } from "./heat-result.js";
import { type OpenBody, type Skin, type SunnyAir, sunnyAir, throughOpenDay, warmFrom } from "./open-water.js";

/** The weather that loose waterers are reckoned in, on both sides of the doubt. */
export interface WatererDay {
  readonly hottest: SunnyAir;
  readonly expected: SunnyAir;
  /** Of what they are filled with [°C]. */
  readonly fresh: number;
}

export function watererDayOf(day: HotDay, fresh: number): WatererDay {
  return { hottest: sunnyAir(day, STILL_AIR_FILM), expected: sunnyAir(day, undefined), fresh };
}

/**
 * A loose waterer through a hot day. Of a fount or bell at worst the water in its ring, which stands there while nobody
 * drinks, or all of it where that is warmer; to expect all of it, mixed. Of a pan or a bucket all of it. It is dark, for no
 * plan says its colour.
 */
export function heatOfWaterer(waterer: LooseWaterer, path: string, day: WatererDay): HeatPart {
  const { kind, id, count, isShaded } = waterer;
  const whole = wholeOf(waterer);
  const shade = isShaded ? 1 : 0;
  const dark = colourById(COLOUR_NOT_SAID);
  const worst = { absorptance: dark.absorptanceHigh, shade };
  const { stands, hottest, ofWhole } = hotterOf(kind, whole, worst, day);
  const expected = throughOpenDay(whole, { absorptance: dark.absorptance, shade }, day.expected);
  return {
    id,
    kind:
      kind.works === "nipples" ? "bucket" : kind.works === "pan" || kind.works === "trough" ? "pan" : "fount",
    path,
    drinkers: count,
    volume: whole.volume,
    colour: dark.id,
    isColourSaid: false,
    shade,
    timeConstant: (HEAT_OF_WATER * stands.volume) / (STILL_AIR_FILM * (stands.open + stands.wall)),
    hottest: curveOf(hottest.water),
    expected: curveOf(expected.water),
    levers: leversOf(stands, shade, day),
    waterer: {
      open: stands.open,
      dried: { hottest: hottest.dried, expected: expected.dried },
      refresh: refreshOf({ body: whole, skin: worst, day, standing: ofWhole.water }),
    },
  };
}

/** The ring alone, or all of it, at worst. */
function hotterOf(kind: LooseWaterer["kind"], whole: OpenBody, skin: Skin, day: WatererDay) {
  const ofWhole = throughOpenDay(whole, skin, day.hottest);
  if (kind.works !== "vacuum" && kind.works !== "bell") return { stands: whole, hottest: ofWhole, ofWhole };
  const ring = ringOf(kind);
  const ofRing = throughOpenDay(ring, skin, day.hottest);
  const isRing = Math.max(...ofRing.water) >= Math.max(...ofWhole.water);
  return { stands: isRing ? ring : whole, hottest: isRing ? ofRing : ofWhole, ofWhole };
}

function leversOf(body: OpenBody, shade: number, { hottest }: WatererDay): HeatLever[] {
  const lever = (change: HeatLever["change"], skin: Skin): HeatLever => {
    const { peak, less, refused } = curveOf(throughOpenDay(body, skin, hottest).water);
    return { change, peak, less, refused };
  };
  if (shade === 1) return [];
  return [
    lever("white", { absorptance: colourById("white").absorptanceHigh, shade }),
    lever("shade", { absorptance: colourById(COLOUR_NOT_SAID).absorptanceHigh, shade: 1 }),
  ];
}

/** Emptied and filled anew each time it is too warm, from midnight on. */
function refreshOf({
  body,
  skin,
  day: { hottest, fresh },
  standing,
}: {
  readonly body: OpenBody;
  readonly skin: Skin;
  readonly day: WatererDay;
  /** Its water through the day while nobody fills it. */
  readonly standing: readonly number[];
}): HeatRefresh {
  const first = standing.findIndex((one) => one > DRUNK_LESS_ABOVE);
  if (first < 0) return { water: fresh, times: 0, againAfter: undefined };
  if (fresh >= DRUNK_LESS_ABOVE) return { water: fresh, times: undefined, againAfter: undefined };
  let from = first * HEAT_STEP;
  let times = 0;
  let soonest = Number.POSITIVE_INFINITY;
  while (from < 86_400) {
    times += 1;
    const after = warmFrom(body, skin, hottest, { from, water: fresh, to: DRUNK_LESS_ABOVE });
    soonest = Math.min(soonest, after ?? Number.POSITIVE_INFINITY);
    from += after ?? 86_400;
  }
  return { water: fresh, times, againAfter: Number.isFinite(soonest) ? soonest : undefined };
}

function ringOf(kind: { readonly rim: number; readonly jar: number; readonly pool: number }): OpenBody {
  const open = Math.PI * (kind.rim ** 2 - kind.jar ** 2);
  return {
    volume: open * kind.pool,
    open,
    flat: 0,
    wall: 2 * Math.PI * kind.rim * kind.pool,
    silhouette: 2 * kind.rim * kind.pool,
  };
}

/** All of its water, as sun and air see it. What stands on the ground neither gives nor takes heat there. */
function wholeOf({ kind, holds }: LooseWaterer): OpenBody {
  switch (kind.works) {
    case "vacuum": {
      const top = Math.PI * kind.jar ** 2;
      const height = Math.max(0, holds - ringOf(kind).volume) / top;
      const ring = ringOf(kind);
      return {
        volume: holds,
        open: ring.open,
        flat: top,
        wall: top + 2 * Math.PI * kind.jar * height + ring.wall,
        silhouette: 2 * kind.jar * height + ring.silhouette,
      };
    }
    case "bell": {
      const ring = ringOf(kind);
      const bucket = bucketOf(kind.vessel, holds - ring.volume);
      return {
        volume: holds,
        open: ring.open,
        flat: 0,
        wall: bucket.wall + ring.wall,
        silhouette: bucket.silhouette + ring.silhouette,
      };
    }
    case "nipples":
      return { volume: holds, open: 0, flat: 0, ...bucketOf(kind.vessel, holds) };
    case "pan":
    case "trough": {
      const { surface, wall } = drunkFrom(kind, holds);
      const across = kind.works === "pan" ? kind.rim + kind.floor : kind.length;
      return { volume: holds, open: surface, flat: 0, wall: wall - surface, silhouette: across * kind.depth };
    }
  }
}

/** A bucket under its lid as a plain cylinder of its height: its side. */
function bucketOf(id: string, holds: number): Pick<OpenBody, "wall" | "silhouette"> {
  const shape = vesselById(id)?.shape;
  if (shape === undefined) throw new TypeError(`heatOfWaterer: no vessel has the id ${JSON.stringify(id)}`);
  const height = heightOfVessel(shape);
  const radius = Math.sqrt(Math.max(holds, 1e-6) / (Math.PI * height));
  return { wall: 2 * Math.PI * radius * height + Math.PI * radius ** 2, silhouette: 2 * radius * height };
}
