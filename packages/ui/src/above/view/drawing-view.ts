import { svg, type TemplateResult } from "lit";
import type { Viewport } from "../../kernels/above/viewport.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import type { AboveTool, Ghost } from "../states/hand.js";
import { ghostView } from "./ghost-view.js";
import { gridView, scaleBarView } from "./sheet-view.js";

export interface Drawing {
  readonly view: Viewport;
  readonly size: { readonly width: number; readonly height: number };
  readonly system: UnitSystem;
  readonly tool: AboveTool;
  readonly isBusy: boolean;
  readonly ghost: Ghost | undefined;
  /** Outlines, plan and parts; kept as they are while only the view moves. */
  readonly scene: unknown;
}

export interface DrawingListeners {
  readonly down: (event: PointerEvent) => void;
  readonly move: (event: PointerEvent) => void;
  readonly up: (event: PointerEvent) => void;
  readonly cancel: (event: PointerEvent) => void;
  readonly menu: (event: Event) => void;
  readonly wheel: (event: WheelEvent) => void;
  readonly key: (event: KeyboardEvent) => void;
}

/** The sheet: grid, the plan as a group that moves with the view, what the hand is about to do, and the scale. */
export function drawingView(drawing: Drawing, listeners: DrawingListeners): TemplateResult<2> {
  const { view, size, system, tool, isBusy, ghost, scene } = drawing;
  return svg`<svg part="drawing" class="drawing ${tool} ${isBusy ? "busy" : ""}" tabindex="0" role="group"
      aria-label="The plan from above" aria-describedby="hint keys"
      @pointerdown=${listeners.down} @pointermove=${listeners.move} @pointerup=${listeners.up}
      @pointercancel=${listeners.cancel} @contextmenu=${listeners.menu} @wheel=${listeners.wheel} @keydown=${listeners.key}>
    <rect class="back" width=${size.width} height=${size.height}></rect>
    ${gridView(view, size, system)}
    <g transform="translate(${view.left} ${view.top})">
      ${scene}
      ${ghostView(ghost, view, size.width)}
    </g>
    ${scaleBarView(view, size, system)}
  </svg>`;
}
