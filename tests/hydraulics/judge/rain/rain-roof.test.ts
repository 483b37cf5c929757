import { expect, test } from "vitest";
import type { RainRecord } from "../../../../packages/hydraulics/src/document/rain-record.js";
import { downpourOf, overflowOf, roofOf } from "../../../../packages/hydraulics/src/judge/rain/rain-roof.js";

/** An opening with half its bore of water over its middle: 0.61 a √(2 g d/2). */
const passes = (d: number) => 0.61 * (Math.PI / 4) * d * d * Math.sqrt(9.80665 * d);

test("roofOf takes what is typed before what is known of the kind, and that before what any roof sheds", () => {
  expect(roofOf({ area: "10 m2" })).toEqual({ area: 10, runoff: 0.8, wetting: 0.0005, firstFlush: 0 });
  const metal = roofOf({ area: "10 m2", kind: "metal" });
  expect(metal.runoff).toBe(0.92);
  const typed = { area: "10 m2", kind: "metal", runoff: "60 %", wetting: "2 mm", firstFlush: "20 L" };
  expect(roofOf(typed)).toEqual({ area: 10, runoff: 0.6, wetting: 0.002, firstFlush: 0.02 });
});

test("downpourOf sheds a hundred millimetres in an hour from all of the roof, against an overflow of 50 mm", () => {
  const downpour = downpourOf({ area: "36 m2" });
  expect(downpour.flow).toBeCloseTo(0.001, 12);
  expect(downpour.overflow).toBe(0.05);
  expect(downpour.passes / passes(0.05)).toBeCloseTo(1, 2);
  expect(downpour.isTyped).toBe(false);
  expect(downpourOf({ area: "36 m2", overflow: "40 mm" })).toMatchObject({ overflow: 0.04, isTyped: true });
});

test("downpourOf names the bore that just passes it", () => {
  const { needed, flow } = downpourOf({ area: "60 m2", overflow: "20 mm" });
  const back = downpourOf({ area: "60 m2", overflow: `${needed} m` });
  expect(back.passes / flow).toBeCloseTo(1, 6);
});

test("overflowOf tells what runs over on the wettest day: what it sheds, less the wetting and the diverter", () => {
  const record = { rain: Float64Array.of(0.01, 0.04, 0) } as unknown as RainRecord;
  const roof = { area: 20, runoff: 0.9, wetting: 0.001, firstFlush: 0.05 };
  const over = overflowOf({ area: "20 m2" }, roof, record);
  expect(over.wettest).toBe(0.04);
  expect(over.wettestOver).toBeCloseTo(0.9 * 20 * 0.039 - 0.05, 12);
  expect(over.isEnough).toBe(true);
  expect(overflowOf({ area: "60 m2", overflow: "20 mm" }, roof, record).isEnough).toBe(false);
  const drizzle = { rain: Float64Array.of(0.0005, 0) } as unknown as RainRecord;
  expect(overflowOf({ area: "20 m2" }, { ...roof, firstFlush: 0 }, drizzle).wettestOver).toBe(0);
  expect(overflowOf({ area: "20 m2" }, { ...roof, wetting: 0, firstFlush: 1 }, record).wettestOver).toBe(0);
});
