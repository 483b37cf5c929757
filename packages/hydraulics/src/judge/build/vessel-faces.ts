import type { VesselShape } from "../../physics/vessel.js";
import { DRAG } from "../../physics/wind.js";

/** A vessel from outside, by its inside sizes: walls are thin. Lengths [m], areas [m²]. */
export interface Faces {
  /** Of its bottom, the narrow way. */
  readonly width: number;
  readonly bottom: number;
  /** What the wind sees, broadside, and the middle of it above the bottom. */
  readonly area: number;
  readonly middle: number;
  readonly drag: number;
  /** Whether it lies on its side, and would roll before it tips. */
  readonly rolls: boolean;
}

/** Undefined for a vessel of which only levels and volumes are known. */
export function facesOf(shape: VesselShape): Faces | undefined {
  switch (shape.kind) {
    case "upright": {
      const { diameter, height } = shape;
      return round({ bottom: diameter, top: diameter, height });
    }
    case "tapered":
      return round({ bottom: shape.bottomDiameter, top: shape.topDiameter, height: shape.height });
    case "box": {
      const [narrow, wide] = [Math.min(shape.length, shape.width), Math.max(shape.length, shape.width)];
      const [area, middle] = [wide * shape.height, shape.height / 2];
      return { width: narrow, bottom: narrow * wide, area, middle, drag: DRAG.box, rolls: false };
    }
    case "lying": {
      const { diameter, length } = shape;
      const area = diameter * length;
      return { width: diameter, bottom: area / 2, area, middle: diameter / 2, drag: DRAG.round, rolls: true };
    }
    case "table":
      return undefined;
  }
}

/** The middle of a trapezium's area stands h (b + 2 t) / 3 (b + t) above its lower side. */
function round({ bottom, top, height }: { bottom: number; top: number; height: number }): Faces {
  return {
    width: bottom,
    bottom: (Math.PI * bottom * bottom) / 4,
    area: (height * (bottom + top)) / 2,
    middle: (height * (bottom + 2 * top)) / (3 * (bottom + top)),
    drag: DRAG.round,
    rolls: false,
  };
}
