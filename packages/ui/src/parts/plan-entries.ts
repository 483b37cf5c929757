import { DEFAULTS, type Plan, type PlanPoint } from "@headfall/hydraulics";
import type { Entry, TypedEntry } from "../fields/entry.js";
import type { Selected } from "../kernels/selected.js";
import { heightKeyOf } from "../store/measure-height.js";
import type { PlanChange } from "../store/plan-change.js";
import type { Path } from "../store/plan-values.js";
import { setAt } from "../store/set-at.js";
import type { PlanContext } from "./plan-context.js";

/** The name of a part, wherever the plan mentions it. */
export function nameEntry(part: Selected, name: string, what: string): TypedEntry {
  return {
    key: `name of ${what} ${name}`,
    title: "Name",
    name: `Name of ${what} ${name}`,
    kind: "name",
    typed: name,
    isNeeded: true,
    change: (value): PlanChange => ({ kind: "rename", part, name: String(value) }),
  };
}

/** What a plan says of the whole line. */
export function planEntries({ plan }: PlanContext): Entry[] {
  const { name, note, water, doubts } = plan;
  return [
    planEntry({ key: "name", title: "Name of the plan", kind: "name", at: ["name"], typed: name }),
    planEntry({ key: "note", title: "Note", kind: "note", at: ["note"], typed: note }),
    planEntry({
      key: "water",
      title: "Temperature of the water",
      kind: "temperature",
      at: ["water"],
      typed: water,
      standIn: DEFAULTS.waterTemperature.typed,
    }),
    frictionEntry(plan),
    planEntry({
      key: "heights",
      title: "Heights may be off by",
      kind: "length",
      at: ["doubts", "heights"],
      typed: doubts?.heights,
      standIn: DEFAULTS.heightDoubt.typed,
      note: "Each surveyed height, either way. It decides what is sure and what is a close call.",
    }),
    planEntry({
      key: "level",
      title: "Water levels may be off by",
      kind: "length",
      at: ["doubts", "level"],
      typed: doubts?.level,
      standIn: DEFAULTS.levelDoubt.typed,
    }),
  ];
}

type Told = Pick<TypedEntry, "key" | "title" | "kind" | "typed" | "standIn" | "note"> & { readonly at: Path };

const planEntry = ({ key, title, at, ...more }: Told): Entry => ({
  form: "typed",
  key: `plan ${key}`,
  title,
  name: title,
  change: setAt(at, title.toLowerCase()),
  ...more,
});

const LAWS = [
  { value: "hazen-williams", words: "Hazen-Williams" },
  { value: "darcy-weisbach", words: "Darcy-Weisbach" },
] as const;

function frictionEntry({ friction }: Plan): Entry {
  const value = friction ?? DEFAULTS.friction.typed;
  return {
    form: "choice",
    key: "plan friction",
    title: "Friction law shown first",
    name: "Friction law shown first",
    value,
    words: LAWS.find((law) => law.value === value)!.words,
    note: "Every verdict is taken with both.",
    groups: () => [{ options: LAWS }],
    change: setAt(["friction"], "friction law"),
  };
}

/** A joint and the point that tells of it, if there is one. */
interface JointPlace {
  readonly plan: Plan;
  readonly joint: string;
  /** Of its point in the plan; -1 where only its run names it. */
  readonly index: number;
  readonly point: PlanPoint | undefined;
}

/** The fields of a joint: heights and bleed. A joint that only its run names becomes a point of the plan by them. */
export function jointEntries(
  { plan }: PlanContext,
  joint: string,
): Record<"ground" | "above" | "bleed", Entry> {
  const index = plan.points?.findIndex(({ id }) => id === joint) ?? -1;
  const place = { plan, joint, index, point: plan.points?.[index] };
  return {
    ground: heightEntry(place, "ground", {
      title: "Height of the ground",
      note: "Above the ground at the first source; with a minus where lower.",
    }),
    above: heightEntry(place, "above", {
      title: "Pipe above that ground",
      note: "0 where the pipe lies on it.",
    }),
    bleed: bleedEntry(place),
  };
}

function heightEntry(
  place: JointPlace,
  key: "ground" | "above",
  { title, note }: Pick<TypedEntry, "title" | "note">,
): Entry {
  const { plan, joint, point } = place;
  const isStated = point?.ground !== undefined || point?.above !== undefined;
  return {
    form: "typed",
    key: `point ${joint} ${key}`,
    title,
    name: `${title} at ${joint}`,
    kind: "length",
    typed: point?.[key],
    standIn: isStated ? "0 cm" : "by runs",
    note,
    // A joint with a height of its own needs no fall to tell it.
    change: (value) => ({
      kind: "setAll",
      entries: [pointKey(place, key, value), ...(isStated ? [] : fallThatTells(plan, joint))],
      what: `${title.toLowerCase()} at ${joint}`,
    }),
  };
}

const bleedEntry = (place: JointPlace): Entry => ({
  form: "tick",
  key: `point ${place.joint} bleed`,
  title: "Air can leave here",
  name: `Air can leave at ${place.joint}`,
  value: place.point?.bleed ?? false,
  note: "A bleed screw, or an open riser.",
  change: (value) => ({
    kind: "setAll",
    entries: [pointKey(place, "bleed", value ? true : undefined)],
    what: `bleed at ${place.joint}`,
  }),
});

interface KeyEntry {
  readonly path: Path;
  readonly value: unknown;
}

/** A key of the joint's point; where it has none yet, the point is put in with it. */
const pointKey = ({ plan, joint, index }: JointPlace, key: keyof PlanPoint, value: unknown): KeyEntry =>
  index >= 0
    ? { path: ["points", index, key], value }
    : { path: ["points"], value: [...(plan.points ?? []), { id: joint, [key]: value }] };

/** The fall that tells how high a joint is, to be taken out; nothing where none is typed. */
function fallThatTells(plan: Plan, joint: string): readonly KeyEntry[] {
  const { path, typed } = heightKeyOf(plan, joint);
  return path[0] === "runs" && path[2] === "fall" && typed !== undefined ? [{ path, value: undefined }] : [];
}
