/** How many drinkers at which spacing [m] a run is offered: up to ten, as far apart as is usual, within the run. */
export function usualRow(
  length: number,
  usualSpacing: number,
): { readonly count: number; readonly every: number } {
  const fitting = Math.floor(length / usualSpacing + 1e-9);
  if (fitting >= 1) return { count: Math.min(10, fitting), every: usualSpacing };
  return { count: 1, every: length };
}

/**
 * How many drinkers fit on a run of this length [m] at this spacing [m], the first one spacing from its start;
 * undefined when all that are wanted do.
 */
export function mostThatFit(length: number, count: number, every: number): number | undefined {
  if (count * every <= length + 1e-6) return undefined;
  return Math.floor((length + 1e-6) / every);
}
