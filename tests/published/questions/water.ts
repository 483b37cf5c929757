import { volumeExpelledByWarming } from "../../../packages/hydraulics/src/physics/vent.js";
import {
  densityAtKelvin,
  densityOfWater,
  surfaceTensionOfWater,
  vapourPressureAtKelvin,
  viscosityDynamicAtKelvin,
  viscosityDynamicOfWater,
  waterAt,
} from "../../../packages/hydraulics/src/physics/water.js";
import type { QuantityKind } from "../../../packages/hydraulics/src/units/quantity.js";
import { columnOf, headOf, pressureOf, type Question } from "./question.js";

const water: Question = (given) => {
  const temperatureC = given.measure("temperature", "temperature");
  const at = waterAt(temperatureC);
  return {
    density: { kind: "density", si: densityOfWater(temperatureC) },
    viscosityDynamic: { kind: "viscosityDynamic", si: viscosityDynamicOfWater(temperatureC) },
    viscosity: { kind: "viscosity", si: at.viscosity },
    vapourPressure: pressureOf(at.vapourPressure),
    surfaceTension: { kind: "surfaceTension", si: surfaceTensionOfWater(temperatureC) },
  };
};

/** Check values of the formulations, some outside the range that the library offers for drinker lines. */
const waterAtKelvin: Question = (given) => {
  const temperature = given.number("temperatureKelvin");
  return {
    density: { kind: "density", si: densityAtKelvin(temperature) },
    viscosityDynamic: { kind: "viscosityDynamic", si: viscosityDynamicAtKelvin(temperature) },
    vapourPressure: pressureOf(vapourPressureAtKelvin(temperature)),
  };
};

const columnAtPressure: Question = (given) => {
  const { density } = waterAt(given.measure("temperature", "temperature"));
  return { head: headOf(columnOf(given.measure("pressure", "pressure"), density)) };
};

const typed =
  (kind: QuantityKind): Question =>
  (given) => ({ [kind]: { kind, si: given.measure("typed", kind) } });

const expelledByWarming: Question = (given) => ({
  volume: {
    kind: "volume",
    si: volumeExpelledByWarming({
      airVolume: given.measure("airVolume", "volume"),
      fromC: given.measure("from", "temperature"),
      toC: given.measure("to", "temperature"),
    }),
  },
});

export const WATER_QUESTIONS: Readonly<Record<string, Question>> = {
  water,
  waterAtKelvin,
  columnAtPressure,
  typedHead: typed("head"),
  typedVolume: typed("volume"),
  typedFlow: typed("flow"),
  expelledByWarming,
};
