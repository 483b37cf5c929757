import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { judgeLine } from "../../../packages/hydraulics/src/judge/judge-line.js";
import { weighLine } from "../../../packages/hydraulics/src/judge/weigh-line.js";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";
import type { Flock } from "../../../packages/hydraulics/src/model/flock.js";
import { mishapsOf } from "../../../packages/hydraulics/src/model/mishaps-of.js";
import { withMishap } from "../../../packages/hydraulics/src/model/with-mishap.js";
import { plans } from "../../arbitraries/plans.js";

const nobody = { pens: [] } as unknown as Flock;

describe("weighLine of any plan, as it is and after any of its mishaps", () => {
  it("gives the verdicts of judgeLine, the heads, and what is left by filling, to the last digit", () => {
    fc.assert(
      fc.property(plans(), fc.nat(), (data, choice) => {
        const reading = checkDocument(data);
        if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
        const built = buildLine(reading.plan);
        if (!built.ok) throw new Error(JSON.stringify(built.problems));
        const mishaps = mishapsOf(reading.plan, built.line, nobody);
        const struck = withMishap(built.line, mishaps[choice % mishaps.length]!);
        for (const line of [built.line, struck]) {
          const [judged, weighed] = [judgeLine(line), weighLine(line)];
          const told = judged.drinkers.map(({ verdict, also }) => [verdict, also.map((one) => one.verdict)]);
          expect(
            weighed.drinkers.map(({ verdict, also }) => [verdict, also.map((one) => one.verdict)]),
          ).toEqual(told);
          const low = judged.solved.darcyWeisbach.lowestBusiest;
          expect(weighed.solved.darcyWeisbach.lowestBusiest.idle.head).toEqual(low.idle.head);
          expect(weighed.solved.darcyWeisbach.lowestBusiest.solution.flow).toEqual(low.solution.flow);
          expect(weighed.filling).toEqual(judged.filling);
        }
      }),
      { numRuns: 20 },
    );
  });
});
