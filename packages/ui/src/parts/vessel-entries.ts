import { allVessels, findVessel, kindFound, type PlanSource } from "@headfall/hydraulics";
import type { ChoiceEntry, Entry } from "../fields/entry.js";
import { optionsOf } from "../fields/options-of.js";
import { TEXT_KINDS } from "../fields/text-kinds.js";
import { readMetres } from "../kernels/typed-metres.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { setAt } from "../store/set-at.js";
import type { PlanContext } from "./plan-context.js";

type PlanVessel = PlanSource["vessel"];
type OwnShape = Exclude<PlanVessel, string>;

const SHAPES: readonly { shape: OwnShape["shape"]; words: string }[] = [
  { shape: "upright", words: "Own size: upright barrel" },
  { shape: "lying", words: "Own size: barrel on its side" },
  { shape: "tapered", words: "Own size: bucket or tub" },
  { shape: "box", words: "Own size: box or trough" },
  { shape: "table", words: "Own shape: levels and volumes as measured" },
];

const DIMENSIONS: Readonly<Record<string, string>> = {
  diameter: "Diameter inside",
  bottomDiameter: "Diameter at the bottom",
  topDiameter: "Diameter at the brim",
  length: "Length inside",
  width: "Width inside",
  height: "Height inside",
};

/** The choice of vessel: those of the table, and shapes of one's own. */
export function vesselChoice(context: PlanContext, index: number, name: string): ChoiceEntry {
  const { vessel } = context.plan.sources[index]!;
  const set = setAt(["sources", index, "vessel"], `vessel of ${name}`);
  const known = typeof vessel === "string" ? kindOf(vessel) : undefined;
  const value = typeof vessel === "string" ? (known?.id ?? vessel) : `own ${vessel.shape}`;
  const stray = typeof vessel === "string" && known === undefined ? [{ value, words: vessel }] : [];
  const own = SHAPES.map(({ shape, words }) => ({ value: `own ${shape}`, words }));
  return {
    key: `${name} vessel`,
    title: "Vessel",
    name: `Vessel of ${name}`,
    value,
    words: known?.name ?? own.find((option) => option.value === value)?.words ?? value,
    isLong: true,
    groups: () => [
      { options: stray },
      { label: "Known", options: optionsOf(allVessels) },
      { label: "Measured", options: own },
    ],
    change: (chosen) =>
      set(chosen.startsWith("own ") ? ownShape(chosen.slice(4), vessel, context.system) : chosen),
  };
}

const kindOf = (words: string) => kindFound(findVessel(words));

/** Inside dimensions of a vessel with a shape of its own. */
export function dimensionEntries({ plan }: PlanContext, index: number, name: string): Entry[] {
  const { vessel } = plan.sources[index]!;
  if (typeof vessel === "string" || vessel.shape === "table") return [];
  return Object.entries(vessel).flatMap(([key, typed]): Entry[] => {
    const title = DIMENSIONS[key];
    if (title === undefined) return [];
    return [
      {
        form: "typed",
        key: `${name} vessel ${key}`,
        title,
        name: `${title} of ${name}`,
        kind: "length",
        typed,
        isNeeded: true,
        change: setAt(["sources", index, "vessel", key], `${title.toLowerCase()} of ${name}`),
      },
    ];
  });
}

/** A shape of one's own that is about as large as the vessel there was. */
function ownShape(shape: string, before: PlanVessel, system: UnitSystem): OwnShape {
  const { across, tall, volume } = sizeOf(before);
  const typed = (length: number) => TEXT_KINDS.length.write(length, system);
  switch (shape) {
    case "lying":
      return { shape, diameter: typed(across), length: typed(tall) };
    case "tapered":
      return { shape, bottomDiameter: typed(across * 0.9), topDiameter: typed(across), height: typed(tall) };
    case "box":
      return { shape, length: typed(across), width: typed(across), height: typed(tall) };
    case "table":
      return {
        shape,
        readings: [
          { level: typed(0), volume: TEXT_KINDS.volume.write(0, system) },
          { level: typed(tall), volume: TEXT_KINDS.volume.write(volume, system) },
        ],
      };
    default:
      return { shape: "upright", diameter: typed(across), height: typed(tall) };
  }
}

function sizeOf(vessel: PlanVessel): { across: number; tall: number; volume: number } {
  const shape: Readonly<Record<string, unknown>> =
    (typeof vessel === "string" ? kindOf(vessel)?.shape : vessel) ?? {};
  const metres = (...keys: string[]) => {
    for (const key of keys) {
      const found = typeof shape[key] === "number" ? shape[key] : readMetres(shape[key]);
      if (found !== undefined && found > 0) return found;
    }
    return undefined;
  };
  const across = metres("diameter", "topDiameter", "width", "length") ?? 0.5;
  const tall = metres("height", "length") ?? 0.5;
  return { across, tall, volume: (Math.PI / 4) * across * across * tall };
}
