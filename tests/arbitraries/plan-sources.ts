import { heightOfVessel } from "../../packages/hydraulics/src/physics/vessel.js";
import { allVessels } from "../../packages/hydraulics/src/tables/vessels.js";
import type { Chooser } from "./typed.js";

/** A random source that fits together: outlet under lowest, under ordinary, under full, under the brim. */
export function randomSource(
  choose: Chooser,
  placed: { id: string; stand: number; feed?: Record<string, unknown> },
): Record<string, unknown> {
  const { vessel, height, outlet: ownOutlet } = randomVessel(choose);
  const statesOutlet = choose.chance(0.4);
  const outlet = statesOutlet ? choose.uniform(0, 0.2) * height : ownOutlet;
  const room = height - outlet;
  const [low, middle, high] = [0.05, 0.2, 0.6].map(
    (share) => outlet + (share + choose.uniform(0, 0.1)) * room,
  );
  // Where the levels are left out the usual ones must fit, which they do not in a low bucket.
  const mustState = placed.feed === undefined ? outlet + 0.03 > 0.9 * height : false;
  const statesLevels = mustState || choose.chance(0.5);
  return {
    id: placed.id,
    vessel,
    ...(choose.chance(0.3) ? { ground: choose.length(choose.uniform(-0.5, 0.5)) } : {}),
    stand: choose.length(placed.stand),
    ...(statesOutlet || ownOutlet > 0.04 * height ? { outlet: mm(outlet) } : {}),
    ...(statesLevels
      ? {
          level: { full: mm(high), lowest: mm(low), ...(choose.chance(0.5) ? { ordinary: mm(middle) } : {}) },
        }
      : {}),
    ...(choose.chance(0.5) ? { vent: randomVent(choose, height) } : {}),
    ...(placed.feed === undefined ? {} : { feed: placed.feed }),
    ...(choose.chance(0.15) ? { outletBore: mm(choose.spread(0.002, 0.05)) } : {}),
  };
}

const mm = (metres: number | undefined) => `${((metres ?? 0) * 1000).toFixed(2)} mm`;

function randomVent(choose: Chooser, height: number): unknown {
  return choose.oneOf<() => unknown>([
    () => "open",
    () => "sealed",
    () => ({ opening: choose.length(choose.spread(0.001, 0.1)) }),
    () => ({
      airTube: choose.length(choose.uniform(0, 0.9) * height),
      ...(choose.chance(0.5) ? { opening: choose.length(choose.spread(0.002, 0.03)) } : {}),
    }),
  ])();
}

function randomVessel(choose: Chooser): { vessel: unknown; height: number; outlet: number } {
  const size = (low: number, high: number) => {
    const metres = choose.spread(low, high);
    return { metres, typed: choose.length(metres) };
  };
  const [a, b, c] = [size(0.15, 1.5), size(0.15, 1.5), size(0.15, 1.5)];
  return choose.oneOf<() => { vessel: unknown; height: number; outlet: number }>([
    () => {
      const kind = choose.oneOf(allVessels);
      return { vessel: kind.id, height: heightOfVessel(kind.shape), outlet: kind.outletHeight };
    },
    () => ({
      vessel: { shape: "upright", diameter: a.typed, height: b.typed },
      height: b.metres,
      outlet: 0.05,
    }),
    () => ({
      vessel: { shape: "lying", diameter: a.typed, length: b.typed },
      height: a.metres,
      outlet: 0.05,
    }),
    () => ({
      vessel: { shape: "tapered", bottomDiameter: a.typed, topDiameter: c.typed, height: b.typed },
      height: b.metres,
      outlet: 0.05,
    }),
    () => ({
      vessel: { shape: "box", length: a.typed, width: c.typed, height: b.typed },
      height: b.metres,
      outlet: 0.05,
    }),
    () => tableVessel(choose, b.metres),
  ])();
}

function tableVessel(choose: Chooser, height: number) {
  const steps = choose.whole(1, 6);
  let volume = 0;
  const readings = Array.from({ length: steps + 1 }, (_, i) => {
    if (i > 0) volume += choose.spread(0.002, 0.1);
    return { level: mm((height * i) / steps), volume: choose.volume(volume) };
  });
  return { vessel: { shape: "table", readings }, height, outlet: 0.05 };
}
