import { pipeById, runEnds } from "@headfall/hydraulics";
import { difference, PI, power, product, quotient, term } from "./expression.js";
import { bare } from "./figures.js";
import { fallNote } from "./heights.js";
import { type HowGot, soundSteps, stepOf } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import { alwaysValid } from "./validity.js";

/** Length of a run, along the pipe: what was typed. */
export function howRunLength({ checked, plan, figures }: HowRequest, run: number): HowGot {
  const { id, index, length } = checked.line.runs[run]!;
  const typed = plan?.runs[index]?.length;
  return {
    title: `Length of ${quoted(id)}`,
    result: figures.length(length),
    steps: [],
    valid: [alwaysValid("Length", "measured along the pipe, humps and bends included")],
    notes: [typed === undefined ? "As the plan says." : `As the plan says: ${quoted(typed)}.`],
    sources: [],
  };
}

/** How much lower a run ends than it starts. */
export function howRunFall(request: HowRequest, run: number): HowGot {
  const { checked, figures, plan } = request;
  const { points, id } = checked.line.runs[run]!;
  const [first, last] = [points[0]!, points[points.length - 1]!];
  const [start, end] = [checked.line.points.height[first]!, checked.line.points.height[last]!];
  const write = figures.alike(start, end);
  const ends = plan === undefined ? undefined : runEnds(plan)[run];
  return {
    title: `Fall of the pipe of ${quoted(id)}${ends === undefined ? "" : `, ${quoted(ends.from)} to ${quoted(ends.to)}`}`,
    result: figures.length(start - end),
    steps: soundSteps(
      stepOf(
        "fall",
        difference(
          term("height where it starts", start, write(start), { of: "pointHeight", point: first }),
          term("height where it ends", end, write(end), { of: "pointHeight", point: last }),
        ),
        write,
      ),
    ),
    valid: [alwaysValid("Heights", "above the ground at the first source")],
    notes: [fallNote(request, run)].filter((note) => note !== ""),
    sources: ["closed-form"],
  };
}

/** Inside diameter of a run's pipe, with the range it is sold in and the standard that says so. */
export function howRunBore({ checked, figures }: HowRequest, run: number): HowGot {
  const { id, pipeId, pipeName, bore, boreLow, boreHigh } = checked.line.runs[run]!;
  const pipe = pipeById(pipeId);
  const write = figures.alike(bore);
  const { outside, wall } = pipe ?? {};
  // Tables round all three to a hundredth of a millimetre.
  const isByWall = outside !== undefined && wall !== undefined && Math.abs(outside - 2 * wall - bore) < 6e-6;
  return {
    title: `Bore of ${quoted(id)}`,
    result: figures.length(bore),
    steps: isByWall
      ? [
          stepOf(
            "bore",
            difference(term("outside", outside, write(outside)), product(2, term("wall", wall, write(wall)))),
            write,
          ),
        ]
      : [],
    valid: [
      {
        law: "This size as it is sold",
        holds: boreLow === boreHigh ? "one bore, as stated" : `${write(boreLow)} to ${write(boreHigh)}`,
        here: `reckoned with ${write(bore)}: inside`,
        isInside: bore >= boreLow - 1e-9 && bore <= boreHigh + 1e-9,
      },
    ],
    notes: [
      `Pipe: ${quoted(pipeName)}.${pipe === undefined ? " A pipe of the plan's own, with the bore it states." : ""}`,
      ...(pipe === undefined ? [] : [`Read in: ${quoted(pipe.citation.where)} (${pipe.citation.seen}).`]),
      ...(isByWall || pipe === undefined
        ? []
        : ["The bore stands in the table as it is: no outside and wall to take it from."]),
      `With it come C ${bare(checked.line.segments.hazenWilliams[checked.line.runs[run]!.firstSegment] ?? 0)} for Hazen-Williams and a wall ${figures.length(checked.line.segments.roughness[checked.line.runs[run]!.firstSegment] ?? 0)} rough for Darcy-Weisbach.`,
    ],
    sources: pipe === undefined ? [] : [pipe.citation.source],
  };
}

/** Water standing in a run: a long cylinder. */
export function howRunVolume({ checked, figures }: HowRequest, run: number): HowGot {
  const { id, length, bore } = checked.line.runs[run]!;
  const { volume } = checked.runs[run]!;
  return {
    title: `Water standing in ${quoted(id)}`,
    result: figures.volume(volume),
    steps: soundSteps(
      stepOf(
        "V",
        quotient(
          product(
            PI,
            power(term("d", bore, figures.lengthIn(bore), { of: "runBore", run }), 2),
            term("L", length, figures.lengthIn(length), { of: "runLength", run }),
          ),
          4,
        ),
        figures.volumeIn,
      ),
    ),
    valid: [alwaysValid("A full round pipe", "its bore the same from end to end")],
    notes: ["Flushing the run once takes this much."],
    sources: ["closed-form"],
  };
}
