/**
 * Time as the processor's own, all threads of this process together: what else a machine does is not in it. On an idle
 * machine it is the time on the clock, and a little more where memory is tidied up beside.
 */

/** Milliseconds of the processor so far, of this process and its workers. */
export function processorTime() {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/**
 * What a call takes once the compiler has done with it: called for `span` ms of the processor first, then for as
 * long again and at least 5 times.
 *
 * @returns milliseconds: `median` and `least` by the clock, `processor` on the average
 */
export function time(call, span = 300) {
  const warm = processorTime() + span;
  do call();
  while (processorTime() < warm);
  const times = [];
  const begin = processorTime();
  while (times.length < 5 || processorTime() - begin < span) {
    const start = performance.now();
    call();
    times.push(performance.now() - start);
  }
  const processor = (processorTime() - begin) / times.length;
  times.sort((a, b) => a - b);
  return { median: times[times.length >> 1], least: times[0], processor };
}

/**
 * Two calls in turn, so that a drifting machine slows both; the median of the ratios pair by pair.
 *
 * @param once   what is asked about
 * @param other  what it is held against
 * @param batch  calls timed together, where one would be too short for the clock
 * @returns `ratio` with its tenth and ninetieth hundredth, and `ms` of the processor that one call of `once` takes
 */
export function ratio(once, other, pairs, batch = 1) {
  const [a, b] = [once, other].map((call) => repeated(call, batch));
  for (let k = 0; k < 3; k += 1) for (const call of [a, b]) call();
  const ratios = [];
  const times = [];
  for (let k = 0; k < pairs; k += 1) {
    const t0 = processorTime();
    a();
    const t1 = processorTime();
    b();
    const t2 = processorTime();
    ratios.push((t1 - t0) / (t2 - t1));
    times.push((t1 - t0) / batch);
  }
  return {
    ratio: middleOf(ratios),
    low: ratios[Math.floor(pairs * 0.1)],
    high: ratios[Math.floor(pairs * 0.9)],
    ms: middleOf(times),
  };
}

const repeated = (call, batch) => () => {
  for (let k = 0; k < batch; k += 1) call();
};

/** Sorts the list. */
export const middleOf = (list) => list.sort((x, y) => x - y)[list.length >> 1];

/**
 * The power x in cost = a size^x that fits best, by least squares of the logarithms.
 *
 * @param points  pairs of size and cost, both above 0
 */
export function growthOf(points) {
  const logs = points.map(([size, cost]) => [Math.log(size), Math.log(cost)]);
  return slopeOf(logs);
}

/** Slope of the straight line nearest to pairs of x and y, by least squares. */
export function slopeOf(points) {
  const mean = (k) => points.reduce((sum, point) => sum + point[k], 0) / points.length;
  const [x, y] = [mean(0), mean(1)];
  const spread = points.reduce((sum, point) => sum + (point[0] - x) ** 2, 0);
  return points.reduce((sum, point) => sum + (point[0] - x) * (point[1] - y), 0) / spread;
}
