import { SEGMENT_KIND } from "../model/line.js";
import { STILL_FLOW } from "./check-solution.js";
import { pointsFed } from "./fed-points.js";
import { lossByTable } from "./loss-table.js";
import {
  type DeviceSetting,
  lossesOf,
  type PreparedLine,
  type SetDevice,
  useZoning,
  type Zoning,
} from "./prepare-line.js";
import { headsByPoint } from "./write-state.js";

/** A device changes its state only beyond this head [m], so that it cannot flutter. */
const SWITCH_HEAD = 1e-8;

/** The zoning to start from: the last one, with every device shut that nothing feeds. */
export function withoutUnfed(prepared: PreparedLine): Zoning {
  const { current, devices, line } = prepared;
  const fed = pointsFed(prepared, current);
  const isUnfed = (s: number) => fed[line.segments.from[s]] === 0 && settingOf(current.set, s) === undefined;
  if (!devices.some(isUnfed)) return current;
  const set = devices.flatMap((segment): SetDevice[] => {
    const setting = isUnfed(segment) ? "shut" : settingOf(current.set, segment);
    return setting === undefined ? [] : [{ segment, setting }];
  });
  return useZoning(prepared, set);
}

/** Which devices would be set, seen from the state just solved. */
export function devicesToSet(
  prepared: PreparedLine,
  zoning: Zoning,
  through: ReadonlyMap<number, number>,
): SetDevice[] {
  const { kind } = prepared.line.segments;
  const { length } = prepared.line.points.height;
  const heads = headsByPoint(prepared, zoning, new Float64Array(length));
  const seen: Seen = { prepared, through, ...heads, fed: pointsFed(prepared, zoning) };
  return prepared.devices.flatMap((segment) => {
    const now = settingOf(zoning.set, segment);
    const wanted =
      kind[segment] === SEGMENT_KIND.oneWay
        ? valveSetting(seen, segment, now)
        : regulatorSetting(seen, segment, now);
    return wanted === undefined ? [] : [{ segment, setting: wanted }];
  });
}

/** What a device is judged by: flow through each, head and reach of each point, and which points water comes to. */
interface Seen {
  readonly prepared: PreparedLine;
  readonly through: ReadonlyMap<number, number>;
  readonly head: Float64Array;
  readonly reached: Uint8Array;
  readonly fed: Uint8Array;
}

/** A valve shuts where water would run back, or none comes to it; shut, it opens where water would push it open, or nothing else feeds what lies behind it. */
function valveSetting(
  { prepared, through, head, reached, fed }: Seen,
  s: number,
  now: DeviceSetting | undefined,
): DeviceSetting | undefined {
  const { from, to, setting } = prepared.line.segments;
  if (now === undefined)
    return (through.get(s) ?? 0) < -STILL_FLOW || fed[from[s]] === 0 ? "shut" : undefined;
  const isPushed = reached[to[s]] === 0 || head[from[s]] - head[to[s]] > setting[s] + SWITCH_HEAD;
  return reached[from[s]] === 1 && isPushed ? undefined : "shut";
}

/**
 * A regulator holds where its outlet would stand above its setting, as long as its own loss leaves more than that; it
 * shuts where water would run back through it, and opens again once its outlet stands low enough to be fed.
 */
function regulatorSetting(
  { prepared, through, head, reached, fed }: Seen,
  s: number,
  now: DeviceSetting | undefined,
): DeviceSetting | undefined {
  const { line } = prepared;
  const [from, to] = [line.segments.from[s], line.segments.to[s]];
  const flow = through.get(s) ?? 0;
  const held = line.points.height[to] + line.segments.setting[s];
  if (now === "shut") {
    const isLow = reached[to] === 0 || (head[to] < held - SWITCH_HEAD && head[from] > head[to] + SWITCH_HEAD);
    return reached[from] === 1 && isLow ? undefined : "shut";
  }
  if (fed[from] === 0 || flow < -STILL_FLOW) return "shut";
  if (now === undefined) {
    if (head[to] <= held + SWITCH_HEAD) return undefined;
    // The head at a source is the source's own: nothing holds it.
    return line.sources.some(({ point }) => point === to) ? "shut" : "holds";
  }
  const left = head[from] - lossByTable(line, lossesOf(prepared), s, flow);
  return left > held - SWITCH_HEAD ? "holds" : undefined;
}

/** Rounds in which devices may change all at once; as many follow for the first alone, and four times as many at haphazard. */
const roundsTogether = (devices: readonly number[]) => 6 * devices.length + 2;

/** Rounds after which the settings of so many devices are given up. */
export const mostRounds = (devices: readonly number[]) => 6 * roundsTogether(devices);

/**
 * The settings to try next. At first all devices change that would. Where they keep changing together, the first of them
 * is changed alone; and where that is ever undone again, any one of them, drawn by the number of the round.
 */
export function nextSettings(
  devices: readonly number[],
  {
    from,
    to,
    round,
  }: { readonly from: readonly SetDevice[]; readonly to: SetDevice[]; readonly round: number },
): SetDevice[] {
  const together = roundsTogether(devices);
  if (round < together) return to;
  const differing = devices.filter((segment) => settingOf(from, segment) !== settingOf(to, segment));
  // The bits of a number times 2^32 over the golden ratio are as good as drawn, and the same at every run.
  const drawn = round < 2 * together ? 0 : Math.imul(round, 0x9e3779b1) >>> 8;
  const changed = differing[drawn % differing.length];
  return devices.flatMap((segment) => {
    const setting = settingOf(segment === changed ? to : from, segment);
    return setting === undefined ? [] : [{ segment, setting }];
  });
}

const settingOf = (set: readonly SetDevice[], segment: number): DeviceSetting | undefined =>
  set.find((device) => device.segment === segment)?.setting;
