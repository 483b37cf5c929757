import { createBorrower } from "../../numerics/lending/borrower.js";
import { leastShort } from "../../numerics/lending/least-short.js";
import { type LendingAnswer, lendPieces } from "../../numerics/lending/lend-pieces.js";
import { type Ask, enoughAlone, type Lending, type Lent, shortOf } from "../../numerics/lending/lending.js";
import { type GivenKind, servedBy } from "./kit-shares.js";
import { leastToBuy } from "./least-to-buy.js";
import type { JudgedPeriod } from "./pen-periods.js";
import type { Served } from "./waterer-serves.js";
import type { HandedOut, KitGiven, Shortage, ShortReason, YearPeriod } from "./year-result.js";

/** Water counts in tenths of a litre: whole numbers, so that a proof is exact. */
const TENTHS_OF_LITRES = 10_000;

export interface KitOptions {
  readonly mostParts?: number;
  readonly progress?: (done: number) => boolean;
}

/** Gives the kit out to the pens, period by period, and says what is short, why, and what to buy. */
export function giveKit(
  kinds: readonly GivenKind[],
  judged: readonly JudgedPeriod[],
  options: KitOptions,
): KitGiven {
  const served = judged.map((one) =>
    one.period.pens.map((_, p) => kinds.map((kind) => servedBy(kind, one, p))),
  );
  const asks = asksOf(judged, served);
  const blocks = blocksOf(judged, asks);
  const lending = lendingOf(kinds, blocks, asks);
  const { mostParts, progress } = options;
  const answer = lendPieces(lending, {
    ...(mostParts === undefined ? {} : { mostParts }),
    ...(progress === undefined ? {} : { mayGoOn: progress }),
  });
  const periods = judged.map(({ period }) => period);
  const ids = judged[0]?.manned.flock.pens.map(({ id }) => id) ?? [];
  const lent = answer.lent.map((own) => blocks.flatMap(({ periods: of }, t) => of.map(() => own[t])));
  return {
    kinds: kinds.map(({ id, name, is, count, spare }, k) => ({
      id,
      name,
      isWaterer: is.what === "waterer",
      count,
      spare,
      holds: is.what === "waterer" ? is.waterer.holds : 0,
      mostOut: Math.max(0, ...periods.map((_, t) => lent.reduce((sum, own) => sum + own[t][k], 0))),
    })),
    lent: periods.map((_, t) => lent.map((own) => own[t])),
    serves: servingsOf(served, asks),
    handed: handedOut(kinds, ids, { lent, periods }),
    shortages: shortagesOf(kinds, { ids, lending, answer, blocks }),
    cost: answer.cost,
    bound: answer.bound,
    isProven: answer.isProven,
    isHeldDown: answer.isHeldDown,
    parts: answer.parts,
    buy:
      answer.cost.short === 0
        ? undefined
        : leastToBuy(
            kinds,
            blocks.map(({ first }) => first),
            lending,
          ),
  };
}

/** By period, by pen, by kind. */
type AllServed = readonly (readonly (readonly (Served | undefined)[])[])[];

/** By pen, by period. */
function asksOf(judged: readonly JudgedPeriod[], served: AllServed): Ask[][] {
  const pens = judged[0]?.period.pens ?? [];
  return pens.map((_, p) =>
    judged.map(({ period }, t) => {
      const { birds, byLine, byWaterers } = period.pens[p];
      return {
        weight: birds,
        met: byLine + byWaterers,
        shares: served[t][p].map((one) => one?.share ?? 0),
      };
    }),
  );
}

/** Periods that follow each other and ask alike in every pen: nothing is to be moved within them. */
interface Block {
  readonly periods: readonly number[];
  readonly first: JudgedPeriod;
  readonly from: number;
  readonly to: number;
}

function blocksOf(judged: readonly JudgedPeriod[], asks: readonly (readonly Ask[])[]): Block[] {
  const blocks: Block[] = [];
  let last: string | undefined;
  judged.forEach((first, t) => {
    const { from, to } = first.period;
    const asked = JSON.stringify(asks.map((own) => own[t]));
    const block = blocks[blocks.length - 1];
    if (asked === last) blocks[blocks.length - 1] = { ...block, periods: [...block.periods, t], to };
    else blocks.push({ periods: [t], first, from, to });
    last = asked;
  });
  return blocks;
}

function lendingOf(
  kinds: readonly GivenKind[],
  blocks: readonly Block[],
  asks: readonly (readonly Ask[])[],
): Lending {
  return {
    stock: kinds.map(({ count, spare }) => count - spare),
    lasts: blocks.map(({ from, to }) => to - from),
    upkeep: kinds.map(({ is }) =>
      is.what === "waterer" ? Math.round(is.waterer.holds * TENTHS_OF_LITRES) : 0,
    ),
    asks: asks.map((own) => blocks.map(({ periods }) => own[periods[0]])),
  };
}

function servingsOf(served: AllServed, asks: readonly (readonly Ask[])[]): KitGiven["serves"] {
  return served.map((pens, t) =>
    pens.map((kinds, p) =>
      kinds.map((one, k) => (one === undefined ? undefined : { ...one, enough: enoughAlone(asks[p][t], k) })),
    ),
  );
}

/** Pieces that stand in a pen and did not the period before. */
function handedOut(
  kinds: readonly GivenKind[],
  ids: readonly string[],
  { lent, periods }: { readonly lent: Lent; readonly periods: readonly YearPeriod[] },
): HandedOut[] {
  return periods.flatMap((period, t) =>
    ids.flatMap((pen, p) =>
      kinds.flatMap(({ id, name }, k) => {
        const count = lent[p][t][k] - (t === 0 ? 0 : lent[p][t - 1][k]);
        return count > 0 ? [{ period: t, day: period.from, pen, kind: id, kindName: name, count }] : [];
      }),
    ),
  );
}

interface Given {
  readonly ids: readonly string[];
  readonly lending: Lending;
  readonly answer: LendingAnswer;
  readonly blocks: readonly Block[];
}

/** Pens that go short; times that follow each other for one reason are one shortage. */
function shortagesOf(kinds: readonly GivenKind[], given: Given): Shortage[] {
  const { ids, lending, answer, blocks } = given;
  const reasonOf = createReasons(kinds, given);
  return ids.flatMap((pen, p) => {
    const found: Shortage[] = [];
    blocks.forEach(({ from, to }, t) => {
      const ask = lending.asks[p][t];
      const has = answer.lent[p][t];
      if (shortOf(ask, lending.lasts[t], has) === 0) return;
      const met = ask.shares.reduce((sum, share, k) => sum + share * has[k], ask.met);
      const birds = Math.ceil(ask.weight * (1 - met) - 1e-9);
      const because = reasonOf(p, t);
      const last = found[found.length - 1];
      if (last !== undefined && last.to === from && JSON.stringify(last.because) === JSON.stringify(because))
        found[found.length - 1] = {
          ...last,
          to,
          met: Math.min(last.met, met),
          birds: Math.max(last.birds, birds),
        };
      else found.push({ pen, from, to, met, birds, because });
    });
    return found;
  });
}

/** Why a pen goes short in a period. */
function createReasons(
  kinds: readonly GivenKind[],
  { ids, lending, answer }: Given,
): (p: number, t: number) => ShortReason {
  const whole = { ...lending, stock: kinds.map(({ count }) => count) };
  const withSpares = lending.asks.map((_, b) => createBorrower(whole, b));
  return (p, t) => {
    const { shares, ...ask } = lending.asks[p][t];
    const suiting = kinds.flatMap((_, k) => (shares[k] > 0 ? [k] : []));
    if (suiting.length === 0) return { code: "noneSuits" };
    const kept = suiting.filter((k) => kinds[k].spare > 0);
    if (kept.length > 0 && leastShort(withSpares, whole.stock, t).short < answer.leastShort[t])
      return { code: "keptBack", kinds: kept.map((k) => kinds[k].name) };
    const all = kinds.map((_, k) => (shares[k] > 0 ? lending.stock[k] : 0));
    if (shortOf({ ...ask, shares }, lending.lasts[t], all) > 0) return { code: "tooFewOfAll" };
    const holders = ids.filter(
      (_, other) => other !== p && suiting.some((k) => answer.lent[other][t][k] > 0),
    );
    return { code: "inOtherPens", pens: holders };
  };
}
