/** How a wheel was turned: by how much, in pixels or lines, and whether a trackpad's pinch is told as a wheel. */
export interface WheelTurn {
  readonly deltaY: number;
  /** 0 for pixels, 1 for lines. */
  readonly deltaMode: number;
  readonly ctrlKey: boolean;
}

/** A line of a wheel that counts in lines [px], and the most that one event may turn. */
const LINE = 16;
const MOST = 240;

/** How much a turn of the wheel enlarges: a notch by a quarter, a pinch of a trackpad finely. */
export function wheelFactor({ deltaY, deltaMode, ctrlKey }: WheelTurn): number {
  const pixels = Math.max(-MOST, Math.min(MOST, deltaY * (deltaMode === 1 ? LINE : 1)));
  // A mouse with ctrl sends whole notches, a pinch small steps.
  const isPinch = ctrlKey && Math.abs(pixels) < 50;
  return Math.exp(-pixels * (isPinch ? 0.01 : 0.002));
}
