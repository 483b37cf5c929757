/** The cheapest with which a look every day is soon enough; where none is, the one that gives longest. */
export function cheapestGuard<
  One extends {
    readonly isEnough: boolean;
    readonly harmAfter: number | undefined;
    readonly savesWater: number;
  },
>(guards: readonly One[]): One | undefined {
  const longest = (one: One) => one.harmAfter ?? Number.MAX_VALUE;
  return (
    guards.find(({ isEnough }) => isEnough) ??
    [...guards].sort((a, b) => longest(b) - longest(a) || b.savesWater - a.savesWater)[0]
  );
}
