import { type Plan, runNames, sourceNames } from "@headfall/hydraulics";

/** The lists of a plan whose parts have names. */
const NAMED = new Map<string, (plan: Plan, index: number) => string>([
  ["runs", (plan, index) => startingWith("run", runNames(plan)[index] ?? `${index + 1}`)],
  ["sources", (plan, index) => startingWith("source", sourceNames(plan)[index] ?? `${index + 1}`)],
  ["points", (plan, index) => startingWith("joint", plan.points?.[index]?.id ?? `${index + 1}`)],
]);
/** What one of a list is called where it has only its number. */
const COUNTED = new Map([
  ["drinkers", "drinkers, group"],
  ["survey", "surveyed height"],
  ["corners", "corner"],
  ["fittings", "fitting"],
]);

/**
 * Where in a plan something is, in the names its owner knows: `runs[0].drinkers[1].first` is "run feed, drinkers,
 * group 2, first". What is no such path, as "the plan", stays as it is.
 */
export function namePath(path: string, plan: Plan): string {
  if (!/^\w+(\.\w+|\[\d+\])*$/.test(path)) return path;
  const steps = path.match(/\w+/g) ?? [];
  const isIndex = (step: string | undefined) => step !== undefined && /^\d+$/.test(step);
  const words = steps.flatMap((step, at) => {
    const list = steps[at - 1];
    if (list !== undefined && isIndex(step)) return [oneOf(list, Number(step), plan)];
    const isTold = isIndex(steps[at + 1]) && (NAMED.has(step) || COUNTED.has(step));
    return isTold ? [] : [step.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)];
  });
  return words.join(", ");
}

const oneOf = (list: string, index: number, plan: Plan): string =>
  NAMED.get(list)?.(plan, index) ?? `${COUNTED.get(list) ?? "number"} ${index + 1}`;

/** A name with the word for what it is, unless the name says that already: "run feed", but "run 4". */
export const startingWith = (word: string, name: string): string =>
  name.toLowerCase().startsWith(word) ? name : `${word} ${name}`;
