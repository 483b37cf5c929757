/** A tote that fills a header tank through a float valve, and a lane of nipples below that. */
export const headerTank = {
  headfall: 1,
  sources: [
    { id: "tote", vessel: "tote-275gal", stand: "1.5 m" },
    {
      id: "tank",
      vessel: { shape: "box", length: "40 cm", width: "30 cm", height: "25 cm" },
      ground: "0 cm",
      stand: "60 cm",
      outlet: "3 cm",
      level: { full: "20 cm" },
      feed: { from: "top", opening: "4 mm" },
    },
  ],
  points: [{ id: "top", ground: "0 cm", above: "85 cm" }],
  runs: [
    { id: "main", from: "tote", to: "top", length: "6 m" },
    {
      id: "lane",
      from: "tank",
      length: "4 m",
      fall: "20 cm",
      drinkers: { kind: "nipple-side-action", count: 2 },
    },
  ],
  pens: [{ id: "hens", birds: { kind: "hen", count: 20 } }],
};
