import type { Batch, Pen } from "../../model/flock.js";
import { isThere } from "../../model/flock.js";
import type { LooseWaterer } from "../../model/yard.js";
import { type Allowance, allAllowances } from "../../tables/allowances.js";
import type { BirdKind } from "../../tables/bird-types.js";
import { type Device, EDGES, type Region, speaksOf } from "../birds/drinkers-needed.js";
import type { Reach, Tilt } from "./yard-result.js";

/**
 * Edge a grown bird takes while it drinks [m], by species; the young take less: three tenths of it at hatching, more
 * evenly until grown.
 *
 * @source common-practice, birds side by side at an edge, from memory
 */
const ROOM: Readonly<Record<BirdKind["species"], number>> = {
  chicken: 0.12,
  turkey: 0.2,
  duck: 0.14,
  goose: 0.2,
  quail: 0.05,
  game: 0.09,
};
const ROOM_AT_HATCHING = 0.3;

/** Edge one bird of a batch takes while it drinks [m]. */
export function roomOf({ kind, ageDays }: Pick<Batch, "kind" | "ageDays">): number {
  const grown = Math.min(1, Math.max(0, ageDays) / kind.grownDays);
  return ROOM[kind.species] * (ROOM_AT_HATCHING + (1 - ROOM_AT_HATCHING) * grown);
}

/** What rules and advice call a waterer. */
function deviceOfWaterer({ kind }: LooseWaterer): Device {
  switch (kind.works) {
    case "nipples":
      return "nipple";
    case "trough":
      return "trough";
    case "vacuum":
      return kind.lip === "spouts" ? "cup" : "bell";
    default:
      return "bell";
  }
}

/** What one waterer offers the birds of a pen as it stands. */
export function reachOf(waterer: LooseWaterer, tilt: Tilt, pen: Pen, region: Region): Reach {
  const { kind, count } = waterer;
  const there = pen.batches.filter(isThere);
  const places = kind.works === "nipples" || kind.works === "vacuum" ? kind.places : undefined;
  const gives = !("isDraining" in tilt && tilt.isDraining);
  if (places !== undefined) {
    const wet = tilt.works === "vacuum" ? Math.round(places * tilt.wetShare) : places;
    const atOnce = gives ? wet : 0;
    const asked = askedOf(there, deviceOfWaterer(waterer), region);
    return { edge: 0, atOnce, room: undefined, covers: covering(atOnce * count, asked), rules: asked.rules };
  }
  const edge = gives ? edgeOf(waterer, tilt) : 0;
  const room = meanRoom(there);
  const asked = askedOf(there, deviceOfWaterer(waterer), region);
  return {
    edge,
    atOnce: Math.floor(edge / room + 1e-9),
    room,
    covers: covering(edge * count, asked),
    rules: asked.rules,
  };
}

/** The edge along which it holds water [m]; of a trough both long sides. */
function edgeOf({ kind }: LooseWaterer, tilt: Tilt): number {
  switch (kind.works) {
    case "trough":
      return 2 * kind.length;
    case "nipples":
      return 0;
    case "vacuum":
      return 2 * Math.PI * kind.rim * (tilt.works === "vacuum" ? tilt.wetShare : 1);
    default:
      return 2 * Math.PI * kind.rim;
  }
}

function meanRoom(there: readonly Batch[]): number {
  const birds = there.reduce((sum, { count }) => sum + count, 0);
  if (birds === 0) return ROOM.chicken;
  return there.reduce((sum, batch) => sum + batch.count * roomOf(batch), 0) / birds;
}

interface Asked {
  /** Edge [m], or places. */
  readonly amount: number;
  readonly rules: readonly Allowance[];
}

/** What the strictest rule or advice for each batch asks, all together. */
function askedOf(there: readonly Batch[], device: Device, region: Region): Asked {
  const rules = new Set<Allowance>();
  const amount = there.reduce((sum, batch) => {
    const strictest = allAllowances
      .filter(
        (rule) =>
          rule.counts !== "least" &&
          rule.devices.includes(device) &&
          (rule.regions.includes("all") || rule.regions.includes(region)) &&
          speaksOf(rule, device, batch),
      )
      .map((rule) => ({ rule, each: amountForOne(rule, device) }))
      .sort((a, b) => b.each - a.each)[0];
    if (strictest === undefined) return sum;
    rules.add(strictest.rule);
    return sum + batch.count * strictest.each;
  }, 0);
  return { amount, rules: [...rules] };
}

/** Edge that one bird is owed [m], or its part of a place; of a bell counted in birds, its part of a 40 cm one. */
function amountForOne({ counts, figure }: Allowance, device: Device): number {
  if (counts === "edge") return figure;
  return device === "bell" || device === "trough" ? edgeOfOne(device) / figure : 1 / figure;
}

/** As the tables' own bell and trough. */
const edgeOfOne = (device: keyof typeof EDGES): number => EDGES[device];

const covering = (offered: number, { amount }: Asked): number | undefined =>
  amount > 0 ? offered / amount : undefined;
