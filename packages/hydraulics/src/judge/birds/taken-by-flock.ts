import type { Flock, Pen, Weather } from "../../model/flock.js";
import { type FlockIntake, intakeOfPen } from "../../model/flock-intake.js";
import type { Line } from "../../model/line.js";
import { spilledAtPen } from "./report-flock.js";

/** What the birds of a pen take in a day of such weather, with what its drinkers on the line spill [m³/day]. */
export function takenByPen(line: Line, pen: Pen, weather: Weather): FlockIntake {
  const taken = 1 + spilledAtPen(line, pen);
  const { size, expect, low, high } = intakeOfPen(pen, weather);
  return { size: taken * size, expect: taken * expect, low: taken * low, high: taken * high };
}

/** The same of all pens, those at loose waterers too: every bird drinks, wherever it does. */
export function takenByFlock(line: Line, { pens, weather }: Flock): FlockIntake {
  return pens
    .map((pen) => takenByPen(line, pen, weather))
    .reduce(
      (sum, one) => ({
        size: sum.size + one.size,
        expect: sum.expect + one.expect,
        low: sum.low + one.low,
        high: sum.high + one.high,
      }),
      { size: 0, expect: 0, low: 0, high: 0 },
    );
}
