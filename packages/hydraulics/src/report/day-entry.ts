import { writeDay } from "../units/day.js";

/** The day of a document; nothing where the plan names none and none was asked for. */
export const dayEntry = (day: number | undefined): { readonly day?: string } =>
  day === undefined ? {} : { day: writeDay(day) };
