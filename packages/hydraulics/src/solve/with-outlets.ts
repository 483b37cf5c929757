import type { Line } from "../model/line.js";

/** Sources that a float valve fills from the line, by their place in `line.sources`. */
export function fedSources(line: Line): number[] {
  const fed: number[] = [];
  for (let i = 0; i < line.sources.length; i += 1) if (line.sources[i].feed !== undefined) fed.push(i);
  return fed;
}

/** What passes water besides drinkers: an orifice at a point. */
interface Outlet {
  readonly point: number;
  readonly height: number;
  readonly coefficient: number;
}

/**
 * The line as the solver sees it: the float valves of header tanks, then leaks, are outlets like drinkers, after all of
 * these. Wide open, a float valve is an orifice at the height where its water comes out.
 */
export function withOutlets(line: Line): Line {
  const feeds = line.sources.map(({ feed }) => feed).filter((feed) => feed !== undefined);
  const outlets: Outlet[] = [...feeds, ...(line.leaks ?? [])];
  if (outlets.length === 0) return line;
  const { drinkers } = line;
  const more = (column: Float64Array, value: (outlet: Outlet) => number) =>
    Float64Array.from([...column, ...outlets.map(value)]);
  return {
    ...line,
    drinkers: {
      ...drinkers,
      count: drinkers.count + outlets.length,
      point: Int32Array.from([...drinkers.point, ...outlets.map(({ point }) => point)]),
      height: more(drinkers.height, ({ height }) => height),
      coefficient: more(drinkers.coefficient, ({ coefficient }) => coefficient),
      exponent: more(drinkers.exponent, () => 0.5),
      openingHead: more(drinkers.openingHead, () => 0),
      need: more(drinkers.need, () => 0),
    },
  };
}
