import { type PenYard, type WatererReport, writeMass, writeRefills, writeSlope } from "@headfall/hydraulics";
import { difference, product, quotient, sum, term } from "./expression.js";
import { bare } from "./figures.js";
import { type HowGot, soundSteps, stepOf, untold } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import type { HowSubject, WatererFigure } from "./subject.js";
import { alwaysValid } from "./validity.js";

type WatererSubject = Extract<HowSubject, { of: "waterer" }>;

const TITLES: Readonly<Record<WatererFigure, string>> = {
  holds: "What it holds when level",
  gives: "What birds can drink of it on its slope",
  drainsAt: "Slope from which it drains",
  share: "What stays in a full one on its slope",
  atOnce: "Birds that drink at once",
  refills: "How often it is filled",
  hotRefills: "How often it is filled on the hot day",
  weight: "What it weighs when full",
};

/** How a figure of a loose waterer came about. */
export function howWaterer(request: HowRequest, { pen: p, waterer: w, what }: WatererSubject): HowGot {
  const pen = request.room.yard?.pens[p];
  const report = pen?.waterers[w];
  if (pen === undefined || report === undefined) return untold(TITLES[what]);
  const told = { ...request, pen, report };
  const title = `${TITLES[what]}: ${quoted(report.id)}`;
  switch (what) {
    case "holds":
      return { ...plain(title), ...holds(told) };
    case "gives":
      return { ...plain(title), ...gives(told) };
    case "drainsAt":
      return { ...plain(title), ...drains(told) };
    case "share":
      return { ...plain(title), ...share(told) };
    case "atOnce":
      return { ...plain(title), ...atOnce(told) };
    case "weight":
      return { ...plain(title), ...weight(told) };
    default:
      return { ...plain(title), ...refills(told, what) };
  }
}

interface Told extends HowRequest {
  readonly pen: PenYard;
  readonly report: WatererReport;
}
type Part = Partial<HowGot> & Pick<HowGot, "result">;

const STILL = alwaysValid("Still water", "surface tension holds 2 to 3 mm more, a bump takes more than that");

const plain = (title: string): HowGot => ({
  title,
  result: "",
  steps: [],
  valid: [],
  notes: [],
  sources: ["common-practice"],
});

function holds({ report: { holds: volume, waterer }, figures }: Told): Part {
  const { kind } = waterer;
  const words: Readonly<Record<typeof kind.works, string>> = {
    vacuum: "Its jar, and the ring under it up to the air hole.",
    nipples: "Its bucket, filled to 95 %.",
    bell: "What stands above it, filled to 95 %, and its bowl.",
    pan: "To its lip, standing level.",
    trough: "To its lip, standing level.",
  };
  return {
    result: figures.volume(volume),
    notes: [words[kind.works], "A volume measured by filling it goes before the sizes of its kind."],
    sources: [kind.citation.source],
  };
}

function gives({ report: { stays, gives: volume }, figures }: Told): Part {
  const step = stepOf(
    "gives",
    difference(
      term("stays on its slope", stays, figures.volumeIn(stays)),
      term("too shallow to drink", stays - volume, figures.volumeIn(stays - volume)),
    ),
    figures.volumeIn,
  );
  return {
    result: figures.volume(volume),
    steps: soundSteps(step),
    valid: [STILL],
    notes: ["A fount or bell that drains gives nothing; one that does not keeps all it holds."],
    sources: ["closed-form", "beyer-crc"],
  };
}

function drains({ report: { tilt, waterer }, figures }: Told): Part {
  if (!("drainsAt" in tilt) || tilt.drainsAt === undefined)
    return {
      result: "no slope",
      notes: ["Its hole lies as far downhill as its lowest lip."],
      sources: ["closed-form"],
    };
  const { kind } = waterer;
  if (!("lipOverHole" in kind)) return { result: writeSlope(tilt.drainsAt) };
  const { lipOverHole } = kind;
  const apart = lipOverHole / tilt.drainsAt;
  const step = stepOf(
    "tan θ",
    quotient(
      term("f, lip over its level", lipOverHole, figures.length(lipOverHole)),
      term("lip to what decides the level, along the slope", apart, figures.length(apart)),
    ),
    (value) => bare(value, 3),
  );
  const how =
    kind.works === "vacuum"
      ? `The pool stands at the top of the highest air hole (${figures.length(kind.hole)} from the middle) and first runs over the lowest lip (${figures.length(kind.rim)}): R cos ψ − r cos φ apart.`
      : "A float keeps the level in the middle: the lip is as far away as the bowl's radius.";
  return {
    result: writeSlope(tilt.drainsAt),
    steps: soundSteps(step),
    valid: [STILL],
    notes: [how],
    sources: kind.works === "vacuum" ? ["closed-form", "keeper-hole-downhill"] : ["closed-form"],
  };
}

function share({ report: { tilt, stays, holds: volume }, figures }: Told): Part {
  if (!("share" in tilt)) return { result: "all" };
  return {
    result: `${Math.round(100 * tilt.share)} %`,
    valid: [STILL],
    notes: [
      `Filled till it runs over its lowest lip, on ${writeSlope(tilt.slope)}: a wedge is missing. As it is filled, ${figures.volume(stays)} of ${figures.volume(volume)} stays.`,
    ],
    sources: ["beyer-crc", "closed-form"],
  };
}

function atOnce({ report: { reach, waterer } }: Told): Part {
  const { edge, atOnce: one, room } = reach;
  const total = String(one * waterer.count);
  if (room === undefined)
    return { result: total, notes: ["One bird at each nipple or spout that gives water."] };
  const step = stepOf(
    "birds, rounded down",
    quotient(
      term("edge that holds water", edge, `${bare(edge, 3)} m`),
      term("edge one bird takes", room, `${bare(room, 3)} m`),
    ),
    (value) => bare(value, 3),
  );
  return {
    result: total,
    steps: soundSteps(step),
    notes: [
      `At one of ${waterer.count}. A grown hen takes 12 cm, a quail 5, a chick three tenths of what it will take.`,
    ],
  };
}

function weight({ report: { emptyMass, fullMass }, figures: { system } }: Told): Part {
  const write = (mass: number) => writeMass(mass, system);
  const water = fullMass - emptyMass;
  return {
    result: write(fullMass),
    steps: soundSteps(
      stepOf(
        "full",
        sum(term("empty", emptyMass, write(emptyMass)), term("water", water, write(water))),
        write,
      ),
    ),
    sources: ["common-practice", "iapws-sr6-08"],
  };
}

function refills(
  { pen, report: { reach, gives: volume, weeks, open, waterer }, figures }: Told,
  what: "refills" | "hotRefills",
): Part {
  const [week] = weeks;
  const isHot = what === "hotRefills";
  const drawn = (isHot ? week?.hotDraw : week?.draw)?.size ?? 0;
  const often = isHot ? week?.hotRefills : week?.refills;
  const dry = isHot ? open.hot : open.now;
  const places = pen.linePlaces + pen.loosePlaces;
  const notes = [
    `Taken from one: its ${reach.atOnce} of the pen's ${places} places to drink, of what ${pen.birds} birds drink to size on; what is spilled; and ${figures.volume(dry)} that the air takes of ${bare(open.area * 1e4, 3)} cm² of open water${waterer.isShaded ? " in the shade" : ""}.`,
  ];
  if (often === undefined || volume <= 0)
    return { result: writeRefills(often), notes: ["It gives nothing as it stands."] };
  const step = stepOf(
    "fills a day",
    quotient(
      product(term("taken from it a day", drawn, figures.volumeIn(drawn))),
      term("gives", volume, figures.volumeIn(volume)),
    ),
    (value) => bare(value, 3),
  );
  return {
    result: writeRefills(often),
    steps: soundSteps(step),
    notes,
    sources: ["common-practice", "may-lott-1992"],
  };
}
