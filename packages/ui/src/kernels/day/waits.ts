import { DAY_EVENTS, type DayResult } from "@headfall/hydraulics";

/** How long each comer of a pen waited, from the events alone; shortest first. */
export function waitsOf({ birds, events }: DayResult, pen: number): number[] {
  const since = new Map<number, number>();
  const waits: number[] = [];
  for (let k = 0; k < (events?.count ?? 0); k += 1) {
    const [bird, kind, time] = [events!.bird[k]!, events!.kind[k]!, events!.time[k]!];
    if (birds[bird]?.pen !== pen) continue;
    if (kind === DAY_EVENTS.waits) since.set(bird, time);
    else if (kind === DAY_EVENTS.begins || (kind === DAY_EVENTS.givesUp && since.has(bird))) {
      waits.push(time - (since.get(bird) ?? time));
      since.delete(bird);
    }
  }
  return waits.sort((a, b) => a - b);
}
