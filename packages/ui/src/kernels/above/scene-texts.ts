import { keyOfPart, type Selected } from "../selected.js";
import { showFlow, showLength } from "../shown.js";
import type { UnitSystem } from "../typed-quantity.js";
import { lengthOf } from "./lay-above.js";
import { type Box, boxAround, sizeOfText, type TextForm, type WantedText } from "./place-texts.js";
import { type BareScene, partOfJoint, type SceneJoint, type SceneRequest, type SceneRun } from "./scene.js";
import { fallWords } from "./spoken-parts.js";
import type { Pixel } from "./viewport.js";

/** Names longer than this are cut on the drawing; panel and tables hold them whole. */
const MOST_LETTERS = 24;
const LEAST_LABELLED = 26;
/** What must stay visible around a joint, a drinker's mark and along a pipe [px]. */
const JOINT = 14;
const MARK = 13;
const PIPE = 7;
/** Places along a piece where its label is tried, the middle first. */
const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8];

/** The labels a drawing would like to have, with what matters most weighing most. */
export function wantedTexts({ runs, joints }: BareScene, { selected, system }: SceneRequest): WantedText[] {
  return [
    ...joints.flatMap((joint) => jointText(joint, isChosen(selected, partOfJoint(joint.joint)))),
    ...runs.flatMap((run) => runText(run, isChosen(selected, { kind: "run", run: run.run.index }), system)),
  ];
}

const isChosen = (selected: Selected | undefined, part: Selected): boolean =>
  selected !== undefined && keyOfPart(selected) === keyOfPart(part);

function runText(
  { run, pixels, stroke, figures, cut }: SceneRun,
  chosen: boolean,
  system: UnitSystem,
): WantedText[] {
  const drawn = lengthOf(pixels);
  if (drawn < LEAST_LABELLED) return [];
  const length = showLength(run.length, system);
  const named = `${shortened(run.name)} · ${length}`;
  const figure = figures && [
    fallWords(figures.fall, system),
    figures.flow === 0 ? "" : showFlow(figures.flow, system),
  ];
  const second = [...(figure ?? []), cut === undefined ? "" : "not to scale"]
    .filter((word) => word !== "")
    .join(" · ");
  const forms = [...(second === "" ? [] : [[named, second]]), [named], [length]];
  return [
    {
      id: `run ${run.index}`,
      // Long runs before short ones; the chosen part before all.
      weight: (chosen ? 1e6 : 0) + Math.min(drawn, 9e4),
      forms: forms.map((lines) => ({ lines, middles: besideRun(pixels, lines, stroke) })),
    },
  ];
}

/** Middles beside the pieces of a run, the longest piece first, on either side. */
function besideRun(pixels: readonly Pixel[], lines: readonly string[], stroke: number): Pixel[] {
  const { width, height } = sizeOfText(lines);
  const pieces = pixels.slice(1).map((to, i) => ({ from: pixels[i]!, to }));
  const lengthOfPiece = ({ from, to }: (typeof pieces)[number]) => Math.hypot(to.x - from.x, to.y - from.y);
  const longest = pieces.sort((a, b) => lengthOfPiece(b) - lengthOfPiece(a)).slice(0, 3);
  return longest.flatMap((piece) => {
    const long = Math.max(lengthOfPiece(piece), 1e-9);
    const along = { x: (piece.to.x - piece.from.x) / long, y: (piece.to.y - piece.from.y) / long };
    // Far enough off that the corners of the words stay clear of the pipe.
    const off = (Math.abs(along.y) * width + Math.abs(along.x) * height) / 2 + stroke / 2 + MARK / 2 + 2;
    const at = (share: number, side: number): Pixel => ({
      x: piece.from.x + along.x * long * share - along.y * off * side,
      y: piece.from.y + along.y * long * share + along.x * off * side,
    });
    // Above or to the right first.
    const side = along.x > 0 || (along.x === 0 && along.y < 0) ? -1 : 1;
    return SHARES.flatMap((share) => [at(share, side), at(share, -side)]);
  });
}

/** A joint is labelled when somebody named it: the source always, an end that only its run names never. */
function jointText(joint: SceneJoint, chosen: boolean): WantedText[] {
  const { source, point, name } = joint.joint;
  if (source < 0 && point < 0) return [];
  const lines = [shortened(name)];
  return [
    {
      id: `joint ${name}`,
      weight: (chosen ? 1e6 : 0) + (source >= 0 ? 1e5 : 200),
      forms: [{ lines, middles: aroundJoint(joint, lines) }],
    },
  ];
}

function aroundJoint({ at, vessel }: SceneJoint, lines: readonly string[]): TextForm["middles"] {
  const { width, height } = sizeOfText(lines);
  const half = (vessel?.half ?? JOINT / 2) + 3;
  const [right, down] = [half + width / 2, half + height / 2];
  const slanted = [right - half * 0.3, down - half * 0.3] as const;
  return [
    [0, down],
    [0, -down],
    [-right, 0],
    [right, 0],
    [slanted[0], slanted[1]],
    [-slanted[0], slanted[1]],
    [slanted[0], -slanted[1]],
    [-slanted[0], -slanted[1]],
  ].map(([x, y]) => ({ x: at.x + x!, y: at.y + y! }));
}

/** What no label may lie on: vessels, joints, marks, and all pipes. */
export function coveredBoxes({ joints, groups, runs }: BareScene): Box[] {
  return [
    ...joints.map(({ at, vessel }) => {
      const side = vessel === undefined ? JOINT : vessel.half * 2;
      return boxAround(at, side, side);
    }),
    ...groups.flatMap(({ marks }) => marks.map(({ pixel }) => boxAround(pixel, MARK, MARK))),
    ...runs.flatMap(({ pixels }) => alongPipe(pixels)),
  ];
}

/** Small boxes all along a pipe; a long one has no more of them than would be seen. */
function alongPipe(pixels: readonly Pixel[]): Box[] {
  return pixels.slice(1).flatMap((to, i) => {
    const from = pixels[i]!;
    const count = Math.min(
      400,
      Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / (PIPE * 1.4))),
    );
    return Array.from({ length: count + 1 }, (_, k) =>
      boxAround(
        { x: from.x + ((to.x - from.x) * k) / count, y: from.y + ((to.y - from.y) * k) / count },
        PIPE,
        PIPE,
      ),
    );
  });
}

const shortened = (name: string): string => {
  const letters = [...name];
  return letters.length > MOST_LETTERS ? `${letters.slice(0, MOST_LETTERS - 1).join("")}…` : name;
};
