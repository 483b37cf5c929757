import { requirePositive } from "../numerics/require-number.js";
import { fittings } from "./fittings.generated.js";
import type { FittingKind } from "./row-types.js";

export type { FittingKind } from "./row-types.js";

/** Every kind, by id. */
export const allFittings: readonly FittingKind[] = fittings;

const byId = new Map(fittings.map((kind) => [kind.id, kind]));

/**
 * The kind with this id, such as "elbow-90".
 *
 * @example fittingById("elbow-90").kInfinity   // 0.4
 */
export function fittingById(id: string): FittingKind | undefined {
  return byId.get(id);
}

/** What a name ends with where the loss is of a state of the fitting, or of one way through it. */
const STATE_OR_WAY = /, (?:fully open|clean|straight through|into or out of the branch)$/;

/**
 * What is bought for a fitting: its name without the state, or the way through, that its loss was published for.
 *
 * @param name  as the table has it
 * @example boughtAs("Basket strainer, clean")   // Basket strainer
 */
export const boughtAs = (name: string): string =>
  name.replace(STATE_OR_WAY, "").replace(/^Straight past a t/, "T");

/** Losses where pipe and a vessel's water meet: the shape of a mouth. What is bought there is the outlet's own fitting. */
const MOUTHS: ReadonlySet<string> = new Set(["entry-inward", "entry-rounded", "entry-sharp", "exit"]);

/** Whether a kind of loss is of a thing that is bought, not of how a pipe ends. */
export const isBought = (id: string): boolean => !MOUTHS.has(id);

/**
 * Two-K coefficients of a kind of fitting at the size of its run, ready for headLossFitting.
 *
 *   K∞ (1 + a/d),   a the kind's size correction, 25.4 mm in the published form or 0                   (1)
 *
 * @param kind  a kind of fitting
 * @param bore  d, inside diameter of the run it stands in [m], > 0
 * @returns k1, kInfinity corrected for size, and the bore they refer to
 * @valid published coefficients scatter from kind.low to kind.high times the value
 * @throws RangeError when bore is not finite and positive
 * @source hooper-1981, two-K constants, p. 97, seen
 * @example fittingAtBore(fittingById("elbow-90"), 0.0254)   // { k1: 800, kInfinity: 0.8, bore: 0.0254 }
 */
export function fittingAtBore(
  kind: Pick<FittingKind, "k1" | "kInfinity" | "sizeCorrection">,
  bore: number,
): { readonly k1: number; readonly kInfinity: number; readonly bore: number } {
  requirePositive("fittingAtBore", { bore });
  return { k1: kind.k1, kInfinity: kind.kInfinity * (1 + kind.sizeCorrection / bore), bore };
}
