import type { Plan, PlanSource } from "../../document/plan-schema.js";
import type { Line, Source } from "../../model/line.js";
import { createTypedValues, type TypedValues } from "../../model/typed-values.js";
import { airGapFor } from "../../physics/air-gap.js";
import { GRAVITY } from "../../physics/constants.js";
import { bearingPressure, centreOfMass, tiltThatTopples } from "../../physics/load.js";
import { MOSQUITO_SCREEN, openShareOfScreen, screenedDiameter } from "../../physics/screen.js";
import { heightOfVessel, volumeAtLevel } from "../../physics/vessel.js";
import { UNTIED_SHARE, windThatTips } from "../../physics/wind.js";
import { soilById } from "../../tables/building.js";
import type { Checked } from "../check-result.js";
import { downpourOf } from "../rain/rain-roof.js";
import type { StandLoad } from "./build-sheet.js";
import { type Faces, facesOf } from "./vessel-faces.js";

/** A hard gust to be ready for [m/s]: 90 km/h; common practice, no source. Local wind maps decide. */
export const GUST = 25;
/** A garden hose fills it [m]; from memory. */
const HOSE = 0.019;
/** Feet of a stand of which the plan says nothing. */
const USUAL_FEET = 4;
/** Pads are sized for this share of what the soil is presumed to bear; common practice, no source. */
const PAD_SHARE = 0.5;

/** How each source stands, as far as the plan and the tables tell. */
export function standLoads(plan: Plan, line: Line, sources: Checked["sources"]): StandLoad[] {
  return line.sources.map((source, i) => {
    const values = createTypedValues();
    const typed = plan.sources[source.index];
    const faces = facesOf(source.shape);
    const masses = massesOf(typed, source, line.water.density);
    const rest = restOn(typed, source, faces, values);
    const soil = soilById(plan.soil ?? "clay");
    const presumed = soil?.pressure ?? 0;
    const feet = Math.max(1, rest.feet);
    const report = sources[i];
    return {
      source: source.id,
      index: i,
      stand: source.stand,
      ...masses,
      ...rest,
      pressure: rest.area === undefined ? undefined : bearingPressure({ mass: masses.full, area: rest.area }),
      soil: { id: soil?.id ?? "", name: soil?.name ?? "", presumed, isTyped: plan.soil !== undefined },
      padSide: Math.sqrt((masses.full * GRAVITY) / (feet * PAD_SHARE * presumed)),
      ...balance(typed, source, { ...masses, faces, values }),
      isTied: typed.footing?.tied ?? false,
      wind: windOn(typed, source, { ...masses, faces, values, density: line.water.density }),
      downpour: typed.roof === undefined ? undefined : downpourOf(typed.roof),
      airGap: { bore: HOSE, us: airGapFor(HOSE, "us"), uk: airGapFor(HOSE, "uk") },
      vent:
        report?.ventDiameterNeeded === undefined
          ? undefined
          : {
              bare: report.ventDiameterNeeded,
              screened: screenedDiameter(report.ventDiameterNeeded, openShareOfScreen(MOSQUITO_SCREEN)),
              now: report.ventDiameter,
            },
    };
  });
}

interface Masses {
  readonly water: number;
  readonly vessel: number | undefined;
  readonly standMass: number | undefined;
  readonly full: number;
}

function massesOf({ footing }: PlanSource, source: Source, density: number): Masses {
  const water = density * volumeAtLevel(source.shape, source.levels.full);
  const vessel = footing?.vessel ?? (source.emptyMass > 0 ? source.emptyMass : undefined);
  const standMass = footing?.weighs;
  return { water, vessel, standMass, full: water + (vessel ?? 0) + (standMass ?? 0) };
}

/** What carries it: pads, else bare feet, else the vessel's own bottom where there is no stand. */
function restOn(
  { footing }: PlanSource,
  source: Source,
  faces: Faces | undefined,
  values: TypedValues,
): Pick<StandLoad, "feet" | "on" | "area"> {
  const hasFeet = source.stand > 0 || footing?.feet !== undefined || footing?.pad !== undefined;
  if (!hasFeet) return { feet: 0, on: "bottom", area: faces?.bottom };
  const feet = footing?.feet ?? USUAL_FEET;
  const pad = footing?.pad;
  if (pad !== undefined) {
    const length = values.si(pad.length, "length");
    return { feet, on: "pads", area: feet * length * values.si(pad.width ?? pad.length, "length") };
  }
  return { feet, on: "feet", area: feet * values.siOr(footing?.foot, "length", "footSide", "") ** 2 };
}

interface Standing extends Masses {
  readonly faces: Faces | undefined;
  readonly values: TypedValues;
}

/** Middle of the mass when full, and the tilt at which vessel and stand fall over together. */
function balance(
  { footing }: PlanSource,
  source: Source,
  { faces, values, water, vessel = 0, standMass = 0 }: Standing,
): Pick<StandLoad, "centre" | "tilt"> {
  if (faces === undefined) return { centre: undefined, tilt: undefined };
  const centre = centreOfMass([
    { mass: water, height: source.stand + middleOfWater(source) },
    { mass: vessel, height: source.stand + heightOfVessel(source.shape) / 2 },
    { mass: standMass, height: source.stand / 2 },
  ]);
  const width = footing?.width === undefined ? faces.width : values.si(footing.width, "length");
  return { centre, tilt: centre > 0 ? tiltThatTopples({ width, height: centre }) : undefined };
}

/** Height of the middle of the water above the inside bottom: its volumes in thin layers. */
function middleOfWater({ shape, levels }: Source): number {
  const LAYERS = 64;
  const step = levels.full / LAYERS;
  const volumes = Array.from({ length: LAYERS + 1 }, (_, k) => volumeAtLevel(shape, k * step));
  const layers = volumes
    .slice(1)
    .map((volume, k) => ({ mass: volume - volumes[k], height: (k + 0.5) * step }));
  return centreOfMass(layers);
}

function windOn(
  { footing }: PlanSource,
  source: Source,
  { faces, values, vessel, standMass = 0, density }: Standing & { readonly density: number },
): StandLoad["wind"] {
  if (faces === undefined || faces.rolls || vessel === undefined || vessel <= 0) return undefined;
  const { width, area, middle, drag } = faces;
  const tips = (mass: number) => windThatTips({ mass, width, area, height: middle, drag });
  const held = (level: number) => vessel + density * volumeAtLevel(source.shape, level);
  const full = tips(held(source.levels.full) * UNTIED_SHARE);
  // Speed goes with the root of the mass, so the mass wanted with the square of the speed.
  const wanted = vessel * (GUST / tips(vessel * UNTIED_SHARE)) ** 2;
  const standWidth = footing?.width === undefined ? width : values.si(footing.width, "length");
  return {
    empty: tips(vessel),
    emptyAllowed: tips(vessel * UNTIED_SHARE),
    lowest: tips(held(source.levels.lowest)),
    full: tips(held(source.levels.full)),
    withStand:
      source.stand > 0
        ? windThatTips({
            mass: vessel + standMass,
            width: standWidth,
            area,
            height: source.stand + middle,
            drag,
          })
        : undefined,
    keep: full < GUST ? undefined : Math.max(0, wanted - vessel) / density,
  };
}
