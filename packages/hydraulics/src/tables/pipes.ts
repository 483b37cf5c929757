import { pipes } from "./pipes.generated.js";
import type { PipeSize } from "./row-types.js";

export type { PipeSize } from "./row-types.js";

/** Every size, by family and from small to large. */
export const allPipes: readonly PipeSize[] = pipes;

const byId = new Map(pipes.map((pipe) => [pipe.id, pipe]));

/** The size with this id, such as "pvc-sch40-1/2". */
export function pipeById(id: string): PipeSize | undefined {
  return byId.get(id);
}

/** The sizes of one family, small to large; none when there is no such family. */
export function pipesOfFamily(family: string): readonly PipeSize[] {
  return pipes.filter((pipe) => pipe.family === family);
}
