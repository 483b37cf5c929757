/** A value on straight lines between rows that rise in x; level beyond both ends. */
export function valueBetween(x: readonly number[], y: readonly number[], at: number): number {
  const next = x.findIndex((one) => one >= at);
  if (next < 0) return y[y.length - 1];
  if (next === 0) return y[0];
  const share = (at - x[next - 1]) / (x[next] - x[next - 1]);
  return y[next - 1] + share * (y[next] - y[next - 1]);
}
