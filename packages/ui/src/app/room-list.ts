/** What rooms that stand beside each other have in common, in the order they are shown. */
export const ROOM_GROUPS = {
  plan: "What there is",
  times: "What time brings",
  trouble: "When it does not work",
  making: "Making it",
} as const;
export type RoomGroup = keyof typeof ROOM_GROUPS;

/** Where a room stands, and how its view is fetched. */
interface Room {
  readonly name: string;
  readonly label: string;
  /** What a keeper learns there, in a few words. */
  readonly words: string;
  readonly group: RoomGroup;
  readonly tag: string;
  load(): Promise<CustomElementConstructor>;
}

/** The rooms beside the line, in the order of their buttons. */
export const ROOMS = [
  {
    name: "birds",
    label: "Birds",
    words: "Who drinks, how much, at how many drinkers",
    group: "plan",
    tag: "headfall-birds",
    load: async () => (await import("../birds/birds-element.js")).HeadfallBirds,
  },
  {
    name: "yard",
    label: "Yard",
    words: "Founts, pans and buckets, each on its slope",
    group: "plan",
    tag: "headfall-yard",
    load: async () => (await import("../yard/yard-element.js")).HeadfallYard,
  },
  {
    name: "day",
    label: "Day",
    words: "One day, bird by bird",
    group: "times",
    tag: "headfall-day",
    load: async () => (await import("../day/day-element.js")).HeadfallDay,
  },
  {
    name: "time",
    label: "Time",
    words: "How long the water lasts, and a time away",
    group: "times",
    tag: "headfall-time",
    load: async () => (await import("../time/time-element.js")).HeadfallTime,
  },
  {
    name: "rain",
    label: "Rain",
    words: "Whether a roof keeps the vessel full",
    group: "times",
    tag: "headfall-rain",
    load: async () => (await import("./page-rain.js")).PageRain,
  },
  {
    name: "weather",
    label: "Weather",
    words: "A night of frost, and a hot day",
    group: "times",
    tag: "headfall-weather",
    load: async () => (await import("./page-weather.js")).PageWeather,
  },
  {
    name: "year",
    label: "Year",
    words: "Batches through the weeks, and the kit given out",
    group: "times",
    tag: "headfall-year",
    load: async () => (await import("../year/year-element.js")).HeadfallYear,
  },
  {
    name: "cure",
    label: "Cure",
    words: "The smallest change that makes it work",
    group: "trouble",
    tag: "headfall-cure",
    load: async () => (await import("./page-cure.js")).PageCure,
  },
  {
    name: "mishaps",
    label: "Mishaps",
    words: "What any one thing going wrong would do",
    group: "trouble",
    tag: "headfall-mishaps",
    load: async () => (await import("../mishaps/mishaps-element.js")).HeadfallMishaps,
  },
  {
    name: "trouble",
    label: "Trouble",
    words: "What is wrong, from what you see",
    group: "trouble",
    tag: "headfall-trouble",
    load: async () => (await import("../trouble/trouble-element.js")).HeadfallTrouble,
  },
  {
    name: "build",
    label: "Build",
    words: "Parts, cuts, order, and what can hurt",
    group: "making",
    tag: "headfall-build",
    load: async () => (await import("../build/build-element.js")).HeadfallBuild,
  },
] as const satisfies readonly Room[];

export type RoomName = (typeof ROOMS)[number]["name"];
