import { LAW_WORDS, type MomentName } from "@headfall/hydraulics";
import { otherLaw } from "../other-law.js";
import { difference, product, sum, term } from "./expression.js";
import { AT_MOMENT, type Figures } from "./figures.js";
import { type HowGot, type Part, soundSteps, stepOf } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import { alwaysValid, validityOfVessel, validityOfWater } from "./validity.js";
import { volumeStep } from "./vessel-volume.js";

/** Water a source holds when full, what of it can be used, and what stays in it. */
export function howSourceVolume(
  request: HowRequest,
  source: number,
  which: "full" | "usable" | "dead",
): HowGot {
  const { checked, figures } = request;
  const { id, shape, levels, vesselName } = checked.line.sources[source]!;
  const { volumeFull, volumeUsable, volumeDead } = checked.sources[source]!;
  const of = { of: "sourceVolume", source } as const;
  const write = figures.volumeIn;
  const usable = stepOf(
    "usable",
    difference(
      term("water when full", volumeFull, write(volumeFull), { ...of, which: "full" }),
      term("water below the lowest level", volumeDead, write(volumeDead), { ...of, which: "dead" }),
    ),
    write,
  );
  const level = which === "dead" ? levels.lowest : levels.full;
  const volume = { full: volumeFull, usable: volumeUsable, dead: volumeDead }[which];
  return {
    title: `${VOLUME_WORDS[which]} in ${quoted(id)}`,
    result: figures.volume(volume),
    steps: soundSteps(...(which === "usable" ? [usable] : volumeStep(shape, level, figures))),
    valid: [validityOfVessel(shape, level, figures)],
    notes: [
      `Vessel: ${quoted(vesselName)}. Levels count from its lowest inside point.`,
      ...(shape.kind === "table"
        ? ["Its levels and volumes were measured: a smooth rising curve runs through them."]
        : []),
    ],
    sources: shape.kind === "table" ? ["fritsch-butland-1984"] : ["closed-form"],
  };
}

const VOLUME_WORDS = {
  full: "Water when full",
  usable: "Water that can be used",
  dead: "Water below the lowest level",
};

/** What a source gives at a moment: all the drinkers at work draw, and all that fills header tanks. */
export function howSourceDraw(request: HowRequest, source: number, moment: MomentName): HowGot {
  const { checked, figures } = request;
  const law = otherLaw(checked.friction);
  const drawBy = (friction: typeof law) => checked.solutions[moment][friction].sourceFlow[source]!;
  // The report of sources is made with the second of the two laws, which knows of laminar flow.
  const [draw, second] = [drawBy("darcyWeisbach"), drawBy("hazenWilliams")];
  const rows = drawOf(request, source, moment);
  return {
    title: `Drawn from ${quoted(checked.line.sources[source]!.id)}, ${AT_MOMENT[moment]}`,
    result: figures.flow(draw),
    steps: soundSteps(
      stepOf(
        "draw",
        sum(...rows.map(({ cells, value }) => term(cells[0]!, value, cells[1]!))),
        figures.flowIn,
      ),
    ),
    parts: { caption: "By the runs that leave it", columns: ["Run", "Flow"], rows },
    valid: [alwaysValid("Water in = water out", "at every place where pipes meet")],
    secondOpinion: {
      by: LAW_WORDS.hazenWilliams,
      result: figures.flow(second),
      difference: figures.flowDifference(second - draw),
    },
    notes: [
      `By ${LAW_WORDS.darcyWeisbach}, which knows of slow flow. A negative flow comes back into the source.`,
    ],
    sources: ["closed-form"],
  };
}

function drawOf(
  { checked: { line, solutions }, figures }: HowRequest,
  source: number,
  moment: MomentName,
): Part[] {
  const { flow, drinkerFlow, feedFlow } = solutions[moment].darcyWeisbach;
  const { point } = line.sources[source]!;
  const byRun = new Map<string, number>();
  const add = (name: string, value: number) => byRun.set(name, (byRun.get(name) ?? 0) + value);
  for (let s = 0; s < line.segments.count; s++) {
    const out = Number(line.segments.from[s] === point) - Number(line.segments.to[s] === point);
    if (out !== 0) add(`into ${quoted(line.runs[line.segments.run[s]!]!.id)}`, out * flow[s]!);
  }
  for (let d = 0; d < line.drinkers.count; d++)
    if (line.drinkers.point[d] === point) add("drinkers at its outlet", drinkerFlow[d]!);
  line.sources.forEach(({ feed, id }, s) => {
    if (feed?.point === point) add(`fills ${quoted(id)}`, feedFlow[s]!);
  });
  const write = (value: number) => `${value < 0 ? "−" : ""}${figures.flowIn(value)}`;
  return [...byRun].map(([name, value]) => ({ cells: [name, write(value)], value }));
}

/** Mass on the stand: the vessel itself and its water. */
export function howSourceMass(request: HowRequest, source: number): HowGot {
  const { checked, figures } = request;
  const { id, emptyMass, levels, shape, vesselName } = checked.line.sources[source]!;
  const { massFull, volumeFull } = checked.sources[source]!;
  const { density, temperatureC } = checked.line.water;
  const empty = term("vessel empty", emptyMass, massIn(emptyMass, figures));
  const water = product(
    term("water when full", volumeFull, figures.volumeIn(volumeFull), {
      of: "sourceVolume",
      source,
      which: "full",
    }),
    term("its density", density, figures.density(density)),
  );
  return {
    title: `Mass on the stand of ${quoted(id)} when full`,
    result: figures.mass(massFull),
    steps: soundSteps(stepOf("mass", sum(empty, water), (value) => massIn(value, figures))),
    valid: [validityOfWater(temperatureC, figures), validityOfVessel(shape, levels.full, figures)],
    notes: [
      emptyMass === 0
        ? "The mass of the empty vessel is not known, and is left out."
        : `Vessel: ${quoted(vesselName)}, with the mass that its table gives.`,
    ],
    sources: ["closed-form", "iapws-sr6-08"],
  };
}

const massIn = (value: number, figures: Figures): string =>
  value === 0 ? figures.mass(0) : figures.mass(value);
