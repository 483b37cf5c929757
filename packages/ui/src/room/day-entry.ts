import type { Plan } from "@headfall/hydraulics";
import type { Entry } from "../fields/entry.js";
import { setAt } from "../store/set-at.js";

export const DAY_KEY = "plan day";

/** Has the whole plan reckoned for a day; today, whatever day that is, where none is given. */
export const dayChange = setAt(["day"], "day it is for");

/**
 * The field for the day a plan is reckoned for, where birds grow, come and go.
 *
 * @param title  what that day is in the room: "The day you go"
 * @param today  the day it is, which counts while the plan names none
 */
export const dayEntry = ({ day }: Plan, title: string, today: string | undefined): Entry => ({
  form: "picked",
  key: DAY_KEY,
  title,
  name: title,
  picks: "date",
  value: day,
  note:
    day === undefined
      ? `Empty: today${today === undefined ? "" : `, ${today}`}.`
      : "The whole plan is reckoned for that day. Emptied, it is today again.",
  change: dayChange,
});
