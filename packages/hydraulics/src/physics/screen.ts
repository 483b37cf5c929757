import { requireBetween, requirePositive } from "../numerics/require-number.js";

/**
 * A screen that keeps mosquitoes out: wires to a metre each way, and their thickness [m].
 *
 * 18 by 16 to the inch is seen; the wire of 0.011 in is from memory.
 *
 * @source mosquito-screens, 16 to 18 mesh, seen
 */
export const MOSQUITO_SCREEN = {
  wires: 18 / 0.0254,
  wiresAcross: 16 / 0.0254,
  wire: 0.011 * 0.0254,
} as const;

/**
 * Share of a woven screen that is open.
 *
 *   s = (1 - n t) (1 - k t)                                                 (1)
 *
 * @param screen.wires        n, to a metre one way [1/m], > 0
 * @param screen.wiresAcross  k, to a metre the other way [1/m], > 0
 * @param screen.wire         t, thickness of a wire [m], > 0 and less than the space it leaves
 * @returns s [-]
 * @valid clean plain weave; dust and webs close it
 * @throws RangeError when a figure is not positive, or the wires leave nothing open
 * @source closed-form, geometry of a plain weave
 * @example openShareOfScreen(MOSQUITO_SCREEN)   // 0.661
 */
export function openShareOfScreen(screen: {
  readonly wires: number;
  readonly wiresAcross: number;
  readonly wire: number;
}): number {
  const { wires, wiresAcross, wire } = screen;
  requirePositive("openShareOfScreen", {
    "screen.wires": wires,
    "screen.wiresAcross": wiresAcross,
    "screen.wire": wire,
  });
  requireBetween("openShareOfScreen", "screen.wire", wire * Math.max(wires, wiresAcross), {
    least: 0,
    greatest: 1,
  });
  return (1 - wires * wire) * (1 - wiresAcross * wire);
}

/**
 * Diameter of a screened opening that passes what an open one does.
 *
 *   D = d / √s                                                              (1)
 *
 * @param diameter  d, that would do without a screen [m], > 0
 * @param share     s, of the screen that is open [-], above 0 to 1
 * @returns D [m]
 * @valid air at the low speeds of a vent
 * @throws RangeError when diameter is not positive or share not above 0 and up to 1
 * @source closed-form, equal open area
 * @example screenedDiameter(0.01, 0.25)   // 0.02
 */
export function screenedDiameter(diameter: number, share: number): number {
  requirePositive("screenedDiameter", { diameter, share });
  requireBetween("screenedDiameter", "share", share, { least: 0, greatest: 1 });
  return diameter / Math.sqrt(share);
}
