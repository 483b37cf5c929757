import type {
  Away,
  Carrying,
  DayResult,
  DaysSummary,
  Lasting,
  Mark,
  Plan,
  Problem,
  RainReading,
  RainReadingOptions,
  RainRecord,
  RainSupply,
  WeeksJudging,
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
    };

export type WeeksAnswer = Extract<WeeksJudging, { ok: true }>;

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
}
export type RoomAnswer<Kind extends RoomQuestion["kind"]> =
  | { readonly ok: true; readonly answer: RoomAnswers[Kind] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export interface RoomRequest {
  readonly turn: number;
  readonly question: RoomQuestion;
}

export type RoomMessage =
  | { readonly turn: number; readonly share: number }
  | { readonly turn: number; readonly answered: RoomAnswer<RoomQuestion["kind"]> };
