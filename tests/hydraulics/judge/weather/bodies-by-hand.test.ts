import { describe, expect, it, test } from "vitest";
import {
  frostOfDrinkers,
  frostOfRun,
  frostOfVessel,
  lastsOf,
  openWater,
  pinBands,
} from "../../../../packages/hydraulics/src/judge/weather/frost-bodies.js";
import {
  curveOf,
  heatOfRun,
  heatOfVessel,
  towardsOfRun,
} from "../../../../packages/hydraulics/src/judge/weather/heat-bodies.js";
import type { ExposedRun, ExposedVessel } from "../../../../packages/hydraulics/src/model/exposed.js";
import { conductanceOfPipe, filmOfWind } from "../../../../packages/hydraulics/src/physics/cooling.js";
import { colourById } from "../../../../packages/hydraulics/src/tables/colours.js";

const HOUR = 3600;
const HEAT = 4.19e6;
const night = { low: -10, high: -10, hours: 10 * HOUR, wind: 4 };
const frost = { night, water: 10 };
const FILM = { windy: 5.7 + 3.8 * 4, still: 10 };
/** Newton: from 10 degC to 0 in air at -10. */
const cooling = (volume: number, wall: number, film: number) =>
  ((HEAT * volume) / (film * wall)) * Math.log(2);

test("lastsOf is sure, perhaps or not at all, by both ends of a band against the night", () => {
  const band = (soonest: number, latest: number) => lastsOf({ soonest, latest }, night);
  expect([band(36_000, 40_000), band(35_999, 36_000), band(1, 35_999)]).toEqual(["yes", "perhaps", "no"]);
});

test("a pin is a thread of 4 mm of water in a body of 1 cm", () => {
  const { cold } = pinBands(frost);
  const volume = (Math.PI / 4) * 0.004 ** 2;
  expect(cold.soonest).toBeCloseTo(cooling(volume, Math.PI * 0.01, FILM.windy), 6);
  expect(cold.latest).toBeCloseTo(cooling(volume, Math.PI * 0.01, FILM.still), 6);
});

describe("open water on a night of frost", () => {
  const water = { full: 0.01, least: 0.004, surface: 0.1, wall: 0.25 };
  const part = (asked = frost) =>
    openWater({ id: "pan", kind: "pan", count: 2, path: "there" }, water, asked);

  it("is cold soonest in the wind when there is least of it, latest in still air when it is full", () => {
    const { cold, volume, blocked, solid, id, count } = part();
    expect(cold.soonest).toBeCloseTo(cooling(0.004, 0.25, FILM.windy), 6);
    expect(cold.latest).toBeCloseTo(cooling(0.01, 0.25, FILM.still), 6);
    expect([id, count, volume]).toEqual(["pan", 2, { least: 0.004, full: 0.01 }]);
    // Stefan: a skin of 3 mm of ice through the film and half of itself.
    const skin = (film: number) => ((917 * 334_000) / 10) * (0.003 / film + 0.003 ** 2 / (2 * 2.2));
    expect((blocked!.soonest - cold.soonest) / skin(FILM.windy)).toBeCloseTo(1, 1);
    expect((blocked!.latest - cold.latest) / skin(FILM.still)).toBeCloseTo(1, 1);
    expect(solid.soonest).toBeGreaterThan(blocked!.soonest);
  });

  it("takes so many watts to be held at 2 degC, none where the air is no colder, and grows no ice before it is cold", () => {
    expect(part().watts).toBeCloseTo(FILM.windy * 0.25 * 12, 9);
    const mild = (low: number) => part({ ...frost, night: { ...night, low } });
    expect([mild(3).watts, mild(2).watts]).toEqual([0, 0]);
    const short = part({ ...frost, night: { ...night, hours: 60 } });
    expect(short.ice).toBe(0);
    expect(part().ice!).toBeGreaterThan(0);
  });
});

test("drinkers of one kind stop by their pins, or by the skin on what stands in them", () => {
  const group = (kindId: string) => ({ id: "lane", kindId, count: 5 }) as never;
  const pins = frostOfDrinkers(group("nipple-side-action"), "runs[0]", frost);
  expect(pins).toMatchObject({
    id: "lane",
    kind: "pin",
    count: 5,
    path: "runs[0]",
    watts: 0,
    volume: { least: 0, full: 0 },
  });
  const cups = frostOfDrinkers(group("cup-float"), "runs[0]", frost);
  expect(cups).toMatchObject({ kind: "bowl", count: 5 });
  expect(cups.volume.least).toBe(cups.volume.full);
  // Its surface, and as much again below: 15 mm of water lose heat both ways.
  expect(cups.cold.soonest).toBeCloseTo(cooling(0.015, 2, FILM.windy), 6);
});

const run: ExposedRun = {
  ...{ id: "lane", index: 2, run: 1, length: 8, bore: 0.02, outside: 0.026, lagging: 0, buried: 0 },
  ...{ volume: 0.0025, material: undefined, colour: colourById("white"), isColourSaid: true, shade: 0 },
};

describe("a run on a night of frost", () => {
  it("cools by its water against its outside, and is held at 2 degC by watts, or by a flow that leaves at 1", () => {
    const part = frostOfRun(run, frost);
    const per = (film: number) => Math.PI * 0.026 * film;
    const water = (Math.PI / 4) * 0.02 ** 2;
    expect(part.cold.soonest).toBeCloseTo(((HEAT * water) / per(FILM.windy)) * Math.log(2), 6);
    expect(part.cold.latest).toBeCloseTo(((HEAT * water) / per(FILM.still)) * Math.log(2), 6);
    expect(part.watts).toBeCloseTo(per(FILM.windy) * 8 * 12, 9);
    // From 10 degC to 1, against -10: 15.5 degrees on the mean.
    expect(part.holdingFlow).toBeCloseTo((per(FILM.windy) * 8 * 15.5) / (HEAT * 9), 12);
    expect(part).toMatchObject({
      id: "lane",
      path: "runs[2]",
      count: 1,
      volume: { least: 0.0025, full: 0.0025 },
    });
    expect(conductanceOfPipe({ outside: 0.026, lagging: 0, film: FILM.windy })).toBeCloseTo(
      per(FILM.windy),
      9,
    );
  });

  it("in the ground needs no watts and no flow, nor does water that comes at 1 degC hold anything", () => {
    const buried = frostOfRun({ ...run, buried: 0.4 }, frost);
    expect([buried.watts, buried.holdingFlow]).toEqual([0, undefined]);
    expect(buried.cold.soonest).toBe(buried.cold.latest);
    expect(frostOfRun(run, { ...frost, water: 1 }).holdingFlow).toBeUndefined();
    expect(frostOfRun({ ...run, length: 0 }, frost).holdingFlow).toBeUndefined();
    expect(frostOfRun(run, { ...frost, night: { ...night, low: 3 } }).watts).toBe(0);
  });
});

const body = (volume: number, wall: number) => ({ volume, wall, surface: 0.2, silhouette: 0.3 });
const vessel: ExposedVessel = {
  ...{ id: "barrel", index: 3, full: body(0.2, 1.9), ordinary: body(0.15, 1.6), lowest: body(0.05, 0.9) },
  ...{ capacity: 0.21, material: undefined, colour: colourById("white"), isColourSaid: false, shade: 0 },
};

test("a vessel is cold soonest at its lowest in the wind, latest full in still air; nothing blocks it", () => {
  const part = frostOfVessel(vessel, frost);
  expect(part.cold.soonest).toBeCloseTo(cooling(0.05, 0.9, FILM.windy), 3);
  expect(part.cold.latest).toBeCloseTo(cooling(0.2, 1.9, FILM.still), 3);
  expect(part).toMatchObject({ kind: "vessel", count: 1, path: "sources[3]", blocked: undefined });
  expect(part.volume).toEqual({ least: 0.05, full: 0.2 });
  expect(part.watts).toBeCloseTo(filmOfWind(4) * 1.9 * 12, 9);
  // One whose lowest level is its bottom is reckoned full.
  expect(frostOfVessel({ ...vessel, lowest: body(0, 0.2) }, frost).volume.least).toBe(0.2);
});

const day = { high: 34, low: 20, sun: 900, wind: 3, dawn: 6 * HOUR, light: 12 * HOUR } as never;

describe("what still water tends to on a hot day", () => {
  it("is the air and what sun through the pipe's shadow gives: at worst still air and the darker end of its colour", () => {
    const { absorptance, absorptanceHigh } = colourById("white");
    const noon = 48;
    const [worst, expected] = [towardsOfRun(run, day, "hottest"), towardsOfRun(run, day, "expected")];
    const shaded = towardsOfRun({ ...run, shade: 1 }, day, "hottest");
    expect(worst[noon]! - shaded[noon]!).toBeCloseTo((absorptanceHigh * 900) / (Math.PI * 10), 6);
    expect(expected[noon]! - shaded[noon]!).toBeCloseTo((absorptance * 900) / (Math.PI * (5.7 + 3.8 * 3)), 6);
    const half = towardsOfRun({ ...run, shade: 0.5 }, day, "hottest");
    expect(half[noon]! - shaded[noon]!).toBeCloseTo((worst[noon]! - shaded[noon]!) / 2, 9);
    expect(worst).toHaveLength(96);
  });

  it("is told with its peak, when it is, and how long birds drink less or refuse it", () => {
    const water = new Array<number>(96).fill(20);
    for (let k = 40; k < 60; k += 1) water[k] = 31;
    for (let k = 50; k < 54; k += 1) water[k] = 45;
    expect(curveOf(water)).toEqual({ water, peak: 45, at: 50 * 900, less: 20 * 900, refused: 4 * 900 });
    expect(curveOf(water.map(() => 30))).toMatchObject({ less: 0, at: 0 });
    expect(curveOf(water.map(() => 44))).toMatchObject({ refused: 0 });
  });
});

test("what is tried of a run is only what it is not yet: white, shaded, lagged, or in the ground", () => {
  const changesOf = (more: Partial<ExposedRun>) =>
    heatOfRun({ ...run, ...more }, day, 3).levers.map(({ change }) => change);
  const black = { colour: colourById("black") };
  expect(changesOf(black)).toEqual(["white", "shade", "lagging", "buriedShallow", "buriedDeep"]);
  expect(changesOf({})).toEqual(["shade", "lagging", "buriedShallow", "buriedDeep"]);
  expect(changesOf({ shade: 1, lagging: 0.025 })).toEqual(["buriedShallow", "buriedDeep"]);
  expect(changesOf({ ...black, buried: 0.15 })).toEqual(["shade", "buriedDeep"]);
  expect(changesOf({ shade: 1, buried: 0.3 })).toEqual([]);
  expect(heatOfRun(run, day, 3)).toMatchObject({
    path: "runs[2]",
    drinkers: 3,
    volume: 0.0025,
    shade: 0,
    colour: "white",
  });
});

test("a vessel is followed at its ordinary level, full where that is empty", () => {
  const part = heatOfVessel(vessel, day);
  expect(part).toMatchObject({ kind: "vessel", path: "sources[3]", drinkers: 0, volume: 0.15 });
  expect(part.timeConstant).toBeCloseTo((HEAT * 0.15) / (10 * 1.6), 3);
  expect(heatOfVessel({ ...vessel, ordinary: body(0, 0.2) }, day).volume).toBe(0.2);
  expect(part.levers.map(({ change }) => change)).toEqual(["shade"]);
  expect(
    heatOfVessel({ ...vessel, shade: 1, colour: colourById("black") }, day).levers.map(
      ({ change }) => change,
    ),
  ).toEqual(["white"]);
});
