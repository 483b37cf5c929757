import type { Plan } from "@headfall/hydraulics";
import { svg, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import {
  partOfJoint,
  type Scene,
  type SceneGroup,
  type SceneJoint,
  type SceneRun,
} from "../../kernels/above/scene.js";
import {
  kindWord,
  spokenDrinkers,
  spokenJoint,
  spokenRun,
  spokenSource,
} from "../../kernels/above/spoken-parts.js";
import { pathOf } from "../../kernels/path-of.js";
import { isSamePart, keyOfPart, type Selected } from "../../kernels/selected.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";

/** A part that can be pressed or walked to by keyboard: what it is, what it is called aloud, and its shape. */
interface Grip {
  readonly part: Selected;
  readonly spoken: string;
  readonly shape: TemplateResult<2>;
}

export interface GripWords {
  readonly plan: Plan;
  readonly selected: Selected | undefined;
  readonly system: UnitSystem;
  readonly onChoose: (part: Selected) => void;
  /** Told of the part that has the focus, or that none has, and whether the browser would show it. */
  readonly onFocus: (part: Selected | undefined, isSeen: boolean) => void;
}

/** The parts in the order the water takes: sources first, then each run, its drinkers, and where it ends. */
export function partsView(scene: Scene, words: GripWords) {
  return repeat(
    gripsOf(scene, words),
    ({ part }) => keyOfPart(part),
    ({ part, spoken, shape }) => svg`<g class="part" role="button" tabindex="0" data-part=${keyOfPart(part)}
      aria-label=${spoken} aria-pressed=${isChosen(part, words.selected)}
      @focus=${(event: FocusEvent) => words.onFocus(part, (event.target as Element).matches(":focus-visible"))}
      @blur=${() => words.onFocus(undefined, false)}
      @click=${(event: MouseEvent) => {
        // A press of the hand is followed by its own states; a click without one comes from a reader or a voice.
        if (event.detail === 0) words.onChoose(part);
      }}>${shape}</g>`,
  );
}

/** One drinker chosen is its group chosen. */
function isChosen(part: Selected, selected: Selected | undefined): boolean {
  if (selected?.kind !== "drinkers") return isSamePart(part, selected);
  return isSamePart(part, { kind: "drinkers", run: selected.run, group: selected.group });
}

function gripsOf(scene: Scene, words: GripWords): Grip[] {
  const joints = new Map(scene.joints.map((joint) => [joint.joint.name, joint]));
  const grips = scene.joints.filter(({ joint }) => joint.source >= 0).map((joint) => jointGrip(joint, words));
  const told = new Set(scene.joints.filter(({ joint }) => joint.source >= 0).map(({ joint }) => joint.name));
  const groups = groupsByRun(scene.groups);
  const tell = (name: string) => {
    const joint = joints.get(name);
    if (told.has(name) || joint === undefined) return;
    told.add(name);
    grips.push(jointGrip(joint, words));
  };
  for (const run of scene.runs) {
    tell(run.run.from);
    grips.push(runGrip(run, words.system));
    grips.push(...(groups.get(run.run.index) ?? []).map(drinkersGrip));
    tell(run.run.to);
  }
  return grips;
}

function groupsByRun(groups: readonly SceneGroup[]): Map<number, SceneGroup[]> {
  const byRun = new Map<number, SceneGroup[]>();
  for (const group of groups) byRun.set(group.run, [...(byRun.get(group.run) ?? []), group]);
  return byRun;
}

function jointGrip(joint: SceneJoint, { plan }: GripWords): Grip {
  const { at, vessel, meeting } = joint;
  return {
    part: partOfJoint(joint.joint),
    spoken: vessel === undefined ? spokenJoint(joint.joint, meeting) : spokenSource(plan, joint.joint),
    shape: svg`<circle class="grip" cx=${at.x} cy=${at.y} r=${Math.max(12, vessel?.half ?? 0)}></circle>`,
  };
}

function runGrip({ run, pixels, figures }: SceneRun, system: UnitSystem): Grip {
  return {
    part: { kind: "run", run: run.index },
    spoken: spokenRun(run, figures, system),
    shape: svg`<path class="grip way" d=${pathOf(pixels)}></path>`,
  };
}

function drinkersGrip({ run, group, name, kind, drinkers, marks }: SceneGroup): Grip {
  const ends = marks.length === 0 ? "" : pathOf(marks.map(({ pixel }) => pixel));
  return {
    part: { kind: "drinkers", run, group },
    spoken: spokenDrinkers(name, kindWord(kind), drinkers),
    // A path of one place has no length; its round ends still make a grip.
    shape: svg`<path class="grip marks" d="${ends}${marks.length === 1 ? "h0.01" : ""}"></path>`,
  };
}
