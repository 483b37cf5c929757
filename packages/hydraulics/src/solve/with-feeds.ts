import type { Line } from "../model/line.js";

/** Sources that a float valve fills from the line, by their place in `line.sources`. */
export function fedSources(line: Line): number[] {
  return line.sources.flatMap((source, i) => (source.feed === undefined ? [] : [i]));
}

/**
 * The line as the solver sees it: the float valves of header tanks are outlets like drinkers, after all of these.
 * Wide open, one is an orifice at the height where its water comes out.
 */
export function withFeeds(line: Line): Line {
  const fed = fedSources(line);
  if (fed.length === 0) return line;
  const feeds = fed.map((i) => line.sources[i].feed).filter((feed) => feed !== undefined);
  const { drinkers } = line;
  const more = (column: Float64Array, values: readonly number[]) => Float64Array.from([...column, ...values]);
  const each = (value: number) => feeds.map(() => value);
  return {
    ...line,
    drinkers: {
      ...drinkers,
      count: drinkers.count + feeds.length,
      point: Int32Array.from([...drinkers.point, ...feeds.map((feed) => feed.point)]),
      height: more(
        drinkers.height,
        feeds.map((feed) => feed.height),
      ),
      coefficient: more(
        drinkers.coefficient,
        feeds.map((feed) => feed.coefficient),
      ),
      exponent: more(drinkers.exponent, each(0.5)),
      openingHead: more(drinkers.openingHead, each(0)),
      need: more(drinkers.need, each(0)),
    },
  };
}
