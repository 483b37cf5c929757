import { allPipes, findPipe, kindFound, type Plan } from "@headfall/hydraulics";
import type { Entry } from "../fields/entry.js";
import { optionsOf } from "../fields/options-of.js";
import type { PlanChange } from "../store/plan-change.js";
import { partWith } from "../store/plan-values.js";
import { setAt } from "../store/set-at.js";

const typedNumber = (value: number | undefined): string | undefined =>
  value === undefined ? undefined : String(value);

/** What a pipe on the shelf is called. */
export function shelfName(pipe: string): string {
  return kindOf(pipe)?.name ?? pipe;
}

/** One size on the shelf: what a length of it costs, and how much lies there already. */
export function shelfEntries({ shelf = [], money }: Plan, index: number): readonly Entry[] {
  const { pipe, price, per, onHand } = shelf[index]!;
  const name = shelfName(pipe);
  const at = (key: string) => ["shelf", index, key];
  return [
    {
      form: "typed",
      key: `shelf ${index} price`,
      title: money === undefined ? "Price" : `Price, ${money}`,
      name: `Price of ${name}`,
      kind: "number",
      typed: typedNumber(price),
      change: setAt(at("price"), `price of ${name}`),
    },
    {
      form: "typed",
      key: `shelf ${index} per`,
      title: "For",
      name: `Length of ${name} that price buys`,
      kind: "distance",
      typed: per,
      standIn: "1 m",
      change: setAt(at("per"), `length of ${name} a price buys`),
    },
    {
      form: "typed",
      key: `shelf ${index} on hand`,
      title: "On hand",
      name: `${name} on hand`,
      kind: "distance",
      typed: onHand,
      standIn: "none",
      change: setAt(at("onHand"), `${name} on hand`),
    },
  ];
}

/** Sizes that can be put on the shelf beside those on it. */
export function shelfChoice({ shelf = [], runs }: Plan): Entry {
  const taken = new Set(shelf.map(({ pipe }) => idOf(pipe)));
  const families = new Set(runs.map(({ pipe }) => (typeof pipe === "string" ? familyOf(pipe) : undefined)));
  const free = allPipes.filter(({ id }) => !taken.has(id));
  const options = (isOwn: boolean) => optionsOf(free.filter(({ family }) => families.has(family) === isOwn));
  return {
    form: "choice",
    key: "shelf more",
    title: "Put a size on the shelf",
    name: "Put a size on the shelf",
    value: "",
    words: "Choose a pipe",
    isLong: true,
    groups: () => [
      { options: [{ value: "", words: "Choose a pipe" }] },
      { label: "Of the kinds laid", options: options(true) },
      { label: "Other pipe", options: options(false) },
    ],
    change: (pipe) =>
      pipe === "" ? undefined : setAt(["shelf"], `${shelfName(pipe)} on the shelf`)([...shelf, { pipe }]),
  };
}

const kindOf = (pipe: string) => kindFound(findPipe(pipe));
const idOf = (pipe: string): string => kindOf(pipe)?.id ?? pipe;
const familyOf = (pipe: string): string | undefined => kindOf(pipe)?.family;

/** Takes a size off the shelf; with the last one the shelf goes. */
export function offShelf({ shelf = [] }: Plan, index: number): PlanChange {
  const what = `${shelfName(shelf[index]!.pipe)} off the shelf`;
  return setAt(shelf.length === 1 ? ["shelf"] : ["shelf", index], what)(undefined);
}

const PRICES = {
  stand: "10 cm of stand more",
  drinker: "One drinker",
  regulator: "Low-pressure regulator",
  headerTank: "Header tank with its float valve",
  joint: "Tee, with what joins it",
  bleed: "Bleed or riser vent",
  plug: "Plug in place of a drinker",
  outlet: "Wider outlet for a vessel",
} as const satisfies Record<Exclude<keyof NonNullable<Plan["prices"]>, "parts">, string>;

/** What other things cost, and what the money is called. */
export function priceEntries({ prices, money }: Plan): readonly Entry[] {
  const priceOf = (key: keyof typeof PRICES): Entry => ({
    form: "typed",
    key: `price ${key}`,
    title: PRICES[key],
    name: `Price: ${PRICES[key]}`,
    kind: "number",
    typed: typedNumber(prices?.[key]),
    change: (value) =>
      setAt(["prices"], `price of ${PRICES[key].toLowerCase()}`)(partWith(prices, key, value)),
  });
  return [
    {
      form: "typed",
      key: "price money",
      title: "Name of the money",
      name: "Name of the money",
      kind: "name",
      typed: money,
      change: setAt(["money"], "name of the money"),
    },
    ...(Object.keys(PRICES) as (keyof typeof PRICES)[]).map(priceOf),
  ];
}
