/** A stretch of the path that is drawn, from and to [m]; undefined is all of it. */
export type AlongWindow = readonly [number, number] | undefined;

/** Shortest stretch that fills the drawing [m]. */
const SHORTEST = 0.5;

/**
 * The stretch after zooming: `factor` above 1 comes closer. What is drawn at `around` stays where it is, as far as
 * the ends of the path let it.
 */
export function zoomWindow(window: AlongWindow, length: number, factor: number, around: number): AlongWindow {
  const [from, to] = window ?? [0, length];
  const span = Math.max(Math.min(SHORTEST, length), (to - from) / factor);
  const share = to > from ? (around - from) / (to - from) : 0.5;
  return within(around - share * span, span, length);
}

/** The stretch moved along by a distance [m], farther out when positive; its length stays. */
export function panWindow(window: AlongWindow, length: number, by: number): AlongWindow {
  if (window === undefined) return undefined;
  return within(window[0] + by, window[1] - window[0], length);
}

/** The stretch moved so that a distance lies on it with some room; as it is when that is so already. */
export function showAlong(window: AlongWindow, length: number, along: number): AlongWindow {
  if (window === undefined || (along >= window[0] && along <= window[1])) return window;
  const span = window[1] - window[0];
  return within(along - span / 2, span, length);
}

function within(from: number, span: number, length: number): AlongWindow {
  if (span >= length * (1 - 1e-9)) return undefined;
  const start = Math.min(Math.max(0, from), length - span);
  return [start, start + span];
}
