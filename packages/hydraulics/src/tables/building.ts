import { holes, soils, stockLengths, threads } from "./building.generated.js";
import type { Hole, Soil, StockLength, Thread } from "./building-types.js";

export type { Hole, Soil, StockLength, Thread } from "./building-types.js";

/** Every soil, by id. */
export const allSoils: readonly Soil[] = soils;
export const allThreads: readonly Thread[] = threads;
export const allHoles: readonly Hole[] = holes;

/** The soil with this id, such as "clay". */
export const soilById = (id: string): Soil | undefined => soils.find((soil) => soil.id === id);
/** The hole for a part, by id, such as "bulkhead-3/4". */
export const holeById = (id: string): Hole | undefined => holes.find((hole) => hole.id === id);
/** The thread with this id, such as "npt-1/2". */
export const threadById = (id: string): Thread | undefined => threads.find((thread) => thread.id === id);

/** The length that pipe of a family is sold in; none for pipe of nobody's make. */
export const stockOfFamily = (family: string): StockLength | undefined =>
  stockLengths.find((stock) => family === stock.family || family.startsWith(`${stock.family}-`));
