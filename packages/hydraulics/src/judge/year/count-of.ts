import { isThere, type Pen } from "../../model/flock.js";

/** Birds that are in a pen. */
export const countOf = ({ batches }: Pen): number =>
  batches.filter(isThere).reduce((sum, { count }) => sum + count, 0);
