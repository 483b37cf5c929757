import type { Line, Source } from "../model/line.js";
import { givenBeforeStall, MOMENTS, type MomentName, type Moments } from "../model/moment.js";
import { VENT_SHARE, ventDiameterFor } from "../physics/vent.js";
import { volumeAtLevel } from "../physics/vessel.js";
import type { LineSolution } from "../solve/solution.js";
import type { SourceReport } from "./check-result.js";

/** What each source holds, weighs and must give, and whether a header tank is kept full. */
export function reportSources(
  line: Line,
  moments: Moments,
  fullBusiest: LineSolution,
  lowestBusiest: LineSolution,
): SourceReport[] {
  return line.sources.map((source, i) => {
    const volumeFull = volumeAtLevel(source.shape, source.levels.full);
    const volumeDead = volumeAtLevel(source.shape, source.levels.lowest);
    const drawBusiest = fullBusiest.sourceFlow[i];
    const feedFlow = source.feed === undefined ? undefined : lowestBusiest.feedFlow[i];
    return {
      source: source.id,
      index: i,
      volumeFull,
      volumeUsable: volumeFull - volumeDead,
      volumeDead,
      drawBusiest,
      massFull: source.emptyMass + volumeFull * line.water.density,
      surface: surfaces(moments, i),
      volumeBeforeStall: givenBeforeStall(line, source),
      ventDiameterNeeded: ventNeeded(line, source, drawBusiest),
      ventDiameter: source.vent.kind === "sealed" ? undefined : source.vent.diameter,
      feedFlow,
      feedKeepsUp: feedFlow === undefined ? undefined : feedFlow >= drawBusiest,
    };
  });
}

function surfaces(moments: Moments, source: number): Record<MomentName, number> {
  return Object.fromEntries(MOMENTS.map((name) => [name, moments.named[name].sourceHead[source]])) as Record<
    MomentName,
    number
  >;
}

function ventNeeded(line: Line, source: Source, draw: number): number | undefined {
  if (source.vent.kind === "sealed" || draw <= 0) return undefined;
  const lowest = line.drinkers.height.reduce(
    (least, height) => Math.min(least, height),
    source.base + source.outlet,
  );
  const head = source.base + source.levels.lowest - lowest;
  return head <= 0
    ? undefined
    : ventDiameterFor({ flow: draw, headAllowed: VENT_SHARE * head, density: line.water.density });
}
