import type { RainRecord } from "../../document/rain-record.js";
import { flockInAir } from "../../model/flock-on.js";
import { drawOfPen } from "../../simulate/pen-draw.js";
import type { AskedPlan } from "../asked-plan.js";
import { poolsOf } from "../time/give-out.js";

/** What birds draw from this source each day; in the record's own heat where it has temperatures. */
export function demandByDay(
  asked: AskedPlan,
  index: number,
  record: RainRecord,
  figure: "expect" | "size",
): Float64Array {
  const { judged, flock, refills, fullVolumes: start } = asked;
  const pools = poolsOf(judged, flock, { refills, start, failed: new Set(), dripRate: 0 });
  const pool = pools.find(({ stores }) => stores.some(({ source }) => source === index));
  const share = pool === undefined ? 0 : 1 / pool.stores.length;
  const drawnIn = (high: number, low: number) => {
    const on = flockInAir(flock, { high, low });
    return (pool?.pens ?? []).reduce(
      (sum, one) => sum + share * one.share * drawOfPen(judged.line, on, on.pens[one.pen], figure).daily,
      0,
    );
  };
  const usual = drawnIn(flock.weather.high, flock.weather.low);
  const known = new Map<string, number>();
  return Float64Array.from({ length: record.rain.length }, (_, t) => {
    if (record.air === undefined || record.air.known[t] === 0) return usual;
    // To half a degree: the factor changes by 3 % with it.
    const [high, low] = [record.air.high[t], record.air.low[t]].map((one) => Math.round(2 * one) / 2);
    const key = `${high} ${low}`;
    const drawn = known.get(key) ?? drawnIn(high, Math.min(high, low));
    known.set(key, drawn);
    return drawn;
  });
}
