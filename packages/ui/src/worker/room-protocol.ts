import type {
  AirReading,
  AirReadingOptions,
  AirRecord,
  Away,
  BirdsWeek,
  BuildSheet,
  Carrying,
  CureAnswer,
  CureOptions,
  DayResult,
  DaysSummary,
  FrontAnswer,
  Frost,
  FrostOfRecord,
  Heat,
  HeatOfRecord,
  Lasting,
  Mark,
  Measuring,
  Mishaps,
  Plan,
  Problem,
  RainReading,
  RainReadingOptions,
  RainRecord,
  RainSupply,
  Sign,
  Trouble,
  Variant,
  WeeksJudging,
  YardOfPlan,
  YearOfPlan,
} from "@headfall/hydraulics";

/** What a room asks of its worker about a plan: things that take longer than a frame. */
export type RoomQuestion =
  | {
      readonly kind: "weeks";
      readonly plan: Plan;
      readonly day: string | undefined;
      /** Weeks to look ahead. */
      readonly weeks: number;
    }
  | {
      readonly kind: "time";
      readonly plan: Plan;
      readonly day: string | undefined;
      readonly daysAway: number;
      readonly source: number;
    }
  | {
      readonly kind: "day";
      readonly plan: Plan;
      readonly day: string | undefined;
      readonly seed: number;
      readonly hot: boolean;
      readonly figure: "expect" | "size";
    }
  | {
      readonly kind: "days";
      readonly plan: Plan;
      readonly day: string | undefined;
      readonly count: number;
      readonly hot: boolean;
      readonly figure: "expect" | "size";
    }
  | {
      readonly kind: "record";
      /** Of the file. */
      readonly text: string;
      /** Answers to what was asked of it before. */
      readonly options: RainReadingOptions;
    }
  | {
      readonly kind: "rain";
      readonly plan: Plan;
      readonly day: string | undefined;
      readonly record: RainRecord;
      readonly source: number;
      readonly figure: "expect" | "size";
    }
  | { readonly kind: "cure"; readonly plan: Plan; readonly options: CureWanted }
  | { readonly kind: "front"; readonly plan: Plan; readonly options: CureWanted }
  | {
      readonly kind: "compare";
      /** The first is the one the others differ from. */
      readonly plans: readonly Plan[];
      readonly day: string | undefined;
    }
  | { readonly kind: "measure"; readonly plan: Plan; readonly day: string | undefined }
  | { readonly kind: "weather"; readonly plan: Plan; readonly day: string | undefined }
  | { readonly kind: "airRecord"; readonly text: string; readonly options: AirReadingOptions }
  | {
      readonly kind: "weatherRecord";
      readonly plan: Plan;
      readonly day: string | undefined;
      readonly record: AirRecord;
    }
  | { readonly kind: "build"; readonly plan: Plan; readonly day: string | undefined }
  | { readonly kind: "mishaps"; readonly plan: Plan; readonly day: string | undefined }
  | {
      readonly kind: "year";
      readonly plan: Plan;
      readonly day: string | undefined;
      /** Weeks to look ahead. */
      readonly weeks: number;
    }
  | {
      readonly kind: "yard";
      readonly plan: Plan;
      readonly day: string | undefined;
      /** Weeks to look ahead. */
      readonly weeks: number;
    }
  | {
      readonly kind: "trouble";
      readonly plan: Plan;
      readonly day: string | undefined;
      /** What the keeper sees. */
      readonly signs: readonly Sign[];
      /** How long ago the sources were last seen with water in them [s]. */
      readonly lastSeen: number;
      /** Where the water stands in each source above its inside bottom [m]; as the plan has it where left out. */
      readonly levels: readonly (number | undefined)[];
    };

/** What a search for cures is told; it is ended by ending the worker. */
export type CureWanted = Omit<CureOptions, "progress" | "isStopped">;

export interface WeeksAnswer extends Extract<WeeksJudging, { ok: true }> {
  /** What all birds drink in each week, where some drink from loose waterers and so count for nothing at the line. */
  readonly everyBird?: readonly BirdsWeek[] | undefined;
}

export interface TimeAnswer {
  readonly lasting: Lasting;
  readonly away: Away;
  readonly mark: Mark;
  readonly carrying: Carrying;
}

/** Answers by kind of question; a plan that does not fit gives its problems instead. */
export interface RoomAnswers {
  readonly weeks: WeeksAnswer;
  readonly time: TimeAnswer;
  readonly day: DayResult;
  readonly days: DaysSummary;
  readonly record: RainReading;
  readonly rain: RainSupply;
  readonly cure: CureAnswer;
  /** What more margin costs, and what a higher stand saves. */
  readonly front: FrontAnswer;
  readonly compare: readonly Variant[];
  readonly measure: Measuring;
  readonly weather: { readonly frost: Frost; readonly heat: Heat };
  readonly airRecord: AirReading;
  readonly weatherRecord: { readonly frost: FrostOfRecord; readonly heat: HeatOfRecord };
  readonly build: BuildSheet;
  readonly mishaps: Mishaps;
  readonly year: YearOfPlan;
  readonly yard: YardOfPlan;
  readonly trouble: Trouble;
}
export type RoomAnswer<Kind extends RoomQuestion["kind"]> =
  | { readonly ok: true; readonly answer: RoomAnswers[Kind] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export interface RoomRequest {
  readonly turn: number;
  readonly question: RoomQuestion;
}

export type RoomMessage =
  /** The words say what is being done where that takes several things. */
  | { readonly turn: number; readonly share: number; readonly words?: string | undefined }
  | { readonly turn: number; readonly answered: RoomAnswer<RoomQuestion["kind"]> };
