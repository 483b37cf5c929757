import { holes, soils, stockLengths, threads } from "./building.generated.js";
import type { Hole, Soil, StockLength, Thread } from "./building-types.js";

export type { Hole, Soil, StockLength, Thread } from "./building-types.js";

/** Every soil, by id. */
export const allSoils: readonly Soil[] = soils;
/** Every thread, by id. */
export const allThreads: readonly Thread[] = threads;
/** Every hole, by the part it is for. */
export const allHoles: readonly Hole[] = holes;

/**
 * The soil with this id, such as "clay".
 *
 * @example soilById("clay").name   // "clay, silt, or clay with sand"
 */
export const soilById = (id: string): Soil | undefined => soils.find((soil) => soil.id === id);
/**
 * The hole for a part, by id, such as "bulkhead-3/4".
 *
 * @example holeById("bulkhead-3/4").hole   // 0.038
 */
export const holeById = (id: string): Hole | undefined => holes.find((hole) => hole.id === id);
/**
 * The thread with this id, such as "npt-1/2".
 *
 * @example threadById("npt-1/2").perInch   // 14
 */
export const threadById = (id: string): Thread | undefined => threads.find((thread) => thread.id === id);

/**
 * The length that pipe of a family is sold in; none for pipe of nobody's make.
 *
 * @example stockOfFamily("pvc").length   // 3.048
 */
export const stockOfFamily = (family: string): StockLength | undefined =>
  stockLengths.find((stock) => family === stock.family || family.startsWith(`${stock.family}-`));
