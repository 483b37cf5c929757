import { svg } from "lit";
import type { Scene } from "../../kernels/above/scene.js";
import type { Selected } from "../../kernels/selected.js";
import { inkView } from "./ink-view.js";
import { outlineView } from "./outline-view.js";
import { type GripWords, partsView } from "./parts-view.js";

/** The plan as drawn, and over it the shapes that can be pressed and walked to. */
export function sceneView(scene: Scene, words: GripWords, focused: Selected | undefined) {
  return svg`
    <g class="ink" aria-hidden="true">
      ${outlineView(scene, focused, "focused")}
      ${outlineView(scene, words.selected, "chosen")}
      ${inkView(scene, words.selected)}
    </g>
    ${partsView(scene, words)}`;
}
