const MINUTE = 60;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/**
 * A time span in the two largest units that say something: "15 days 1 h", "7 h 20 min", "under a minute".
 *
 * @example writeDuration(5400)   // "1 h 30 min"
 */
export function writeDuration(seconds: number): string {
  if (seconds < MINUTE) return seconds <= 0 ? "at once" : "under a minute";
  const minutes = Math.round(seconds / MINUTE) * MINUTE;
  if (minutes < HOUR) return `${minutes / MINUTE} min`;
  if (minutes < DAY) return parts(minutes, [HOUR, "h"], [MINUTE, "min"]);
  const hours = Math.round(seconds / HOUR) * HOUR;
  return parts(hours, [DAY, hours < 2 * DAY ? "day" : "days"], [HOUR, "h"]);
}

type UnitOfTime = readonly [seconds: number, word: string];

function parts(seconds: number, [large, largeWord]: UnitOfTime, [small, smallWord]: UnitOfTime): string {
  const rest = (seconds % large) / small;
  const whole = `${Math.floor(seconds / large)} ${largeWord}`;
  return rest === 0 ? whole : `${whole} ${rest} ${smallWord}`;
}
