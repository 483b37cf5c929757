import {
  allRoofs,
  DEFAULTS,
  findRoof,
  kindFound,
  type Plan,
  type PlanRoof,
  type RoofKind,
} from "@headfall/hydraulics";
import type { Entry, TypedEntry } from "../fields/entry.js";
import { optionsOf } from "../fields/options-of.js";
import { upperFirst } from "../kernels/upper-first.js";
import type { PlanChange } from "../store/plan-change.js";
import { setAt } from "../store/set-at.js";

/** What is taken of a roof whose kind is not said. */
const ANY = { runoff: "80 %", wetting: "0.5 mm" } as const;

export const ROOF_CHOICES: readonly { readonly value: string; readonly words: string }[] = [
  { value: "", words: "Not said" },
  ...optionsOf(allRoofs).map(({ value, words }) => ({ value, words: upperFirst(words) })),
];

const percent = (share: number): string => `${Number((share * 100).toPrecision(3))} %`;
const millimetres = (metres: number): string => `${Number((metres * 1000).toPrecision(3))} mm`;

const roofKindOf = ({ kind }: Pick<PlanRoof, "kind">): RoofKind | undefined =>
  kindFound(kind === undefined ? undefined : findRoof(kind));

/** How much of the rain a kind of roof sheds, and who says so. */
function aboutRoof(kind: RoofKind | undefined): string {
  if (kind === undefined)
    return `Taken for granted: ${ANY.runoff} runs off, ${ANY.wetting} of a wet day only wets it.`;
  const { runoff, runoffLow, runoffHigh, wetting, citation } = kind;
  const range = runoffLow === runoffHigh ? "" : ` (${percent(runoffLow)} to ${percent(runoffHigh)})`;
  const memory = citation.seen === "seen" ? "" : ", from memory";
  return `${percent(runoff)} runs off${range}, ${millimetres(wetting)} of a wet day only wets it [${citation.source}${memory}].`;
}

/** The fields of a roof that a plan has. */
export function roofEntries(plan: Plan, source: number, name: string): readonly Entry[] {
  const roof = plan.sources[source]!.roof!;
  const kind = roofKindOf(roof);
  const place = { source, name, roof };
  const { runoff, wetting } =
    kind === undefined ? ANY : { runoff: percent(kind.runoff), wetting: millimetres(kind.wetting) };
  return [
    typedEntry(place, {
      key: "area",
      title: "Area",
      kind: "area",
      isNeeded: true,
      note: "Seen from above, not along the slope.",
    }),
    surfaceEntry(place, kind),
    typedEntry(place, {
      key: "firstFlush",
      title: "First flush",
      kind: "volume",
      standIn: DEFAULTS.firstFlush.typed,
      note: "What a diverter keeps of each wet spell.",
    }),
    typedEntry(place, {
      key: "overflow",
      title: "Overflow pipe, inside",
      kind: "bore",
      standIn: DEFAULTS.overflow.typed,
    }),
    typedEntry(place, { key: "runoff", title: "Share that runs off", kind: "share", standIn: runoff }),
    typedEntry(place, { key: "wetting", title: "Only wets it, a day", kind: "bore", standIn: wetting }),
  ];
}

interface RoofPlace {
  readonly source: number;
  /** Of the source under it. */
  readonly name: string;
  readonly roof: PlanRoof;
}

type Told = Pick<TypedEntry, "title" | "kind" | "standIn" | "isNeeded" | "note"> & {
  readonly key: "area" | "runoff" | "wetting" | "firstFlush" | "overflow";
};

const typedEntry = ({ source, name, roof }: RoofPlace, told: Told): Entry => ({
  ...told,
  form: "typed",
  key: `roof ${source} ${told.key}`,
  name: `${told.title} of the roof over ${name}`,
  typed: roof[told.key],
  change: setAt(["sources", source, "roof", told.key], `${told.title.toLowerCase()}, ${name}`),
});

function surfaceEntry({ source, name }: RoofPlace, kind: RoofKind | undefined): Entry {
  const write = setAt(["sources", source, "roof", "kind"], `surface of the roof, ${name}`);
  return {
    form: "choice",
    key: `roof ${source} kind`,
    title: "Surface",
    name: `Surface of the roof over ${name}`,
    value: kind?.id ?? "",
    words: kind?.name ?? "Not said",
    isLong: true,
    note: aboutRoof(kind),
    groups: () => [{ options: ROOF_CHOICES }],
    change: (value) => write(value === "" ? undefined : value),
  };
}

/** Puts a roof over a source, or takes it away. */
export const roofChange = (source: number, name: string, roof: PlanRoof | undefined): PlanChange =>
  setAt(["sources", source, "roof"], `${roof === undefined ? "no roof" : "roof"} over ${name}`)(roof);
