import { DEFAULTS } from "@headfall/hydraulics";
import type { Entry, TypedEntry } from "../fields/entry.js";
import { TEXT_KINDS } from "../fields/text-kinds.js";
import type { LevelName } from "../store/plan-change.js";
import type { Path } from "../store/plan-values.js";
import { setAt } from "../store/set-at.js";
import { type PlanContext, sourceNames, workedOutSource } from "./plan-context.js";

const LEVEL_TITLES: Readonly<Record<LevelName, string>> = {
  full: "Water level when full",
  lowest: "Lowest usable water level",
  ordinary: "Water level in an ordinary hour",
};

type LengthName = "stand" | LevelName | "outlet" | "ground";
type Told = Pick<TypedEntry, "title" | "typed" | "standIn" | "note">;

/** The lengths of a source: stand, levels, outlet, ground. */
export function sourceLengths(context: PlanContext, index: number): Record<LengthName, TypedEntry> {
  const source = context.plan.sources[index]!;
  const name = sourceNames(context.plan)[index]!;
  const worked = workedOutSource(context, index);
  const length = (key: LengthName, told: Told) => lengthEntry(["sources", index, key], name, told);
  const written = (metres: number | undefined) =>
    metres === undefined ? undefined : TEXT_KINDS.length.write(metres, context.system);
  const level = (key: LevelName) =>
    lengthEntry(["sources", index, "level", key], name, {
      title: LEVEL_TITLES[key],
      typed: source.level?.[key],
      standIn: written(worked?.levels[key]),
      note: "Above its inside bottom.",
    });
  return {
    stand: length("stand", {
      title: "Stand",
      typed: source.stand,
      standIn: DEFAULTS.stand.typed,
      note: `From the ground to the foot of the ${name}.`,
    }),
    full: level("full"),
    lowest: level("lowest"),
    ordinary: level("ordinary"),
    outlet: length("outlet", {
      title: "Outlet",
      typed: source.outlet,
      standIn: written(worked?.outlet) ?? DEFAULTS.outlet.typed,
      note: "Its middle, above the inside bottom.",
    }),
    ground: length("ground", {
      title: "Ground",
      typed: source.ground,
      standIn: DEFAULTS.ground.typed,
      note: "Height of the ground it stands on.",
    }),
  };
}

const lengthEntry = (path: Path, name: string, told: Told): TypedEntry => ({
  key: `${name} ${path.slice(2).join(".")}`,
  name: `${told.title} of ${name}`,
  kind: "length",
  change: setAt(path, `${told.title.toLowerCase()} of ${name}`),
  ...told,
});

/** How wide the way out of a vessel is at its narrowest. */
export function outletBoreEntry({ plan }: PlanContext, index: number): Entry {
  const name = sourceNames(plan)[index]!;
  return {
    form: "typed",
    key: `${name} outletBore`,
    title: "Bore of the outlet",
    name: `Bore of the outlet of ${name}`,
    kind: "bore",
    typed: plan.sources[index]!.outletBore,
    standIn: "as its pipe",
    note: "The narrowest of bulkhead, tap and strainer.",
    change: setAt(["sources", index, "outletBore"], `outlet of ${name}`),
  };
}
