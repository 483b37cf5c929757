import type { AboveJoint, AboveLayout } from "../../kernels/above/lay-above.js";

/** Whether a joint is no source, and only one run ends there. */
export function isLooseEnd({ source, name }: AboveJoint, runs: AboveLayout["runs"]): boolean {
  return source < 0 && runs.filter(({ from, to }) => from === name || to === name).length === 1;
}
