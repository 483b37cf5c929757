import type { Spot } from "./profile-request.js";

/** Spots as the `d` of an SVG path, to a hundredth of a pixel. */
export const pathOf = (spots: readonly Spot[]): string =>
  spots.map(({ x, y }, i) => `${i === 0 ? "M" : "L"}${hundredths(x)} ${hundredths(y)}`).join("");

/**
 * A shape drawn round (0, 0) as it goes on from its own middle, so that many of them make one path: after the middle
 * of each comes what this gives.
 *
 * @param path    of M, L, C and A with whole names for every piece, and Z
 * @param radius  how many times larger [px]
 */
export function shapeFromMiddle(path: string, radius: number): string {
  let at = [0, 0];
  let start = at;
  const far = (numbers: readonly number[], from: readonly number[]): number[] =>
    numbers.map((number, i) => hundredths((number - from[i % 2]!) * radius));
  return path.replace(/([MLCAZ])([^MLCAZ]*)/g, (_, kind: string, words: string) => {
    if (kind === "Z") {
      at = start;
      return "z";
    }
    const numbers = words.trim().split(/\s+/).map(Number);
    const size = kind === "A" ? [...far(numbers.slice(0, 2), [0, 0]), ...numbers.slice(2, 5)] : [];
    const gone = [...size, ...far(numbers.slice(size.length), at)];
    at = numbers.slice(-2);
    if (kind === "M") start = at;
    return `${kind.toLowerCase()}${gone.join(" ")}`;
  });
}

const hundredths = (pixels: number): number => Math.round(pixels * 100) / 100;
