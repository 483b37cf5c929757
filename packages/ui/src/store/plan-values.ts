type Step = string | number;

/** Where a value stands in the plan: keys of objects and positions of lists, from the plan inwards. */
export type Path = readonly Step[];

/** What stands under a key of an object or at a position of a list; only what is its own, never what it inherits. */
export function valueIn(whole: unknown, step: Step): unknown {
  if (typeof whole !== "object" || whole === null || !Object.hasOwn(whole, step)) return undefined;
  return (whole as Record<Step, unknown>)[step];
}

/** The keys and values of a plain object, without those that hold nothing; undefined for anything else. */
export function listedEntries(whole: unknown): [string, unknown][] | undefined {
  if (typeof whole !== "object" || whole === null || Array.isArray(whole)) return undefined;
  return Object.entries(whole).filter(([, value]) => value !== undefined);
}

/** Whether two values say the same; the order of keys says nothing. */
export function isSameValue(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (Array.isArray(one) && Array.isArray(other))
    return one.length === other.length && one.every((each, index) => isSameValue(each, other[index]));
  const [here, there] = [listedEntries(one), listedEntries(other)];
  if (here === undefined || there === undefined || here.length !== there.length) return false;
  return here.every(([key, value]) => isSameValue(value, valueIn(other, key)));
}

/** A part of the plan with one key changed; undefined where nothing is left of it. */
export function partWith(part: object | undefined, key: string, value: unknown): object | undefined {
  const told = listedEntries({ ...part, [key]: value }) ?? [];
  return told.length === 0 ? undefined : Object.fromEntries(told);
}

/** A copy with one place changed, or emptied when the value is undefined; everything off the way there is shared. */
export function withValue(whole: unknown, [step, ...rest]: Path, value: unknown): unknown {
  if (step === undefined) return value;
  const inside = withValue(valueIn(whole, step), rest, value);
  if (Array.isArray(whole)) return withItem(whole, step, inside);
  const entry = (typeof whole === "object" && whole !== null ? whole : {}) as Record<string, unknown>;
  if (inside === undefined) return Object.fromEntries(Object.entries(entry).filter(([key]) => key !== step));
  return { ...entry, [step]: inside };
}

/** A list with one item anew; one past its end is added, and one that becomes nothing is taken out. */
function withItem(list: readonly unknown[], step: Step, item: unknown): unknown[] {
  if (item === undefined) return list.filter((_, index) => index !== step);
  if (step === list.length) return [...list, item];
  return list.map((each, index) => (index === step ? item : each));
}
