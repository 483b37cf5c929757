import { howBatchIntake } from "./birds.js";
import { howPenAtOnce, howPenBout, howPenBoutSeconds, howPenLoad, howPenWaits } from "./crowd.js";
import { howDay } from "./day.js";
import type { HowGot } from "./how-got.js";
import { howMishap } from "./mishaps.js";
import { howDrinkersNeeded } from "./needed.js";
import type { HowRequest } from "./request.js";
import type { HowSubject } from "./subject.js";
import { howTroubleShare } from "./trouble.js";
import { howWatererMishap } from "./waterer-mishaps.js";
import { howFrost, howHeat } from "./weather.js";
import { howWeek } from "./weeks.js";
import { howWaterer } from "./yard.js";
import { howYearDraw, howYearMet, howYearNeeded } from "./year.js";

/** What a room had reckoned; where that is gone, the answer says so. */
export type RoomSubject = Extract<
  HowSubject,
  {
    of:
      | `week${string}`
      | `day${string}`
      | `mishap${string}`
      | `frost${string}`
      | `heat${string}`
      | "troubleShare"
      | "waterer";
  }
>;
export const isOfRoom = (subject: HowSubject): subject is RoomSubject =>
  /^(week|day|mishap|frost|heat|trouble|waterer)/.test(subject.of);

/** How a figure was got that a room had reckoned. */
export function explainRoom(subject: RoomSubject, request: HowRequest): HowGot {
  switch (subject.of) {
    case "weekHang":
    case "weekRaise":
    case "weekHead":
    case "weekVerdict":
      return howWeek(request, subject);
    case "dayPen":
    case "dayShort":
    case "dayDrinker":
      return howDay(request, subject);
    case "mishap":
    case "mishapGuard":
      return howMishap(request, subject);
    case "mishapWaterer":
      return howWatererMishap(request, subject.row);
    case "troubleShare":
      return howTroubleShare(request, subject.cause);
    case "frostTime":
      return howFrost(request, subject);
    case "heatPeak":
      return howHeat(request, subject);
    case "waterer":
      return howWaterer(request, subject);
  }
}

type PenSubject = Exclude<Extract<HowSubject, { pen: number }>, { of: "waterer" }>;

/** The same of one pen, and of what it draws through a year. */
export function explainPen(subject: PenSubject, request: HowRequest): HowGot {
  const pen = request.checked.flock!.pens[subject.pen]!;
  switch (subject.of) {
    case "batchIntake":
      return howBatchIntake(request, subject);
    case "drinkersNeeded":
      return howDrinkersNeeded(request, subject);
    case "penBout":
      return howPenBout(request, pen);
    case "penBoutSeconds":
      return howPenBoutSeconds(request, pen);
    case "penLoad":
      return howPenLoad(request, pen);
    case "penBusiest":
      return howPenAtOnce(request, pen);
    case "penAllTaken":
    case "penWait":
      return howPenWaits(request, pen, subject.of);
    case "yearDraw":
      return howYearDraw(request, subject);
    case "yearMet":
      return howYearMet(request, subject);
    case "yearNeeded":
      return howYearNeeded(request, subject);
  }
}
