import { nothing, svg } from "lit";
import type { Scene, SceneJoint, SceneRun } from "../../kernels/above/scene.js";
import { partOfJoint } from "../../kernels/above/scene.js";
import type { Selected } from "../../kernels/selected.js";
import { pathOf } from "../../profile/profile-words.js";

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
      const marks = group?.marks ?? [];
      return marks.map(
        ({
          pixel,
          drinkers,
        }) => svg`<circle class="outline ${kind} ${drinkers.some(({ number }) => number === part.number) ? "one" : ""}"
          cx=${pixel.x} cy=${pixel.y} r=${isFocus ? 13 : 10}></circle>`,
      );
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

/** Two strokes, the upper one in the colour of the sheet, leave a line on either side of the pipe. */
function runOutline({ pixels, stroke }: SceneRun, kind: string, room: number) {
  const path = pathOf(pixels);
  return svg`
    <path class="casing ${kind}" d=${path} stroke-width=${stroke + room}></path>
    <path class="casing inner" d=${path} stroke-width=${stroke + room - 5}></path>`;
}
