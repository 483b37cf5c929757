import { expect, test } from "vitest";
import { showHead } from "../../../packages/ui/src/kernels/shown.js";

test.each([
  [0, "0 mm", "0 in"],
  [0.000837, "under 1 mm", "under 0.1 in"],
  [-0.0004, "under 1 mm", "under 0.1 in"],
  [0.00437, "4 mm", "0.2 in"],
  [-0.0435, "-43 mm", "-1.7 in"],
  [0.0437, "44 mm", "1.7 in"],
  [0.0998, "10 cm", "3.9 in"],
  [0.4354, "43.5 cm", "1 ft 5 in"],
  [1.2345, "1.23 m", "4 ft 1 in"],
  [Number.NaN, "no figure", "no figure"],
])("showHead(%d) is as fine as a tape, and no finer", (head, metric, us) => {
  expect([showHead(head, "metric"), showHead(head, "us")]).toEqual([metric, us]);
});
