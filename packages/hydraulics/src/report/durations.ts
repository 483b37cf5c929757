const [MINUTE, HOUR, DAY] = [60, 3600, 86_400];

/**
 * A time span in the two largest units that say something: "15 days 1 h", "7 h 20 min", "under a minute".
 *
 * @example writeDuration(5400)   // "1 h 30 min"
 */
export function writeDuration(seconds: number): string {
  if (seconds < MINUTE) return seconds <= 0 ? "at once" : "under a minute";
  if (seconds < HOUR) return `${Math.round(seconds / MINUTE)} min`;
  if (seconds < DAY) return pair(seconds, HOUR, MINUTE, "h", "min");
  const days = pair(seconds, DAY, HOUR, "days", "h");
  return days.replace(/^1 days/, "1 day");
}

function pair(seconds: number, large: number, small: number, largeWord: string, smallWord: string): string {
  const count = Math.round(seconds / small);
  const per = large / small;
  const rest = count % per;
  const whole = `${Math.floor(count / per)} ${largeWord}`;
  return rest === 0 ? whole : `${whole} ${rest} ${smallWord}`;
}
