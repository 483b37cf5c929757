import type { Flock, RosterEntry } from "../../model/flock.js";
import type { YearEvent } from "./year-result.js";

/** Days on which the same birds are in the same pens. */
export interface Span {
  readonly week: number;
  readonly from: number;
  readonly to: number;
}

/** Weeks from a day, cut on the days on which a batch comes, moves or leaves. */
export function spansOf(events: readonly YearEvent[], from: number, weeks: number): Span[] {
  const end = from + 7 * weeks;
  const cuts = new Set(events.map(({ day }) => day).filter((day) => day > from && day < end));
  for (let week = 0; week < weeks; week += 1) cuts.add(from + 7 * week);
  const starts = [...cuts].sort((a, b) => a - b);
  return starts.map((start, k) => ({
    week: Math.floor((start - from) / 7),
    from: start,
    to: starts[k + 1] ?? end,
  }));
}

/** When batches come, move and leave between two days; the first of them first. */
export function eventsOf(flock: Flock, from: number, to: number): YearEvent[] {
  const { day = from, roster = rosterOf(flock) } = flock;
  return roster
    .flatMap((entry) => eventsOfBatch(entry, flock, day))
    .filter((event) => event.day >= from && event.day < to)
    .sort((a, b) => a.day - b.day);
}

/** Of a flock in which no bird comes, moves or leaves on a date: each batch stays where it is. */
const rosterOf = ({ pens }: Flock): RosterEntry[] =>
  pens.flatMap((pen) =>
    pen.batches.map((batch, place) => ({
      batch,
      stays: [{ pen: pen.index, place, from: undefined, to: undefined }],
    })),
  );

function eventsOfBatch({ batch, stays }: RosterEntry, { pens }: Flock, day: number): YearEvent[] {
  const told = (on: number, pen: number) => ({
    day: on,
    pen: pens[pen].id,
    kindName: batch.kind.name,
    count: batch.count,
    ageDays: batch.ageDays + on - day,
  });
  const hatched = day - batch.ageDays;
  const [first] = stays;
  const last = stays[stays.length - 1];
  return [
    ...(first.from === undefined ? [] : [{ code: "arrives" as const, ...told(first.from, first.pen) }]),
    ...(first.from === undefined && batch.ageDays < 0
      ? [{ code: "hatches" as const, ...told(Math.ceil(hatched), first.pen) }]
      : []),
    ...stays.slice(1).map((stay, k) => ({
      code: "moves" as const,
      ...told(stay.from ?? day, stays[k].pen),
      to: pens[stay.pen].id,
    })),
    ...(last.to === undefined ? [] : [{ code: "leaves" as const, ...told(last.to, last.pen) }]),
  ];
}
