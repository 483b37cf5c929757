import { nothing, svg } from "lit";
import type { DrawnVessel, ProfileLayout } from "../kernels/profile-layout.js";

/** The source: its stand, its outline, and the water in it at the moment shown. Its width is not to scale. */
export function vesselView({ vessel }: ProfileLayout) {
  const { left, right, bottom, water, full, lowest, outlet } = vessel;
  return svg`
    ${standView(vessel)}
    <clipPath id="inside"><path d=${outlineOf(vessel)}></path></clipPath>
    <path class="vessel" d=${outlineOf(vessel)}></path>
    <g clip-path="url(#inside)">
      <rect class="water" x=${left} y=${water} width=${right - left} height=${Math.max(0, bottom - water)}></rect>
      <path class="surface" d="M${left} ${water}H${right}"></path>
      <path class="level" d="M${left} ${full}H${right}M${left} ${lowest}H${right}"></path>
    </g>
    <path class="vessel" d=${outlineOf(vessel)} fill-opacity="0"></path>
    <path class="pipe" d="M${right - 3} ${outlet}H${right}"></path>`;
}

function standView({ left, right, bottom, ground }: DrawnVessel) {
  if (ground - bottom < 2) return nothing;
  const inset = 5;
  return svg`<path class="stand" d="M${left - 2} ${bottom + 1.5}H${right + 2}
    M${left + inset} ${bottom}V${ground}M${right - inset} ${bottom}V${ground}"></path>`;
}

/** The vessel's outline by its shape; a lying one is a barrel end on. */
function outlineOf({ left, right, top, bottom, shape }: DrawnVessel): string {
  const middle = (left + right) / 2;
  const half = (right - left) / 2;
  if (shape === "lying") {
    const rise = (bottom - top) / 2;
    return `M${left} ${top + rise}A${half} ${rise} 0 1 1 ${right} ${top + rise}A${half} ${rise} 0 1 1 ${left} ${top + rise}Z`;
  }
  const narrow = shape === "tapered" ? half * 0.8 : half;
  return `M${left} ${top}H${right}L${middle + narrow} ${bottom}H${middle - narrow}Z`;
}
