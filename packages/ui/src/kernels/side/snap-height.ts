import { lengthStep, type UnitSystem } from "../typed-quantity.js";
import { figureOf, type SideHandle } from "./side-handle.js";

/** Level draws a hand to itself from this far [px], and never from farther than this [m]. */
const LEVEL_REACH_PX = 3;
const LEVEL_REACH = 0.015;

/** A height the hand may come to, and whether it is level with a neighbour. */
export interface SnappedHeight {
  readonly height: number;
  readonly isLevel: boolean;
}

/**
 * The height a hand means: level with a neighbour where it is close to that, else the next whole step (1 cm or half
 * an inch) of the handle's own figure; always within the handle's limits.
 *
 * @param raw         where the hand is [m above datum]
 * @param neighbours  heights that are worth being level with [m above datum]
 */
export function snapHeight(
  handle: SideHandle,
  raw: number,
  neighbours: readonly number[],
  perMetreUp: number,
  system: UnitSystem,
): SnappedHeight {
  const reach = Math.min(LEVEL_REACH, LEVEL_REACH_PX / perMetreUp);
  const near = neighbours
    .filter((height) => Math.abs(height - raw) <= reach && height >= handle.low && height <= handle.high)
    .sort((a, b) => Math.abs(a - raw) - Math.abs(b - raw))[0];
  if (near !== undefined) return { height: near, isLevel: true };
  const height = clamp(handle, wholeStep(handle, raw, system), system);
  return { height, isLevel: neighbours.some((level) => Math.abs(level - height) < 5e-4) };
}

/** A height moved by so many whole steps, from the next whole step on; for keys. */
export function stepHeight(handle: SideHandle, height: number, steps: number, system: UnitSystem): number {
  return clamp(handle, wholeStep(handle, height + steps * lengthStep(system), system), system);
}

/** What is typed is whole millimetres, or quarters of an inch. */
const TYPED: Readonly<Record<UnitSystem, number>> = { metric: 1e-3, us: 0.0254 / 4 };

/** The height within the handle's limits; at a limit, the last one inside it that can be typed. */
export function clamp(handle: SideHandle, wanted: number, system: UnitSystem): number {
  const { low, high } = handle;
  const height = Math.max(low, Math.min(high, wanted));
  if (height > low && height < high) return height;
  const fits = (candidate: number) => candidate >= low - 1e-9 && candidate <= high + 1e-9;
  const figure = Math.round(figureOf({ ...handle, height }) / TYPED[system]) * TYPED[system];
  const heights = [figure, figure - TYPED[system], figure + TYPED[system]].map((each) =>
    heightAt(handle, each),
  );
  return heights.find(fits) ?? height;
}

const heightAt = ({ counts, from }: SideHandle, figure: number): number =>
  counts === "up" ? from + figure : from - figure;

function wholeStep(handle: SideHandle, height: number, system: UnitSystem): number {
  const step = lengthStep(system);
  const figure = Math.round(figureOf({ ...handle, height }) / step) * step;
  return heightAt(handle, figure);
}

/**
 * Heights of the neighbours on either side that stay where they are when the handle moves, so that it can be made
 * level with them.
 */
export function levelNeighbours(handle: SideHandle, handles: readonly SideHandle[]): number[] {
  const isPipe = ({ kind }: SideHandle) => kind === "joint" || kind === "reading";
  if (handle.kind !== "ground" && !isPipe(handle)) return [];
  const kin = handles
    .filter((other) => (handle.kind === "ground" ? other.kind === "ground" : isPipe(other)))
    .sort((a, b) => a.along! - b.along!);
  const at = kin.findIndex(({ key }) => key === handle.key);
  return [kin[at - 1], kin[at + 1]].flatMap((other) =>
    other !== undefined && (other.isFirm || handle.kind === "reading") ? [other.height] : [],
  );
}
