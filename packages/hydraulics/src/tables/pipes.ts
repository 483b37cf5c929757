import { pipeGroups } from "./pipes.generated.js";
import type { PipeGroup, PipeSize } from "./row-types.js";

export type { PipeSize } from "./row-types.js";

/** Every size, by family and from small to large. */
export const allPipes: readonly PipeSize[] = pipeGroups
  .flatMap(sizesOf)
  .sort((a, b) => (a.family < b.family ? -1 : a.family > b.family ? 1 : a.order - b.order));

function sizesOf({ sizes, ...shared }: PipeGroup): PipeSize[] {
  return sizes.map(([id, name, nominal, outside, wall, bore, boreLow, boreHigh, order]) => {
    const inside = { bore, boreLow, boreHigh, order };
    return { id, name, nominal, ...shared, ...(outside === 0 ? {} : { outside, wall }), ...inside };
  });
}

const byId = new Map(allPipes.map((pipe) => [pipe.id, pipe]));

/**
 * The size with this id, such as "pvc-sch40-1/2".
 *
 * @example pipeById(findPipe("1/2 in PVC schedule 40").kind.id).bore   // 0.01562
 */
export function pipeById(id: string): PipeSize | undefined {
  return byId.get(id);
}

/**
 * The sizes of one family, small to large; none when there is no such family.
 *
 * @example pipesOfFamily(findPipe("1/2 in PVC schedule 40").kind.family).length > 3   // true
 */
export function pipesOfFamily(family: string): readonly PipeSize[] {
  return allPipes.filter((pipe) => pipe.family === family);
}
