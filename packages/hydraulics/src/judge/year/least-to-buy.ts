import { leastToAdd } from "../../numerics/lending/least-to-add.js";
import type { Lending } from "../../numerics/lending/lending.js";
import { type GivenKind, kindsToBuy, shareOf } from "./kit-shares.js";
import type { JudgedPeriod } from "./pen-periods.js";
import type { LeastToBuy } from "./year-result.js";

/**
 * The least to buy so that no pen goes short for want of kit: by money among the kinds the kit has a price for, else by
 * pieces among all waterers of the tables and all kinds of the kit.
 *
 * @returns undefined where the search ended before it found anything
 */
export function leastToBuy(
  kinds: readonly GivenKind[],
  judged: readonly JudgedPeriod[],
  lending: Lending,
): LeastToBuy | undefined {
  const hasPrices = kinds.some(({ price }) => price !== undefined);
  const others = hasPrices ? [] : kindsToBuy().filter(({ id }) => !kinds.some((kind) => kind.id === id));
  const all = [...kinds, ...others];
  const wide: Lending = {
    ...lending,
    stock: [...lending.stock, ...others.map(() => 0)],
    upkeep: all.map(() => 0),
    asks: lending.asks.map((own, p) =>
      own.map((ask, t) => ({
        ...ask,
        shares: [...ask.shares, ...others.map((kind) => shareOf(kind, judged[t], p))],
      })),
    ),
  };
  const costs = all.map(({ price }) => (hasPrices ? (price ?? Number.POSITIVE_INFINITY) : 1));
  const found = leastToAdd(
    wide,
    costs.map((cost) => Math.max(cost, 1e-6)),
  );
  if (found === undefined) return undefined;
  const ids = judged[0]?.manned.flock.pens.map(({ id }) => id) ?? [];
  return {
    items: all.flatMap(({ id, name }, k) =>
      found.pieces[k] > 0 ? [{ id, name, count: found.pieces[k] }] : [],
    ),
    by: hasPrices ? "money" : "pieces",
    cost: found.cost,
    bound: found.bound,
    never: ids.flatMap((pen, p) => {
      const t = found.never[p].findIndex((short) => short > 0);
      return t < 0 ? [] : [{ pen, from: judged[t].period.from }];
    }),
  };
}
