/** Where a room stands, and how its view is fetched. */
interface Room {
  readonly name: string;
  readonly label: string;
  readonly tag: string;
  load(): Promise<CustomElementConstructor>;
}

/** The rooms beside the line, in the order of their buttons. */
export const ROOMS = [
  {
    name: "birds",
    label: "Birds",
    tag: "headfall-birds",
    load: async () => (await import("../birds/birds-element.js")).HeadfallBirds,
  },
  {
    name: "day",
    label: "Day",
    tag: "headfall-day",
    load: async () => (await import("../day/day-element.js")).HeadfallDay,
  },
  {
    name: "time",
    label: "Time",
    tag: "headfall-time",
    load: async () => (await import("../time/time-element.js")).HeadfallTime,
  },
  {
    name: "rain",
    label: "Rain",
    tag: "headfall-rain",
    load: async () => (await import("./page-rain.js")).PageRain,
  },
  {
    name: "cure",
    label: "Cure",
    tag: "headfall-cure",
    load: async () => (await import("./page-cure.js")).PageCure,
  },
  {
    name: "mishaps",
    label: "Mishaps",
    tag: "headfall-mishaps",
    load: async () => (await import("../mishaps/mishaps-element.js")).HeadfallMishaps,
  },
  {
    name: "trouble",
    label: "Trouble",
    tag: "headfall-trouble",
    load: async () => (await import("../trouble/trouble-element.js")).HeadfallTrouble,
  },
] as const satisfies readonly Room[];

export type RoomName = (typeof ROOMS)[number]["name"];
