import { type VesselShape, volumeAtLevel } from "../../physics/vessel.js";
import type { WeighedPlan } from "../asked-plan.js";
import { weighLine } from "../weigh-line.js";

/** The plan with a vessel like one of its own joined to it: as high, twice as much at each height. */
export function withSecondBarrel(asked: WeighedPlan, index: number): WeighedPlan {
  const { line } = asked.judged;
  const sources = line.sources.map((source, i) =>
    i === index ? { ...source, shape: twice(source.shape) } : source,
  );
  return {
    ...asked,
    judged: weighLine({ ...line, sources }),
    fullVolumes: sources.map(({ shape, levels }) => volumeAtLevel(shape, levels.full)),
  };
}

/** A vessel of the same heights that holds twice as much at each. */
function twice(shape: VesselShape): VesselShape {
  switch (shape.kind) {
    case "upright":
      return { ...shape, diameter: shape.diameter * Math.SQRT2 };
    case "lying":
    case "box":
      return { ...shape, length: 2 * shape.length };
    case "tapered":
      return {
        ...shape,
        bottomDiameter: shape.bottomDiameter * Math.SQRT2,
        topDiameter: shape.topDiameter * Math.SQRT2,
      };
    case "table":
      return { ...shape, volumes: shape.volumes.map((volume) => 2 * volume) };
  }
}
