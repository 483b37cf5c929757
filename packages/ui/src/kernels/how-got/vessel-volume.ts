import { heightOfVessel, type VesselShape, volumeAtLevel } from "@headfall/hydraulics";
import {
  applied,
  difference,
  type Expression,
  PI,
  power,
  product,
  quotient,
  sum,
  type Term,
  term,
} from "./expression.js";
import { bare, type Figures } from "./figures.js";
import { type Step, stepOf } from "./how-got.js";

/** Volume of water in a vessel at a level, by the formula of its shape; the formulas of volumeAtLevel, term by term. */
export function volumeStep(shape: VesselShape, level: number, figures: Figures): readonly Step[] {
  const h = Math.min(Math.max(level, 0), heightOfVessel(shape));
  const length = (symbol: string, value: number) => term(symbol, value, figures.lengthIn(value));
  if (shape.kind === "table") return [tableStep(shape, h, figures)];
  if (shape.kind === "lying") return lyingSteps(shape, h, figures);
  return [stepOf("V", volumeOf(shape, length("h", h), length), figures.volumeIn)];
}

function volumeOf(
  shape: Exclude<VesselShape, { kind: "table" | "lying" }>,
  h: Term,
  length: (symbol: string, value: number) => Term,
): Expression {
  switch (shape.kind) {
    case "upright":
      return quotient(product(PI, power(length("D", shape.diameter), 2), h), 4);
    case "box":
      return product(length("l", shape.length), length("w", shape.width), h);
    case "tapered": {
      const bottom = length("r₀", shape.bottomDiameter / 2);
      const share = h.value / shape.height;
      const top = length("r", (shape.bottomDiameter * (1 - share) + shape.topDiameter * share) / 2);
      const radii = sum(power(bottom, 2), product(bottom, top), power(top, 2));
      return quotient(product(PI, h, radii), 3);
    }
  }
}

/** A cylinder on its side: the area of a segment of its round end, times its length. */
function lyingSteps(
  { diameter, length }: Extract<VesselShape, { kind: "lying" }>,
  level: number,
  figures: Figures,
): readonly Step[] {
  const radius = term("R", diameter / 2, figures.lengthIn(diameter / 2));
  const h = term("h", level, figures.lengthIn(level));
  const angle = 4 * Math.asin(Math.min(1, Math.sqrt(level / diameter)));
  const theta = term("θ", angle, bare(angle));
  const volume = quotient(
    product(
      term("L", length, figures.lengthIn(length)),
      power(radius, 2),
      difference(theta, applied("sin", theta)),
    ),
    2,
  );
  const chord = product(4, applied("arcsin", applied("√", quotient(h, product(2, radius)))));
  return [stepOf("V", volume, figures.volumeIn), stepOf("θ", chord, (value) => bare(value))];
}

/** Of a measured vessel: the rows on either side of the level, and what the curve through them gives. */
function tableStep(shape: Extract<VesselShape, { kind: "table" }>, level: number, figures: Figures): Step {
  const above = Math.max(
    1,
    shape.levels.findIndex((row) => row >= level - 1e-12),
  );
  const row = (at: number) =>
    `${figures.volumeIn(shape.volumes[at]!)} at ${figures.lengthIn(shape.levels[at]!)}`;
  const volume = volumeAtLevel(shape, level);
  return {
    formula: "V = a smooth rising curve through the measured rows, at h",
    filled: `between ${row(above - 1)} and ${row(above)}, at ${figures.lengthIn(level)} = ${figures.volumeIn(volume)}`,
    value: volume,
    terms: [term("h", level, figures.lengthIn(level))],
  };
}
