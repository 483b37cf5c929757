import { type Checked, LAW_WORDS, writeVelocity } from "@headfall/hydraulics";
import type { HowGot } from "./how-got.js";
import { showFlow, showHead, showLength, showVolume } from "./shown.js";
import { trimmed, type UnitSystem } from "./typed-quantity.js";

/** Velocity, regime, losses and standing water of one run at its busiest, each with how it was got. */
export function howGotRun(checked: Checked, run: number, system: UnitSystem): readonly HowGot[] {
  const { busiest, bore, length, volume } = checked.runs[run]!;
  const flow = showFlow(busiest.flow, system);
  const inside = showLength(bore, system);
  const velocity = writeVelocity(busiest.velocity, system);
  const viscosity = checked.line.water.viscosity;
  const outside = busiest.hazenWilliamsInRange
    ? "The flow lies within the range Hazen-Williams was made for."
    : "The flow lies outside the range Hazen-Williams was made for; the verdicts take the more cautious law.";
  return [
    {
      title: "Velocity",
      result: velocity,
      formula: "v = 4 Q / (π d²)",
      filled: `4 × ${flow} / (π × (${inside})²) = ${velocity}`,
      notes: ["At the end of the run that carries the most, with the source full and the busiest minutes."],
      sources: ["closed-form"],
    },
    {
      title: "Regime",
      result: busiest.regime,
      formula: "Re = v d / ν",
      filled: `${velocity} × ${inside} / (${trimmed(viscosity * 1e6, 3)} mm²/s) = ${Math.round(busiest.reynolds)}`,
      notes: ["The viscosity ν is that of the plan's water at its temperature."],
      sources: ["hydraulic-institute-edb", "iapws-sr6-08"],
    },
    {
      title: "Head lost along the run",
      result: showHead(busiest.loss[checked.friction], system),
      formula: "sum over its pieces of pipe and its fittings, each at its own flow",
      filled: `${showHead(busiest.loss.hazenWilliams, system)} by ${LAW_WORDS.hazenWilliams}, ${showHead(busiest.loss.darcyWeisbach, system)} by ${LAW_WORDS.darcyWeisbach}`,
      notes: [outside],
      sources: ["hazen-williams-si", "churchill-1977", "hooper-1981"],
    },
    {
      title: "Water in the pipe",
      result: showVolume(volume, system),
      formula: "V = π d² L / 4",
      filled: `π × (${inside})² × ${showLength(length, system)} / 4 = ${showVolume(volume, system)}`,
      notes: ["Flushing the run once takes this much."],
      sources: ["closed-form"],
    },
  ];
}
