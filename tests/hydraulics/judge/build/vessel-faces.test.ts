import { expect, test } from "vitest";
import { facesOf } from "../../../../packages/hydraulics/src/judge/build/vessel-faces.js";
import { DRAG } from "../../../../packages/hydraulics/src/physics/wind.js";

test("facesOf an upright cylinder: a disc below, a rectangle to the wind", () => {
  expect(facesOf({ kind: "upright", diameter: 0.5, height: 0.8 })).toEqual({
    ...{ width: 0.5, bottom: expect.closeTo((Math.PI / 4) * 0.25, 12), area: 0.4 },
    ...{ middle: expect.closeTo(0.4, 12), drag: DRAG.round, rolls: false },
  });
});

test("facesOf a bucket: the middle of its trapezium stands higher the more it widens", () => {
  const faces = facesOf({ kind: "tapered", bottomDiameter: 0.2, topDiameter: 0.4, height: 0.3 })!;
  expect(faces.width).toBe(0.2);
  expect(faces.bottom).toBeCloseTo(Math.PI * 0.01, 12);
  expect(faces.area).toBeCloseTo(0.3 * 0.3, 12);
  // Two triangles of 0.1 x 0.3 / 2 at two thirds beside a rectangle of 0.2 x 0.3 at half.
  expect(faces.middle).toBeCloseTo((2 * 0.015 * 0.2 + 0.06 * 0.15) / 0.09, 12);
});

test("facesOf a box: its wide side to the wind, its narrow side to tip over, whichever is called length", () => {
  const faces = { width: 0.3, bottom: 0.15, area: 0.2, middle: 0.2, drag: DRAG.box, rolls: false };
  const close = Object.fromEntries(
    Object.entries(faces).map(([key, one]) => [key, typeof one === "number" ? expect.closeTo(one, 12) : one]),
  );
  expect(facesOf({ kind: "box", length: 0.5, width: 0.3, height: 0.4 })).toEqual(close);
  expect(facesOf({ kind: "box", length: 0.3, width: 0.5, height: 0.4 })).toEqual(close);
});

test("facesOf a lying drum rolls before it tips; of a table of levels nothing is known", () => {
  expect(facesOf({ kind: "lying", diameter: 0.6, length: 0.9 })).toEqual({
    ...{ width: 0.6, bottom: expect.closeTo(0.27, 12), area: expect.closeTo(0.54, 12), middle: 0.3 },
    ...{ drag: DRAG.round, rolls: true },
  });
  expect(facesOf({ kind: "table", levels: [0, 1], volumes: [0, 1] } as never)).toBeUndefined();
});
