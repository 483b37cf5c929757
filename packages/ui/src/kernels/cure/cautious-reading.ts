import { type DrinkerReading, type FrictionLaw, LAW_WORDS } from "@headfall/hydraulics";

export interface CautiousReading {
  /** [m] */
  readonly head: number;
  /** [m³/s] */
  readonly flow: number;
}

const LAWS = Object.keys(LAW_WORDS) as FrictionLaw[];

/** Head and flow of a drinker at one moment by the friction law that leaves it less head. */
export function readingOf(readings: Readonly<Record<FrictionLaw, DrinkerReading>>): CautiousReading {
  const [least] = LAWS.map((law) => readings[law]).sort((a, b) => a.flowingHead - b.flowingHead);
  return { head: least!.flowingHead, flow: least!.flow };
}
