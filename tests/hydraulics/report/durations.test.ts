import { expect, test } from "vitest";
import { writeDuration } from "../../../packages/hydraulics/src/report/durations.js";

const [MINUTE, HOUR, DAY] = [60, 3600, 86_400];

test.each([
  [0, "at once"],
  [59, "under a minute"],
  [MINUTE, "1 min"],
  [59.4 * MINUTE, "59 min"],
  [59.6 * MINUTE, "1 h"],
  [1.5 * HOUR, "1 h 30 min"],
  [DAY - 31, "23 h 59 min"],
  [DAY - 29, "1 day"],
  [DAY + HOUR, "1 day 1 h"],
  [2 * DAY - 0.4 * HOUR, "2 days"],
  [15.05 * DAY, "15 days 1 h"],
])(
  "writeDuration(%d s) is %s: the two largest units, rounded before they are told apart",
  (seconds, words) => {
    expect(writeDuration(seconds)).toBe(words);
  },
);
