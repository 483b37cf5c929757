import type { FrostOfRecord } from "../../judge/weather/frost-record.js";
import type { Frost } from "../../judge/weather/frost-result.js";
import type { HeatOfRecord } from "../../judge/weather/heat-record.js";
import type { Heat } from "../../judge/weather/heat-result.js";
import { writeDay } from "../../units/day.js";
import type { UnitSystem } from "../../units/quantity.js";
import { writeFrostRecordAnswer } from "./frost-record-text.js";
import {
  FROST_CAUTIONS,
  writeFrostAnswer,
  writeFrostHolding,
  writeFrostRefills,
  writeFrostTodo,
} from "./frost-sentences.js";
import { HEAT_RECORD_CAUTIONS, writeHeatRecordAnswer } from "./heat-record-text.js";
import {
  HEAT_CAUTIONS,
  writeHeatAnswer,
  writeHeatCautions,
  writeHeatFlush,
  writeHeatIntake,
  writeHeatLevers,
  writeHeatWaterer,
} from "./heat-sentences.js";

/**
 * A hot day as a plain document, SI throughout: °C, s, m³, W/m².
 *
 * @example writeHeatDocument("hens", heat, "metric").format   // "headfall heat"
 */
export function writeHeatDocument(name: string, heat: Heat, system: UnitSystem) {
  const { parts, flushes, ...rest } = heat;
  return {
    format: "headfall heat",
    version: 1,
    plan: { name },
    answer: writeHeatAnswer(heat, system),
    ...rest,
    parts: parts.map((part) => ({
      ...part,
      change: writeHeatLevers(part, system),
      standing: writeHeatWaterer(part, system),
    })),
    drunk: writeHeatIntake(heat, system),
    flushes: flushes.map((flush) => ({ ...flush, sentence: writeHeatFlush(flush, system) })),
    cautions: writeHeatCautions(heat, system),
  };
}

/**
 * Heat by a daily record as a plain document: days as dates, °C, days a year.
 *
 * @example writeHeatRecordDocument("hens", heatOfRecord(plan, readAirRecord("date,low C,high C\n2025-07-01,14,31\n2025-07-02,15,27").record).record, "metric").days   // 2
 */
export function writeHeatRecordDocument(name: string, record: HeatOfRecord, system: UnitSystem) {
  const { firstDay, seasons, hottest, worst, ...rest } = record;
  const day = (one: number | undefined) => (one === undefined ? undefined : writeDay(one));
  return {
    format: "headfall heat record",
    version: 1,
    plan: { name },
    answer: writeHeatRecordAnswer(record, system),
    record: rest.name,
    firstDay: writeDay(firstDay),
    days: rest.days,
    known: rest.known,
    hotAYear: rest.hotAYear,
    hottest: hottest === undefined ? undefined : { ...hottest, day: writeDay(hottest.day) },
    seasons: seasons.map((season) => ({ ...season, first: day(season.first), last: day(season.last) })),
    often: rest.often,
    worstDay: worst === undefined ? undefined : writeHeatDocument(name, worst, system),
    cautions: [...HEAT_RECORD_CAUTIONS, ...HEAT_CAUTIONS],
  };
}

/**
 * Frost by a daily record as a plain document: days as dates, °C, nights a year.
 *
 * @example writeFrostRecordDocument("hens", frostOfRecord(plan, readAirRecord("date,low C\n2025-01-01,-4\n2025-01-02,-9").record).record, "metric").days   // 2
 */
export function writeFrostRecordDocument(name: string, record: FrostOfRecord, system: UnitSystem) {
  const { firstDay, seasons, coldest, worst, ...rest } = record;
  const day = (one: number | undefined) => (one === undefined ? undefined : writeDay(one));
  return {
    format: "headfall frost record",
    version: 1,
    plan: { name },
    answer: writeFrostRecordAnswer(record, system),
    record: rest.name,
    firstDay: writeDay(firstDay),
    days: rest.days,
    known: rest.known,
    nightsAYear: rest.nightsAYear,
    coldest: coldest === undefined ? undefined : { ...coldest, day: writeDay(coldest.day) },
    seasons: seasons.map((season) => ({ ...season, first: day(season.first), last: day(season.last) })),
    stops: rest.stops,
    refills: rest.refills,
    worstNight: worst === undefined ? undefined : writeFrostDocument(name, worst, system),
    cautions: FROST_CAUTIONS,
  };
}

/**
 * A night of frost as a plain document, SI throughout; a time that never comes is null.
 *
 * @example writeFrostDocument("yard", frost, "metric").format   // "headfall frost"
 */
export function writeFrostDocument(name: string, frost: Frost, system: UnitSystem) {
  const { parts, refills, ...rest } = frost;
  return {
    format: "headfall frost",
    version: 1,
    plan: { name },
    answer: writeFrostAnswer(frost),
    ...rest,
    parts: parts.map((part) => ({ ...part, holding: writeFrostHolding(part, system) })),
    refills: refills.map((one) => ({ ...one, sentence: writeFrostRefills(one) })),
    todo: writeFrostTodo(frost, system),
    cautions: FROST_CAUTIONS,
  };
}
