import fc from "fast-check";
import { type Random, randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { type PlanData, randomPlan } from "./plans.js";

/** What stands where something else should. */
const STRANGE: readonly unknown[] = [
  null,
  true,
  "",
  0,
  -1,
  1e308,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  "NaN",
  "Infinity m",
  "-Infinity",
  "1e999 m",
  "12 furlongs",
  "3 m 4 L",
  "-5 cm",
  "50 %",
  "101 %",
  "2026-02-30",
  "2026-07-05",
  "24:00",
  "900 years",
  "-3 weeks",
  "no such bird",
  "\u0000",
  "\ud800",
  "=1+1",
  "<img src=x onerror=alert(1)>",
  "x".repeat(5000),
  [],
  {},
  [[]],
  { length: "3 m" },
  { shape: "lying" },
  { __proto__: null, toString: "no" },
];

const STRANGE_KEYS = [
  "constructor",
  "prototype",
  "toString",
  "hasOwnProperty",
  "Fall",
  "length ",
  "",
  "🐔",
  "0",
];

type Container = Record<string, unknown> | unknown[];

/** A plan that was valid before one to three things in it were taken out, made strange, renamed, doubled or swapped. */
export function mutatedPlan(seed: number): unknown {
  const random = randomFrom(seed);
  return mutatedFrom(randomPlan(random.integerBelow(100_000)), random);
}

/** The same of a plan that is given, which stays as it is. */
export function mutatedFrom(plan: PlanData, random: Random): unknown {
  const mutated = structuredClone(plan);
  const times = 1 + random.integerBelow(3);
  for (let k = 0; k < times; k += 1) mutate(mutated, random);
  return mutated;
}

export const mutatedPlans = () => fc.integer({ min: 0, max: 0x7fffffff }).map((seed) => mutatedPlan(seed));

function mutate(plan: PlanData, random: Random): void {
  const places = containersIn(plan);
  const holder = places[random.integerBelow(places.length)] as Container;
  const keys = Object.keys(holder);
  const key = keys[random.integerBelow(Math.max(1, keys.length))] ?? "nothing";
  const set = (at: string, value: unknown) => Object.assign(holder, { [at]: value });
  const read = (at: string) => (holder as Record<string, unknown>)[at];
  const changes: readonly (() => void)[] = [
    () => take(holder, key),
    () => set(key, structuredClone(STRANGE[random.integerBelow(STRANGE.length)])),
    () => {
      const value = read(key);
      take(holder, key);
      // A list renamed would be no list any more, which no JSON text can give.
      if (Array.isArray(holder)) holder.unshift(value);
      else set(STRANGE_KEYS[random.integerBelow(STRANGE_KEYS.length)] ?? "", value);
    },
    () => {
      const other = keys[random.integerBelow(Math.max(1, keys.length))] ?? key;
      const [a, b] = [read(key), read(other)];
      set(key, b);
      set(other, a);
    },
    () => set(key, structuredClone(places[random.integerBelow(places.length)])),
    () => {
      if (Array.isArray(holder)) holder.push(structuredClone(holder[0]));
      else set(`${key}s`, read(key));
    },
  ];
  changes[random.integerBelow(changes.length)]?.();
}

function take(holder: Container, key: string): void {
  if (Array.isArray(holder)) holder.splice(Number(key), 1);
  else delete holder[key];
}

function containersIn(value: unknown): Container[] {
  if (typeof value !== "object" || value === null) return [];
  return [value as Container, ...Object.values(value).flatMap(containersIn)];
}
