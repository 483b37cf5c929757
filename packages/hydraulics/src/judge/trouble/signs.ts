/** What can be looked at, and what it may show; the order of the answers is that of their chances. */
export const ANSWERS = {
  /** A drinker worked by hand, or with birds at it. */
  gives: ["dry", "weak", "fine"],
  /** A drinker with nobody at it, watched for a minute. */
  drips: ["drips", "holds"],
  /** A source's level from dark to light. */
  night: ["falls", "holds"],
  /** A source's level in a day, against the mark. */
  day: ["still", "less", "asMarked", "faster"],
  /** A source looked into. */
  water: ["empty", "low", "asThought"],
  /** The ground along a run, under a drinker, at a source. */
  ground: ["wet", "dry"],
  /** The far end of a run opened into a bucket. */
  end: ["nothing", "little", "plenty"],
  /** The lid of a source taken off while a drinker that gives too little is worked. */
  lid: ["helps", "noChange"],
} as const;

/** What can be looked at. */
export type Looked = keyof typeof ANSWERS;
/** What sort of place is looked at. */
export type Place = "drinker" | "run" | "source";

/** Something that can be looked at: what, and where. */
export interface Look {
  readonly look: Looked;
  readonly at: Place;
  /** Name of the drinker, run or source. */
  readonly id: string;
}

/** What the keeper sees at one place. */
export interface Sight extends Look {
  readonly sees: string;
  /** Set where its source was found empty, and this was looked at with some water poured in again. */
  readonly afterFilling?: boolean;
}

/** What a jug and a watch gave at one worked drinker [m3/s]. */
export interface Jug {
  readonly look: "jug";
  readonly at: "drinker";
  readonly id: string;
  readonly flow: number;
  /** As of a sight. */
  readonly afterFilling?: boolean;
}

/** One sign of trouble, or of none. What is not told is unknown. */
export type Sign = Sight | Jug;

/**
 * One text for one look at one place, for maps and sets.
 *
 * @example keyOfLook({ look: "gives", at: "drinker", id: "line 4" })   // "gives drinker line 4"
 */
export const keyOfLook = ({ look, at, id }: Look | Jug): string => `${look} ${at} ${id}`;

/** Where the answer stands among those its look may give; -1 for none of them. */
export const answerIndex = ({ look, sees }: Sight): number =>
  (ANSWERS[look] as readonly string[]).indexOf(sees);

/** Where each look can be taken. */
export const PLACES_OF: Readonly<Record<Looked | "jug", readonly Place[]>> = {
  gives: ["drinker"],
  drips: ["drinker"],
  night: ["source"],
  day: ["source"],
  water: ["source"],
  ground: ["drinker", "run", "source"],
  end: ["run"],
  lid: ["source"],
  jug: ["drinker"],
};
