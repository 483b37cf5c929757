/** How air gets into a source, and what fills it. */
import { allFittings, findFitting, kindFound, type Plan } from "@headfall/hydraulics";
import type { ChoiceEntry, Entry } from "../fields/entry.js";
import { optionsOf } from "../fields/options-of.js";
import { TEXT_KINDS } from "../fields/text-kinds.js";
import type { Path } from "../store/plan-values.js";
import { setAt } from "../store/set-at.js";
import { layoutOf, type PlanContext, sourceNames } from "./plan-context.js";

const VENTS = [
  { value: "open", words: "Open to the air" },
  { value: "sealed", words: "Sealed" },
  { value: "opening", words: "Through an opening" },
  { value: "airTube", words: "Through an air tube" },
] as const;

/** How air gets in, with the sizes that belong to it. */
export function ventEntries({ plan, system }: PlanContext, index: number): [Entry, ...Entry[]] {
  const { vent } = plan.sources[index]!;
  const name = sourceNames(plan)[index]!;
  const path = ["sources", index, "vent"] as const;
  const value = ventName(vent);
  const choice: Entry = {
    form: "choice",
    key: `${name} vent`,
    title: "How air gets in",
    name: `How air gets into ${name}`,
    value,
    words: VENTS.find((each) => each.value === value)!.words,
    groups: () => [{ options: VENTS }],
    change: (chosen) => setAt(path, `vent of ${name}`)(ventOf(chosen, system)),
  };
  if (typeof vent !== "object") return [choice];
  const size = (key: "opening" | "airTube", title: string, isNeeded: boolean): Entry => ({
    form: "typed",
    key: `${name} vent ${key}`,
    title,
    name: `${title} of ${name}`,
    kind: key === "airTube" ? "length" : "bore",
    typed: (vent as Partial<Record<"opening" | "airTube", string>>)[key],
    isNeeded,
    change: setAt([...path, key], `vent of ${name}`),
  });
  return "airTube" in vent
    ? [
        choice,
        size("airTube", "Foot of the air tube above the inside bottom", true),
        size("opening", "Bore of the air tube", false),
      ]
    : [choice, size("opening", "Diameter of the opening", true)];
}

function ventName(vent: Plan["sources"][number]["vent"]): (typeof VENTS)[number]["value"] {
  if (vent === undefined) return "open";
  if (typeof vent === "string") return vent;
  return "airTube" in vent ? "airTube" : "opening";
}

function ventOf(chosen: string, system: PlanContext["system"]) {
  if (chosen === "opening") return { opening: TEXT_KINDS.bore.write(0.003, system) };
  if (chosen === "airTube") return { airTube: TEXT_KINDS.length.write(0.05, system) };
  return chosen;
}

/** What fills a header tank. */
export function feedEntries({ plan }: PlanContext, index: number): Entry[] {
  const { feed } = plan.sources[index]!;
  const name = sourceNames(plan)[index]!;
  const path = ["sources", index, "feed"] as const;
  const from: Entry = { form: "choice", ...feedFrom(plan, name, path, feed) };
  if (feed === undefined) return [from];
  return [
    from,
    { form: "choice", ...floatValve(name, path, feed.valve) },
    {
      form: "typed",
      key: `${name} feed opening`,
      title: "Seat of the float valve",
      name: `Seat of the float valve of ${name}`,
      kind: "bore",
      typed: feed.opening,
      note: "Diameter of the opening that the float shuts.",
      change: setAt([...path, "opening"], `float valve of ${name}`),
    },
  ];
}

type Feed = Plan["sources"][number]["feed"];

function feedFrom(plan: Plan, name: string, path: Path, feed: Feed): ChoiceEntry {
  const joints = () =>
    layoutOf(plan)
      .joints.filter((joint) => joint.name !== name)
      .map((joint) => ({ value: `at ${joint.name}`, words: joint.name }));
  return {
    key: `${name} feed`,
    title: "Filled from",
    name: `What fills ${name}`,
    value: feed === undefined ? "" : `at ${feed.from}`,
    words: feed?.from ?? "Filled by hand or rain",
    isLazy: true,
    note: "For a header tank: the point of the line that fills it through a float valve.",
    groups: () => [{ options: [{ value: "", words: "Filled by hand or rain" }, ...joints()] }],
    change: (chosen) =>
      setAt(path, `feed of ${name}`)(chosen === "" ? undefined : { ...feed, from: chosen.slice(3) }),
  };
}

function floatValve(name: string, path: Path, valve: string | undefined): ChoiceEntry {
  const kind = kindFound(valve === undefined ? undefined : findFitting(valve));
  return {
    key: `${name} feed valve`,
    title: "Float valve",
    name: `Float valve of ${name}`,
    value: kind?.id ?? valve ?? "",
    words: kind?.name ?? valve ?? "Not said",
    groups: () => [
      {
        options: [{ value: "", words: "Not said" }, ...optionsOf(allFittings)],
      },
    ],
    change: (chosen) =>
      setAt([...path, "valve"], `float valve of ${name}`)(chosen === "" ? undefined : chosen),
  };
}
