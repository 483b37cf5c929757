/** A barrel, a feed with one reading of its survey, and a row of six nipples round the corner; all of it invented. */
export const YARD = {
  headfall: 1,
  name: "Yard",
  sources: [{ id: "barrel", vessel: "rain-barrel-50gal", place: { x: "0 m", y: "0 m" }, stand: "60 cm" }],
  points: [
    { id: "bend", ground: "-10 cm", above: "30 cm", place: { x: "6 m", y: "0 m" } },
    { id: "far", ground: "-20 cm", above: "25 cm", place: { x: "6 m", y: "-5 m" } },
  ],
  runs: [
    { id: "feed", from: "barrel", to: "bend", length: "6 m", survey: [{ along: "3 m", fall: "5 cm" }] },
    {
      id: "row",
      from: "bend",
      to: "far",
      length: "5 m",
      drinkers: { kind: "nipple-side-action", count: 6, every: "50 cm" },
    },
  ],
} as const;
