import type { Plan, PlanRun, PlanSource } from "../document/plan-schema.js";
import { readShare } from "../document/read-share.js";
import { heightOfVessel, surfaceAtLevel, volumeAtLevel, wettedAreaAtLevel } from "../physics/vessel.js";
import { COLOUR_NOT_SAID, colourById, type SunColour } from "../tables/colours.js";
import { type FrostMaterial, frostMaterialById, frostMaterialOfPipe } from "../tables/frost-materials.js";
import { pipeById } from "../tables/pipes.js";
import type { Line, Source } from "./line.js";
import type { TypedValues } from "./typed-values.js";

/** What the sun sees of a thing. */
export interface InSun {
  readonly colour: SunColour;
  /** Whether the plan names the colour. */
  readonly isColourSaid: boolean;
  /** Share of the sun kept off it. */
  readonly shade: number;
}

/** A run as the weather meets it. Lengths [m]. */
export interface ExposedRun extends InSun {
  readonly id: string;
  /** Position in the plan's list of runs, and in the line's. */
  readonly index: number;
  readonly run: number;
  readonly length: number;
  readonly bore: number;
  readonly outside: number;
  readonly lagging: number;
  /** Depth under ground; 0: above it. */
  readonly buried: number;
  /** Water it holds [m³]. */
  readonly volume: number;
  readonly material: FrostMaterial | undefined;
}

/** Water standing in a vessel to a level. */
export interface StandingWater {
  readonly volume: number;
  /** Wall, bottom and surface that lose heat [m²]. */
  readonly wall: number;
  /** Its open surface [m²]. */
  readonly surface: number;
  /** What the sun sees of the wet part from the side [m²]. */
  readonly silhouette: number;
}

/** A source as the weather meets it. */
export interface ExposedVessel extends InSun {
  readonly id: string;
  readonly index: number;
  readonly full: StandingWater;
  readonly ordinary: StandingWater;
  readonly lowest: StandingWater;
  /** To the brim [m³]. */
  readonly capacity: number;
  readonly material: FrostMaterial | undefined;
}

/**
 * Wall of a pipe or hose of which only the bore is known [m].
 *
 * @source common-practice, thin-walled tube and hose, from memory
 */
const PLAIN_WALL = 0.002;

/** The runs of a line, each with what the plan says of its place in the weather. */
export function exposedRuns(plan: Plan, line: Line, values: TypedValues): ExposedRun[] {
  return line.runs.map((run, at) => {
    const typed = plan.runs[run.index];
    const pipe = pipeById(run.pipeId);
    return {
      id: run.id,
      index: run.index,
      run: at,
      length: run.length,
      bore: run.bore,
      outside: pipe?.outside ?? run.bore + 2 * PLAIN_WALL,
      lagging: typed.lagging === undefined ? 0 : values.si(typed.lagging, "length"),
      buried: typed.buried === undefined ? 0 : values.si(typed.buried, "length"),
      volume: (Math.PI / 4) * run.bore ** 2 * run.length,
      material: pipe === undefined ? undefined : frostMaterialOfPipe(pipe.material),
      ...inSun(typed),
    };
  });
}

/** The sources of a line likewise. */
export function exposedVessels(plan: Plan, line: Line): ExposedVessel[] {
  return line.sources.map((source) => ({
    id: source.id,
    index: source.index,
    full: standingWater(source, source.levels.full),
    ordinary: standingWater(source, source.levels.ordinary),
    lowest: standingWater(source, Math.max(source.levels.lowest, 0)),
    capacity: volumeAtLevel(source.shape, heightOfVessel(source.shape)),
    material: frostMaterialById(/steel/i.test(source.vesselName) ? "steel" : "hdpe"),
    ...inSun(plan.sources[source.index]),
  }));
}

function inSun({ colour, shade }: Pick<PlanRun | PlanSource, "colour" | "shade">): InSun {
  return {
    colour: colourById(colour ?? COLOUR_NOT_SAID),
    isColourSaid: colour !== undefined,
    shade: shade === undefined ? 0 : (readShare(shade) ?? 0),
  };
}

/** A round body of the same volume and depth stands for the silhouette of any shape. */
function standingWater({ shape }: Source, level: number): StandingWater {
  const volume = volumeAtLevel(shape, level);
  const surface = surfaceAtLevel(shape, level);
  const breadth = level > 0 ? Math.sqrt((4 * volume) / (Math.PI * level)) : 0;
  return {
    volume,
    wall: wettedAreaAtLevel(shape, level) + surface,
    surface,
    silhouette: breadth * level,
  };
}
