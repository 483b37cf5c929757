import { nothing, svg } from "lit";
import type { Scene, SceneGroup, SceneJoint, SceneRun } from "../../kernels/above/scene.js";
import { partOfJoint } from "../../kernels/above/scene.js";
import { pathOf } from "../../kernels/path-of.js";
import type { Selected } from "../../kernels/selected.js";

/** The outline around a part, drawn under it: what is chosen, or what the keyboard is at. */
export function outlineView(scene: Scene, part: Selected | undefined, kind: "chosen" | "focused") {
  const isFocus = kind === "focused";
  switch (part?.kind) {
    case "source":
    case "joint": {
      const joint = scene.joints.find((each) => isJoint(each, part));
      return joint === undefined ? nothing : jointOutline(joint, kind, isFocus ? 8 : 4);
    }
    case "run": {
      const run = scene.runs[part.run];
      return run === undefined ? nothing : runOutline(run, kind, isFocus ? 16 : 10);
    }
    case "drinkers": {
      const group = scene.groups.find(({ run, group }) => run === part.run && group === part.group);
      return group === undefined ? nothing : groupOutline(group, kind, part.number);
    }
    case undefined:
      return nothing;
  }
}

const isJoint = ({ joint }: SceneJoint, part: Selected): boolean => {
  const own = partOfJoint(joint);
  if (own.kind === "source") return part.kind === "source" && part.source === own.source;
  return own.kind === "joint" && part.kind === "joint" && part.joint === own.joint;
};

function jointOutline({ at, vessel }: SceneJoint, kind: string, room: number) {
  const radius = (vessel?.half ?? 6) * (vessel?.outline.kind === "box" ? 1.2 : 1) + room;
  return svg`<circle class="outline ${kind}" cx=${at.x} cy=${at.y} r=${radius}></circle>`;
}

/** Around all marks of a group, and once more around the one drinker that was chosen of it. */
function groupOutline({ marks }: SceneGroup, kind: string, number: number | undefined) {
  if (marks.length === 0) return nothing;
  // A path of one place has no length; its round ends still show.
  const path = `${pathOf(marks.map(({ pixel }) => pixel))}${marks.length === 1 ? "h0.01" : ""}`;
  const room = kind === "focused" ? 30 : 22;
  const one = marks.find(({ drinkers }) => drinkers.some((each) => each.number === number));
  return svg`
    <path class="casing ${kind}" d=${path} stroke-width=${room}></path>
    <path class="casing inner" d=${path} stroke-width=${room - 5}></path>
    ${one === undefined ? nothing : svg`<circle class="outline ${kind}" cx=${one.pixel.x} cy=${one.pixel.y} r="9"></circle>`}`;
}

/** Two strokes, the upper one in the colour of the sheet, leave a line on either side of the pipe. */
function runOutline({ pixels, stroke }: SceneRun, kind: string, room: number) {
  const path = pathOf(pixels);
  return svg`
    <path class="casing ${kind}" d=${path} stroke-width=${stroke + room}></path>
    <path class="casing inner" d=${path} stroke-width=${stroke + room - 5}></path>`;
}
