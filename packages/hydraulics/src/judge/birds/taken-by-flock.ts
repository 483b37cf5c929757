import type { Flock, Pen, Weather } from "../../model/flock.js";
import { type FlockIntake, intakeOfPen, sumOfIntakes, timesIntake } from "../../model/flock-intake.js";
import type { Line } from "../../model/line.js";
import { spilledAtPen } from "./report-flock.js";

/** What the birds of a pen take in a day of such weather, with what its drinkers on the line spill [m³/day]. */
export const takenByPen = (line: Line, pen: Pen, weather: Weather): FlockIntake =>
  timesIntake(1 + spilledAtPen(line, pen), intakeOfPen(pen, weather));

/** The same of all pens, those at loose waterers too: every bird drinks, wherever it does. */
export const takenByFlock = (line: Line, { pens, weather }: Flock): FlockIntake =>
  sumOfIntakes(pens.map((pen) => takenByPen(line, pen, weather)));
