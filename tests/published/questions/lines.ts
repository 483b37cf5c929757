import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { checkPlan } from "../../../packages/hydraulics/src/judge/check-plan.js";
import type { Checked } from "../../../packages/hydraulics/src/judge/check-result.js";
import { flowOfDrinker } from "../../../packages/hydraulics/src/model/drinker-flow.js";
import { GRAVITY } from "../../../packages/hydraulics/src/physics/constants.js";
import { plain, type Question } from "./question.js";

function checked(document: unknown): Checked {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const checking = checkPlan(reading.plan, { samples: 0 });
  if (!checking.ok) throw new Error(JSON.stringify(checking.problems));
  return checking.checked;
}

const BARREL = { vessel: "drum-55gal-plastic", stand: "60 cm" };

/** A line that falls, with a drinker of the orifice's law at either end: what the fall adds at the far one. */
const fallingLine: Question = (given) => {
  const length = given.text("length");
  const readings = [
    { head: "25 cm", flow: "60 mL/min" },
    { head: "1 m", flow: "120 mL/min" },
  ];
  const { line } = checked({
    headfall: 1,
    water: "20 degC",
    sources: [BARREL],
    runs: [
      { length: "3 m" },
      {
        length,
        fall: given.text("fall"),
        drinkers: { kind: "orifice", count: 2, first: "0 m", every: length },
      },
    ],
    ownDrinkers: { orifice: { readings, holdsUpTo: "3 m", need: "50 mL/min" } },
  });
  const [near, far] = line.drinkers.height as unknown as [number, number];
  const gain = near - far;
  const head = given.measure("head", "head");
  const flow = (d: number, at: number) => flowOfDrinker(line.drinkers, d, at);
  return {
    headGain: { kind: "head", si: gain },
    pressureGain: { kind: "pressure", si: line.water.density * GRAVITY * gain },
    flowRatio: plain(flow(1, head + gain) / flow(0, head)),
  };
};

/** How long a line's own water lasts the birds in the light: what they drink is that old when it reaches the last. */
const lineTurnover: Question = (given) => {
  const { runs, flock } = checked({
    headfall: 1,
    sources: [BARREL],
    runs: [
      { length: given.text("length"), pipe: { bore: given.text("bore") }, drinkers: { kind: "cup-trigger" } },
    ],
    weather: { high: "21 degC", light: `${given.number("lightHours")} h` },
    pens: [{ birds: { kind: given.text("kind"), count: given.number("count"), lay: "90 %" } }],
  });
  const [batch] = flock!.pens[0]!.batches;
  const anHour = (batch!.count * batch!.intakeSize) / given.number("lightHours");
  return { time: { kind: "time", si: (runs[0]!.volume / anHour) * 3600 } };
};

export const LINE_QUESTIONS: Readonly<Record<string, Question>> = { fallingLine, lineTurnover };
