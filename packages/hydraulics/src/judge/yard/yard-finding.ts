/** What is amiss with a pen's loose waterers: codes with numbers; sentences are written in report/. */
export type YardFinding =
  | {
      readonly code: "drains";
      readonly waterer: string;
      readonly slope: number;
      readonly drainsAt: number;
      /** A way to turn the hole in which it would hold; undefined where none does, or it has none. */
      readonly turn: "sideways" | "downhill" | undefined;
      readonly shimLevel: number;
      readonly shimEnough: number;
    }
  | {
      readonly code: "nearlyDrains";
      readonly waterer: string;
      readonly slope: number;
      readonly drainsAt: number;
      readonly shimEnough: number;
    }
  | {
      readonly code: "holdsLess";
      readonly waterer: string;
      readonly share: number;
      readonly across: number | undefined;
      readonly shimLevel: number;
    }
  | { readonly code: "dryUphill"; readonly waterer: string; readonly wetShare: number }
  | { readonly code: "noWater"; readonly pen: string; readonly birds: number }
  | {
      readonly code: "tooFewPlaces";
      readonly pen: string;
      readonly covered: number;
      readonly byLine: number;
    }
  | { readonly code: "noRule"; readonly pen: string }
  | {
      readonly code: "emptyBetween";
      readonly waterer: string;
      readonly every: number;
      readonly lasts: number;
      readonly hotLasts: number;
    }
  | {
      readonly code: "oftenEmpty";
      readonly waterer: string;
      readonly refills: number;
      readonly hotRefills: number;
    }
  | {
      readonly code: "tooYoung";
      readonly waterer: string;
      readonly kindName: string;
      readonly ageDays: number;
      readonly fromDays: number;
      readonly othersSuit: boolean;
    }
  | {
      readonly code: "tooOld";
      readonly waterer: string;
      readonly kindName: string;
      readonly ageDays: number;
      readonly toDays: number;
      readonly othersSuit: boolean;
    }
  | {
      readonly code: "notForThem";
      readonly waterer: string;
      readonly kindName: string;
      readonly othersSuit: boolean;
    }
  | {
      readonly code: "mayDrown";
      readonly waterer: string;
      readonly kindName: string;
      readonly ageDays: number;
      readonly untilDays: number;
      readonly depth: number;
    }
  | {
      readonly code: "hangsHigh" | "hangsLow" | "standsHigh" | "standsLow";
      readonly waterer: string;
      readonly height: number;
      readonly low: number;
      readonly best: number;
      readonly high: number;
    }
  | {
      readonly code: "warmthSpills";
      readonly waterer: string;
      readonly lost: number;
      readonly pushed: number;
    }
  | {
      readonly code: "tooHeavy";
      readonly waterer: string;
      readonly mass: number;
      readonly most: number;
    };

/** Findings with which birds go without water, or soon will. */
export const GRAVE: ReadonlySet<YardFinding["code"]> = new Set([
  "drains",
  "noWater",
  "tooFewPlaces",
  "emptyBetween",
  "mayDrown",
]);

/**
 * Whether a finding means that birds go without: grave ones, and one that does not suit where no other does.
 *
 * @example isGrave({ code: "noWater", pen: "hens", birds: 12 })   // true
 */
export function isGrave(finding: YardFinding): boolean {
  return GRAVE.has(finding.code) || ("othersSuit" in finding && !finding.othersSuit);
}
