import type { Checked } from "../judge/check-result.js";
import type { Line } from "../model/line.js";
import { MOMENTS } from "../model/moment.js";
import { FRICTION_LAWS } from "../solve/solution.js";
import { type CsvCell, type CsvOptions, writeCsv } from "./csv.js";
import { type CsvMeasure, type CsvUnits, inUnits, titled } from "./csv-units.js";
import { LAW_WORDS, MOMENT_WORDS } from "./words.js";

/**
 * Every run as a row, at the busiest minutes with the source full.
 *
 * @param checked  from `checkPlan`
 * @param units    "si", or the units of "metric" or "us"; each column has one unit, said in its title
 * @param options  whether to begin with the mark of UTF-8
 * @returns comma-separated values, see `writeCsv`
 * @example writeRunsCsv(checked, "metric").split(",")[2]   // "length [m]"
 */
export function writeRunsCsv(checked: Checked, units: CsvUnits, options?: CsvOptions): string {
  const [column, value] = columnsIn(units);
  const titles = [
    ...["run", "pipe", column("length", "length"), column("bore", "bore")],
    ...[column("water in the pipe", "volume"), column("flow", "largeFlow"), column("velocity", "velocity")],
    ...["Reynolds number", "regime"],
    ...FRICTION_LAWS.map((law) => column(`head lost by ${LAW_WORDS[law]}`, "head")),
    `within the range of ${LAW_WORDS.hazenWilliams}`,
  ];
  const rows = checked.runs.map(({ run, pipe, length, bore, volume, busiest }): CsvCell[] => [
    ...[run, pipe, value(length, "length"), value(bore, "bore"), value(volume, "volume")],
    ...[value(busiest.flow, "largeFlow"), value(busiest.velocity, "velocity"), busiest.reynolds],
    busiest.regime,
    ...FRICTION_LAWS.map((law) => value(busiest.loss[law], "head")),
    yesOrNo(busiest.hazenWilliamsInRange),
  ]);
  return writeCsv([titles, ...rows], options);
}

/**
 * Every source as a row: how it stands, what it holds, where its water is at each moment.
 *
 * @param checked  from `checkPlan`
 * @param units    "si", or the units of "metric" or "us"; each column has one unit, said in its title
 * @param options  whether to begin with the mark of UTF-8
 * @returns comma-separated values, see `writeCsv`
 * @example writeSourcesCsv(checked, "metric").split(",")[3]   // "stand [m]"
 */
export function writeSourcesCsv(checked: Checked, units: CsvUnits, options?: CsvOptions): string {
  const [column, value] = columnsIn(units);
  const titles = [
    ...["source", "vessel", column("ground above datum", "length"), column("stand", "length")],
    column("outlet above inside bottom", "length"),
    ...MOMENTS.map((moment) => column(`${MOMENT_WORDS[moment]}: water above datum`, "length")),
    ...["held when full", "usable", "below the lowest level"].map((title) => column(title, "volume")),
    ...[column("drawn at the busiest", "largeFlow"), column("weighs when full", "mass")],
    column("sealed: gives before it stalls", "volume"),
    ...["vent", "vent needed"].map((title) => column(title, "bore")),
    ...[column("float valve lets in", "largeFlow"), "float valve keeps up"],
  ];
  const rows = checked.sources.map((report): CsvCell[] => {
    const source = checked.line.sources[report.index];
    return [
      ...[report.source, source.vesselName, value(source.ground, "length"), value(source.stand, "length")],
      value(source.outlet, "length"),
      ...MOMENTS.map((moment) => value(report.surface[moment], "length")),
      ...[report.volumeFull, report.volumeUsable, report.volumeDead].map((each) => value(each, "volume")),
      ...[value(report.drawBusiest, "largeFlow"), value(report.massFull, "mass")],
      value(report.volumeBeforeStall, "volume"),
      ...[report.ventDiameter, report.ventDiameterNeeded].map((each) => value(each, "bore")),
      ...[value(report.feedFlow, "largeFlow"), yesOrNo(report.feedKeepsUp)],
    ];
  });
  return writeCsv([titles, ...rows], options);
}

/**
 * Every part of the line that has a height to be marked: outlets, ends of runs, surveyed places, drinkers.
 *
 * @param line     from `checkPlan` or `buildLine`
 * @param units    "si", or the units of "metric" or "us"; each column has one unit, said in its title
 * @param options  whether to begin with the mark of UTF-8
 * @returns comma-separated values, see `writeCsv`
 * @example writeHeightsCsv(line, "metric").split("\r\n")[1]   // "outlet,barrel,,,0.5,0,0.5,no"
 */
export function writeHeightsCsv(line: Line, units: CsvUnits, options?: CsvOptions): string {
  const [column, value] = columnsIn(units);
  const titles = [
    ...["part", "name", "run", column("along the run", "length")],
    ...["height above datum", "ground above datum", "height above ground"].map((title) =>
      column(title, "length"),
    ),
    "air can leave",
  ];
  const { points, drinkers } = line;
  const heights = (height: number, ground: number) => [
    value(height, "length"),
    value(ground, "length"),
    value(height - ground, "length"),
  ];
  const ofPoint = (point: number) => [
    ...heights(points.height[point], points.ground[point]),
    yesOrNo(points.bleed[point] === 1),
  ];
  const rows: CsvCell[][] = line.sources.map(({ id, point, ground }) => [
    ...["outlet", id, undefined, undefined],
    ...heights(points.height[point], ground),
    yesOrNo(points.bleed[point] === 1),
  ]);
  for (const run of line.runs) {
    run.points.forEach((point, i) => {
      if (points.measured[point] === 0) return;
      rows.push(["pipe", points.id[point], run.id, value(run.along[i], "length"), ...ofPoint(point)]);
    });
  }
  for (let d = 0; d < drinkers.count; d += 1) {
    rows.push([
      ...["drinker", drinkers.id[d], line.runs[drinkers.run[d]].id, value(drinkers.along[d], "length")],
      ...heights(drinkers.height[d], points.ground[drinkers.point[d]]),
      undefined,
    ]);
  }
  return writeCsv([titles, ...rows], options);
}

/** Titles and values in the units asked for. */
const columnsIn = (units: CsvUnits) =>
  [
    (title: string, measure: CsvMeasure) => titled(title, measure, units),
    (value: number | undefined, measure: CsvMeasure) => inUnits(value, measure, units),
  ] as const;

const yesOrNo = (claim: boolean | undefined): string | undefined =>
  claim === undefined ? undefined : claim ? "yes" : "no";
