import { valueBetween } from "../numerics/value-between.js";

const DAY = 86_400;
const HOUR = 3600;

/** How the hours of light share the day's drinking. */
export type DayShape = "evening" | "even" | "morning-and-evening";

/** When birds drink: how much of the day's water is drunk up to each time, straight between; repeats each day. */
export interface DayCurve {
  /** [s after midnight], rising from 0 to 86,400. */
  readonly edges: readonly number[];
  /** Drunk since midnight at each edge; 0 to 1. */
  readonly drunk: readonly number[];
}

/**
 * What is drunk in the dark, and in the busiest hour: its share of the day by hours of light. In heat the busiest hour
 * grows to a fifth, at most twice as much as it would be in an even day.
 *
 * @source cautious-defaults, peak hour and night, derived
 */
export const DAY_RULES = {
  dark: 0.01,
  light: [12 * HOUR, 16 * HOUR, 20 * HOUR, 24 * HOUR],
  peak: [0.15, 0.11, 0.08, 0.065],
  heat: { from: 25, full: 32, peak: 0.2 },
} as const;

/**
 * In the last three hours of light hens drink twice as fast as before.
 *
 * @source leeson-summers-2005, Fig. 4.8, seen
 */
const EVENING = { lasts: 3 * HOUR, times: 2 } as const;

/**
 * Share of the day's water that is drunk in the busiest hour.
 *
 * @param light        light in the day [s]
 * @param temperature  highest of the day [°C]
 * @returns share [-]
 * @valid 4 to 24 hours of light; below 12 the share rises as the light shrinks
 * @source cautious-defaults, peak hour, derived
 * @example peakShare(43200, 21)   // 0.15
 */
export function peakShare(light: number, temperature: number): number {
  const { light: lights, peak, heat } = DAY_RULES;
  const shorter = lights[0] / Math.min(light, lights[0]);
  const mild = valueBetween(lights, peak, light) * shorter;
  const heated = Math.min(1, Math.max(0, (temperature - heat.from) / (heat.full - heat.from)));
  const most = mild * (heat.peak / peak[0]);
  return Math.min(0.5, mild + heated * (most - mild));
}

/**
 * The day's drinking of one kind of bird. The busiest hour ends an hour before dark; for an even day it is the hour at
 * two thirds of the light, the warmest. Birds that drink in the morning too have two thirds of it in their first hour.
 *
 * @param day.shape        how the light shares it
 * @param day.dawn         when the light begins [s after midnight]
 * @param day.light        how long it lasts [s]
 * @param day.temperature  highest of the day [°C]; mild if left out
 * @returns the curve; its shares sum to 1
 * @valid 4 to 24 hours of light
 * @source leeson-summers-2005, Fig. 4.8, seen
 * @example busiestHour(dayCurve({ shape: "evening", dawn: 23400, light: 43200 })).share   // 0.15
 */
export function dayCurve(day: {
  readonly shape: DayShape;
  readonly dawn: number;
  readonly light: number;
  readonly temperature?: number;
}): DayCurve {
  const { shape, dawn, light, temperature = 21 } = day;
  const dark = light >= DAY ? 0 : DAY_RULES.dark;
  const parts = piecesOf(shape, { light, peak: peakShare(light, temperature), dark });
  const stretches = [...parts.map((piece) => ({ ...piece, from: piece.from + dawn }))];
  if (light < DAY) stretches.push({ from: dawn + light, lasts: DAY - light, share: dark });
  return curveThrough(stretches);
}

interface Piece {
  /** After the light begins [s]. */
  readonly from: number;
  readonly lasts: number;
  readonly share: number;
}

/** The light in pieces of even drinking; `peak` and `dark` are the shares drunk in its busiest hour and in the dark. */
function piecesOf(
  shape: DayShape,
  { light, peak, dark }: { readonly light: number; readonly peak: number; readonly dark: number },
): Piece[] {
  const hour = Math.min(HOUR, light / 4);
  const peakFrom = shape === "even" ? (2 * light) / 3 - hour / 2 : light - 2 * hour;
  const morning = shape === "morning-and-evening" ? Math.min((2 / 3) * peak, (1 - dark - peak) / 2) : 0;
  const rest = 1 - dark - peak - morning;
  const eveningFrom = shape === "evening" ? light - Math.min(EVENING.lasts, light / 4) : light;
  const weight = (at: number) => (at >= eveningFrom ? EVENING.times : 1);
  const cuts = [0, ...(morning > 0 ? [hour] : []), eveningFrom, peakFrom, peakFrom + hour, light];
  const edges = [...new Set(cuts)].sort((a, b) => a - b);
  const spans = edges.slice(1).map((to, i) => ({ from: edges[i], lasts: to - edges[i] }));
  const isPeak = (from: number) => from >= peakFrom && from < peakFrom + hour;
  const isMorning = (from: number) => morning > 0 && from < hour;
  const ordinary = spans.filter(({ from }) => !isPeak(from) && !isMorning(from));
  const total = ordinary.reduce((sum, { from, lasts }) => sum + weight(from) * lasts, 0);
  return spans.map(({ from, lasts }) => {
    if (isPeak(from)) return { from, lasts, share: (peak * lasts) / hour };
    if (isMorning(from)) return { from, lasts, share: (morning * lasts) / hour };
    return { from, lasts, share: (rest * weight(from) * lasts) / total };
  });
}

/** Pieces that may run past midnight, as one curve from midnight to midnight. */
function curveThrough(pieces: readonly Piece[]): DayCurve {
  const cuts = new Set([0, DAY]);
  for (const { from, lasts } of pieces) {
    cuts.add(from % DAY);
    cuts.add((from + lasts) % DAY);
  }
  const edges = [...cuts].sort((a, b) => a - b);
  const drunk = [0];
  for (let i = 1; i < edges.length; i += 1) {
    const middle = (edges[i - 1] + edges[i]) / 2;
    const rate = pieces.reduce((sum, piece) => sum + rateOf(piece, middle), 0);
    drunk.push(drunk[i - 1] + rate * (edges[i] - edges[i - 1]));
  }
  // Rounding is taken out, so that every day sums to exactly 1.
  return { edges, drunk: drunk.map((share) => share / drunk[drunk.length - 1]) };
}

function rateOf({ from, lasts, share }: Piece, time: number): number {
  const since = (((time - from) % DAY) + DAY) % DAY;
  return lasts > 0 && since < lasts ? share / lasts : 0;
}

/**
 * Share of a day's water drunk since midnight of day 0 up to a time [s]; a whole day is 1.
 *
 * @param curve  of the day; each day has the same
 * @param time   since midnight of day 0 [s]
 * @returns share of a day's water [-]; 1 at the end of day 0, 2 a day later
 * @valid any time; straight between the edges of the curve
 * @source closed-form, what is drunk between two edges is drunk evenly
 * @example drunkUpTo(dayCurve({ shape: "evening", dawn: 23400, light: 43200 }), 86400)   // 1
 */
export function drunkUpTo(curve: DayCurve, time: number): number {
  const days = Math.floor(time / DAY);
  return days + valueBetween(curve.edges, curve.drunk, time - days * DAY);
}

/**
 * Share of a day's water drunk between two times [s]; they may lie days apart.
 *
 * @param from  since midnight of day 0 [s]
 * @param to    since midnight of day 0 [s]
 * @returns share of a day's water [-]
 * @valid any times
 * @source closed-form, the difference of drunkUpTo at both
 * @example shareBetween(dayCurve({ shape: "evening", dawn: 23400, light: 43200 }), 23400, 66600)   // 0.99
 */
export function shareBetween(curve: DayCurve, from: number, to: number): number {
  return drunkUpTo(curve, to) - drunkUpTo(curve, from);
}

/**
 * The hour in which most is drunk: its start [s after midnight] and its share of the day.
 *
 * @param curve  of the day
 * @returns the first hour of those that share most
 * @valid any curve
 * @source closed-form, the greatest of all hours that begin or end at an edge of the curve
 * @example busiestHour(dayCurve({ shape: "evening", dawn: 23400, light: 43200 })).share   // 0.15
 */
export function busiestHour(curve: DayCurve): { from: number; share: number } {
  // On straight pieces the busiest hour begins or ends at an edge.
  const starts = curve.edges.flatMap((edge) => [edge, edge - HOUR]);
  return starts.reduce(
    (best, from) => {
      const share = shareBetween(curve, from, from + HOUR);
      return share > best.share + 1e-12 ? { from: ((from % DAY) + DAY) % DAY, share } : best;
    },
    { from: 0, share: 0 },
  );
}
