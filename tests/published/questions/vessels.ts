import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { checkPlan } from "../../../packages/hydraulics/src/judge/check-plan.js";
import { timeToDrainPrism, timeToDrainUpright } from "../../../packages/hydraulics/src/physics/draining.js";
import { flowOfDrips } from "../../../packages/hydraulics/src/physics/drips.js";
import { capacityOfVessel, volumeAtLevel } from "../../../packages/hydraulics/src/physics/vessel.js";
import type { Givens } from "../figures.js";
import { outletOf } from "./fittings.js";
import { plain, type Question } from "./question.js";

const fallOf = (given: Givens) => ({ from: given.measure("from", "head"), to: given.measure("to", "head") });

const drainUpright: Question = (given) => {
  const vessel = { diameter: given.measure("vesselDiameter", "length") };
  return { time: { kind: "time", si: timeToDrainUpright(vessel, outletOf(given), fallOf(given)) } };
};

const drainPrism: Question = (given) => {
  const vessel = { surface: given.measure("surface", "area") };
  return { time: { kind: "time", si: timeToDrainPrism(vessel, outletOf(given), fallOf(given)) } };
};

/** Share of its capacity that a lying drum holds at a depth given as a share of its diameter. */
const vesselShare: Question = (given) => {
  const diameter = given.measure("diameter", "length");
  const shape = { kind: "lying", diameter, length: given.measure("length", "length") } as const;
  return { share: plain(volumeAtLevel(shape, given.number("depth") * diameter) / capacityOfVessel(shape)) };
};

const capacityUpright: Question = (given) => {
  const shape = {
    kind: "upright",
    diameter: given.measure("diameter", "length"),
    height: given.measure("height", "length"),
  } as const;
  return { volume: { kind: "volume", si: capacityOfVessel(shape) } };
};

/** What drips in a day and in a year, and how long a vessel takes to fill by it. */
const drips: Question = (given) => {
  const rate = given.number("drops") / given.measure("in", "time");
  const flow = flowOfDrips({ rate, volume: given.measure("drop", "volume") });
  const vessel = given.has("vessel") ? given.measure("vessel", "volume") : 1;
  return {
    daily: { kind: "volume", si: flow * 86_400 },
    fills: { kind: "time", si: vessel / flow },
    vesselsAYear: plain((flow * 365 * 86_400) / vessel),
  };
};

/** A whole plan, checked: what its first source weighs. */
const plan: Question = (given) => {
  const reading = checkDocument(given.raw("plan"));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const checking = checkPlan(reading.plan, { samples: 0 });
  if (!checking.ok) throw new Error(JSON.stringify(checking.problems));
  const { massFull } = checking.checked.sources[0]!;
  const { emptyMass } = checking.checked.line.sources[0]!;
  return {
    massFull: { kind: "mass", si: massFull },
    waterMass: { kind: "mass", si: massFull - emptyMass },
  };
};

export const VESSEL_QUESTIONS: Readonly<Record<string, Question>> = {
  drainUpright,
  drainPrism,
  vesselShare,
  capacityUpright,
  drips,
  plan,
};
