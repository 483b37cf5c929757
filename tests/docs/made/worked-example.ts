import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";
import { buildMoments } from "../../../packages/hydraulics/src/model/moment.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import { solveLine } from "../../../packages/hydraulics/src/solve/solve-line.js";
import { writeColumns } from "./columns.js";

const GRAVITY = 9.80665;
const VISCOSITY = 1.00337e-6;
/** Flow in mL/min, heads in mm throughout: a pocket calculator's numbers. */
const HEAD = 500;
const OPENS = 40;
const K = 75 / Math.sqrt(0.3 - 0.04) / Math.sqrt(1000);
const R = ((128 * VISCOSITY * 10) / (Math.PI * GRAVITY * 0.006 ** 4)) * (1000 / 6e7);

/** One step as the text tells it, by plain arithmetic; nothing of the solver is used. */
export function stepByHand(q1: number, q2: number) {
  const [l1, l2] = [(q1 / K) ** 2, (q2 / K) ** 2];
  const [g1, g2] = [K ** 2 / (2 * q1), K ** 2 / (2 * q2)];
  const t2 = 1 / (1 + g2 * R);
  const s2 = q2 - g2 * (OPENS + l2);
  const g = g1 + g2 * t2;
  const s = q1 - g1 * (OPENS + l1) + s2 * t2;
  const h1 = (HEAD - R * s) / (1 + R * g);
  const h2 = (h1 - R * s2) * t2;
  return { h1, h2, q1: q1 + g1 * (h1 - OPENS - l1), q2: q2 + g2 * (h2 - OPENS - l2) };
}

/** Largest disagreement between heads and laws after a step [mm]. */
const left = (after: ReturnType<typeof stepByHand>): number =>
  Math.max(
    Math.abs(HEAD - after.h1 - R * (after.q1 + after.q2)),
    Math.abs(after.h1 - after.h2 - R * after.q2),
    Math.abs(after.h1 - OPENS - (after.q1 / K) ** 2),
    Math.abs(after.h2 - OPENS - (after.q2 / K) ** 2),
  );

export function workByHand() {
  let q1 = K * Math.sqrt(HEAD - OPENS);
  let q2 = q1;
  const rows = [{ q1, q2, h1: HEAD, h2: HEAD, left: Number.NaN }];
  while (rows.length < 20) {
    const after = stepByHand(q1, q2);
    ({ q1, q2 } = after);
    rows.push({ ...after, left: left(after) });
    if (left(after) <= 1e-6) break;
  }
  return rows;
}

/** The same line through the solver: two nipples on 6 mm tube, no loss at the way in. */
export function solveExample() {
  const reading = checkDocument({
    headfall: 1,
    water: "20 degC",
    sources: [
      {
        vessel: { shape: "box", length: "1 m", width: "1 m", height: "1 m" },
        outlet: "0 cm",
        level: { full: "50 cm", lowest: "50 cm" },
      },
    ],
    runs: [
      {
        length: "20 m",
        pipe: { bore: "6 mm" },
        drinkers: { kind: "nipple-side-action", count: 2, every: "10 m", busiest: 2 },
      },
    ],
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const built = buildLine(reading.plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const { segments } = built.line;
  const bare = { ...segments, k1: segments.k1.map(() => 0), kInfinity: segments.kInfinity.map(() => 0) };
  const line = { ...built.line, segments: bare };
  return solveLine(prepareLine(line, "darcyWeisbach"), buildMoments(line).named.lowestBusiest);
}

export function writeWorkedGivens(): string {
  return [
    `R = 128 x ${VISCOSITY.toExponential()} x 10 / (pi x ${GRAVITY} x 0.006^4) = ${(R / (1000 / 6e7)).toFixed(0)} s/m2 = ${R.toFixed(4)} mm per mL/min`,
    `k = 75 / sqrt(300 - 40) = ${K.toFixed(4)} mL/min per square root of mm`,
  ].join("\n");
}

export function writeFirstStep(): string {
  const q = K * Math.sqrt(HEAD - OPENS);
  const loss = (q / K) ** 2;
  const g = K ** 2 / (2 * q);
  const t2 = 1 / (1 + g * R);
  const s2 = q - g * (OPENS + loss);
  const sum = g + g * t2;
  const draw = s2 + s2 * t2;
  const after = stepByHand(q, q);
  const f = (x: number) => x.toFixed(4);
  return [
    `q1 = q2 = k sqrt(500 - 40)          = ${f(q)} mL/min`,
    `loss in each nipple (q/k)^2         = ${f(loss)} mm`,
    `g1 = g2 = k^2 / (2 q)               = ${f(g)} mL/min per mm`,
    `t2 = 1 / (1 + g2 R)                 = ${f(t2)}`,
    `S2 = q2 - g2 (40 + loss)            = ${f(s2)} mL/min`,
    `G1 = g1 + g2 t2                     = ${f(sum)} mL/min per mm`,
    `S1 = q1 - g1 (40 + loss) + S2 t2    = ${f(draw)} mL/min`,
    `H1 = (500 - R S1) / (1 + R G1)      = ${f(after.h1)} mm`,
    `H2 = (H1 - R S2) t2                 = ${f(after.h2)} mm`,
    `q1 = q1 + g1 (H1 - 40 - loss)       = ${f(after.q1)} mL/min`,
    `q2 = q2 + g2 (H2 - 40 - loss)       = ${f(after.q2)} mL/min`,
  ].join("\n");
}

export function writeWorkedSteps(): string {
  return writeColumns([
    ["step", "q1 mL/min", "q2 mL/min", "H1 mm", "H2 mm", "left mm"],
    ...workByHand().map((row, i) => [
      i === 0 ? "start" : String(i),
      row.q1.toFixed(4),
      row.q2.toFixed(4),
      row.h1.toFixed(4),
      row.h2.toFixed(4),
      i === 0 ? "" : row.left.toExponential(1),
    ]),
  ]);
}
