import { expect, test } from "vitest";
import { yard } from "../yard/yard.js";
import { sampledOf } from "./sampling.js";

test("what a nipple passes and a beak takes in is a half of it, from three tenths to eight: 0.6 to 1.6 times", () => {
  const birds = yard({
    runs: [{ length: "3 m", fall: "0 cm", drinkers: { kind: "nipple-side-action", count: 2 } }],
    more: { pens: [{ birds: { kind: "hen", count: 6 } }] },
  });
  const { inputs } = sampledOf(birds)!.sampler({ seed: 1 });
  const [takenIn] = inputs.filter(({ input }) => input.kind === "takenIn");
  expect(takenIn!.spread).toEqual({ low: expect.closeTo(0.6, 12), high: expect.closeTo(1.6, 12) });
});
