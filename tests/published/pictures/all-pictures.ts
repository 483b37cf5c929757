import { drawHeat, drawIntakeByAge } from "./birds.js";
import { drawErlang } from "./crowd.js";
import { drawFrictionPlastic, drawFrictionSteel } from "./friction.js";
import { drawWater } from "./water.js";
import { drawFrost, drawRoof } from "./weather.js";

/** A drawing of a whole table beside our answers. */
export interface Picture {
  /** Of the file in docs/images/truth, without its ending. */
  readonly name: string;
  /** What it shows, for those who do not see it. */
  readonly says: string;
  readonly draw: () => string;
}

export const PICTURES: readonly Picture[] = [
  {
    name: "friction-steel",
    says: "Head lost over flow in six sizes of steel pipe; our lines go through the handbook's points",
    draw: drawFrictionSteel,
  },
  {
    name: "friction-plastic",
    says: "Head lost over flow in four sizes of plastic pipe; our lines go through the table's points",
    draw: drawFrictionPlastic,
  },
  {
    name: "intake-by-age",
    says: "Water a meat chicken drinks in a day from hatching to ten weeks: our two lines, above and among five sources",
    draw: drawIntakeByAge,
  },
  {
    name: "heat",
    says: "Times as much drunk in heat: our curve, among four sources and two rules",
    draw: drawHeat,
  },
  {
    name: "erlang",
    says: "Chance that all places are taken over load, for 1 to 100 places; our lines go through the tables' points",
    draw: drawErlang,
  },
  {
    name: "water",
    says: "Density, viscosity and vapour pressure of water from 0 to 50 °C; points of four tables within 0.2 % of our lines",
    draw: drawWater,
  },
  {
    name: "frost",
    says: "Hours until a lagged pipe is at freezing, and ice grown in a day, over the air: our lines through few printed points",
    draw: drawFrost,
  },
  {
    name: "roof-yield",
    says: "Water from a square metre of roof over a year's rain: our line through eight cells of a table",
    draw: drawRoof,
  },
];
