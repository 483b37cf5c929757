import { hangCitations, hangRows } from "./bird-heights.generated.js";
import type { CitationRow, HangPoint } from "./bird-types.js";
import type { Citation } from "./citation.js";

export type { HangPoint } from "./bird-types.js";

const byBird = new Map(
  hangRows.map(([bird, rows]): [string, readonly HangPoint[]] => [
    bird,
    rows.map(([device, ageDays, height, low, high, cited]) => ({
      device: device as HangPoint["device"],
      ageDays,
      height,
      low,
      high,
      citation: citationAt(cited),
    })),
  ]),
);

/**
 * How high drinkers hang for a kind of bird, by device and age; none where no table has it.
 *
 * @example hangPointsOf("pullet").length   // 7
 */
export function hangPointsOf(birdId: string): readonly HangPoint[] {
  return byBird.get(birdId) ?? [];
}

function citationAt(index: number): Citation {
  const [source, where, seen] = hangCitations[index] as CitationRow;
  return { source, where, seen } as Citation;
}
