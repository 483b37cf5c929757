import { type FillingFinding, writeFinding } from "@headfall/hydraulics";
import { difference, term } from "./expression.js";
import { type HowGot, soundSteps, stepOf, type Validity } from "./how-got.js";
import { type HowRequest, placeName, quoted } from "./request.js";
import { alwaysValid, validityOfClearing } from "./validity.js";

const TITLES: Readonly<Record<FillingFinding["code"], string>> = {
  humpTrapsAir: "Air kept beyond",
  humpAboveWater: "A hump above the water, at",
  endHoldsAir: "Air kept at the dead end",
  suction: "Suction at",
};

/** What filling from empty leaves, or where the running line sucks: the heights that make it so. */
export function howFilling(request: HowRequest, at: number): HowGot {
  const { checked, figures } = request;
  const finding = checked.filling[at]!;
  return {
    title: `${TITLES[finding.code]} ${placeName(request, finding.pointIndex)}`,
    result: figures.head(sizeOf(finding)),
    steps: soundSteps(stepOfFinding(request, finding)),
    valid: validOf(finding),
    notes: [
      writeFinding({ ...finding, point: placeName(request, finding.pointIndex) }, figures.system),
      ...(finding.code === "humpTrapsAir"
        ? [
            "A column of air in a leg that falls takes its own height from the head beyond it. It is swept out from the velocity √(g d) [0.825 + 0.25 √(sin θ)] on, θ the slope of that leg.",
          ]
        : []),
    ],
    sources: finding.code === "humpTrapsAir" ? ["jordan-1984", "wisner-1975"] : ["closed-form"],
  };
}

function sizeOf(finding: FillingFinding): number {
  switch (finding.code) {
    case "humpTrapsAir":
      return finding.airHead;
    case "humpAboveWater":
      return finding.above;
    case "endHoldsAir":
      return finding.rise;
    case "suction":
      return finding.head;
  }
}

/** What each finding is the difference of: two heights, or a grade line and a height. */
function stepOfFinding({ checked, figures }: HowRequest, finding: FillingFinding) {
  const { pointIndex } = finding;
  const height = checked.line.points.height[pointIndex]!;
  const size = sizeOf(finding);
  const other = finding.code === "suction" ? height + size : height - size;
  const write = figures.alike(height, other);
  const here = term("height of the pipe there", height, write(height), {
    of: "pointHeight",
    point: pointIndex,
  });
  const there = term(OTHER_HEIGHT[finding.code], other, write(other));
  const parts = finding.code === "suction" ? difference(there, here) : difference(here, there);
  return stepOf(SIZE_WORDS[finding.code], parts, write);
}

const OTHER_HEIGHT: Readonly<Record<FillingFinding["code"], string>> = {
  humpTrapsAir: "foot of the column of air",
  humpAboveWater: "lowest water that feeds it",
  endHoldsAir: "the sag before it",
  suction: "grade line",
};
const SIZE_WORDS: Readonly<Record<FillingFinding["code"], string>> = {
  humpTrapsAir: "column of air",
  humpAboveWater: "above the water",
  endHoldsAir: "rise",
  suction: "head",
};

function validOf({ code }: FillingFinding): readonly Validity[] {
  const level = alwaysValid("Hydrostatics", "heights above the ground at the first source");
  return code === "humpTrapsAir" ? [level, validityOfClearing()] : [level];
}

/** What was taken where the plan is silent, and why. */
export function howDefault({ checked }: HowRequest, used: number): HowGot {
  const { path, value, because } = checked.defaults[used]!;
  return {
    title: `Taken for granted at ${quoted(path)}`,
    result: quoted(value),
    steps: [],
    valid: [],
    notes: [
      `The plan does not say. Taken: ${because}.`,
      "Say it in the plan, and what you say is taken instead.",
    ],
    sources: because.includes("common practice") ? ["common-practice"] : [],
  };
}
