import { allRoofs, DEFAULTS, findRoof, type Plan, type PlanRoof, type RoofKind } from "@headfall/hydraulics";
import type { Entry } from "../fields/entry.js";
import type { FieldKind } from "../fields/text-kinds.js";
import type { PlanChange } from "../store/plan-change.js";

/** What is taken of a roof whose kind is not said. */
const ANY = { runoff: "80 %", wetting: "0.5 mm" } as const;

export const ROOF_CHOICES: readonly { readonly value: string; readonly words: string }[] = [
  { value: "", words: "Not said" },
  ...allRoofs.map(({ id, name }) => ({ value: id, words: name })),
];

const percent = (share: number): string => `${Number((share * 100).toPrecision(3))} %`;
const millimetres = (metres: number): string => `${Number((metres * 1000).toPrecision(3))} mm`;

function roofKindOf({ kind }: Pick<PlanRoof, "kind">): RoofKind | undefined {
  if (kind === undefined) return undefined;
  const found = findRoof(kind);
  return found.outcome === "found" ? found.kind : undefined;
}

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
  const path = (key: string) => ["sources", source, "roof", key];
  const typed = (
    key: "area" | "runoff" | "wetting" | "firstFlush" | "overflow",
    title: string,
    fieldKind: FieldKind,
    standIn: string | undefined,
    note?: string,
  ): Entry => ({
    form: "typed",
    key: `roof ${source} ${key}`,
    title,
    name: `${title} of the roof over ${name}`,
    kind: fieldKind,
    typed: roof[key],
    standIn,
    isNeeded: key === "area",
    note,
    change: (value) => ({ kind: "set", path: path(key), value, what: `${title.toLowerCase()}, ${name}` }),
  });
  return [
    typed("area", "Area", "area", undefined, "Seen from above, not along the slope."),
    {
      form: "choice",
      key: `roof ${source} kind`,
      title: "Surface",
      name: `Surface of the roof over ${name}`,
      value: kind?.id ?? "",
      words: kind?.name ?? "Not said",
      isLong: true,
      note: aboutRoof(kind),
      groups: () => [{ options: ROOF_CHOICES }],
      change: (value): PlanChange => ({
        kind: "set",
        path: path("kind"),
        value: value === "" ? undefined : value,
        what: `surface of the roof, ${name}`,
      }),
    },
    typed(
      "firstFlush",
      "First flush",
      "volume",
      DEFAULTS.firstFlush.typed,
      "What a diverter keeps of each wet spell.",
    ),
    typed("overflow", "Overflow pipe, inside", "bore", DEFAULTS.overflow.typed),
    typed("runoff", "Share that runs off", "share", kind === undefined ? ANY.runoff : percent(kind.runoff)),
    typed(
      "wetting",
      "Only wets it, a day",
      "bore",
      kind === undefined ? ANY.wetting : millimetres(kind.wetting),
    ),
  ];
}

/** Puts a roof over a source, or takes it away. */
export const roofChange = (source: number, name: string, roof: PlanRoof | undefined): PlanChange => ({
  kind: "set",
  path: ["sources", source, "roof"],
  value: roof,
  what: `${roof === undefined ? "no roof" : "roof"} over ${name}`,
});
