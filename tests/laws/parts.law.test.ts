import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { SEGMENT_KIND } from "../../packages/hydraulics/src/model/line.js";
import { FRICTION_LAWS } from "../../packages/hydraulics/src/solve/solution.js";
import type { PipePart } from "../arbitraries/make-line.js";
import {
  type DrawnLine,
  farthestApart,
  RUNS,
  SAME_FLOW,
  SAME_HEAD,
  solved,
  trees,
  withPipe,
  withPipes,
} from "./drawn-lines.js";

/** The line behind one more pipe at the source, or behind several: point 0 of the drawing becomes point 1. */
function behind(drawn: DrawnLine, ways: readonly Omit<PipePart, "from" | "to">[]): DrawnLine {
  const { heights, pipes, drinkers } = drawn.parts;
  return {
    ...drawn,
    parts: {
      ...drawn.parts,
      heights: [0, ...heights],
      pipes: [
        ...ways.map((way) => ({ ...way, from: 0, to: 1 })),
        ...pipes.map((pipe) => ({ ...pipe, from: pipe.from + 1, to: pipe.to + 1 })),
      ],
      drinkers: drinkers.map((one) => ({ ...one, point: one.point + 1 })),
    },
  };
}

const lengths = fc.double({ min: 0.5, max: 30, noNaN: true });
const bores = fc.double({ min: 0.008, max: 0.03, noNaN: true });

describe("solveLine of two equal pipes side by side", () => {
  it("by Hazen-Williams is that of one pipe 2^1.852 times shorter", () => {
    fc.assert(
      fc.property(trees(), lengths, bores, (drawn, length, bore) => {
        const two = solved(
          behind(drawn, [
            { length, bore },
            { length, bore },
          ]),
          "hazenWilliams",
        );
        const one = solved(behind(drawn, [{ length: length / 2 ** 1.852, bore }]), "hazenWilliams");
        expect(farthestApart(two.head, one.head)).toBeLessThan(5e-8);
        expect(farthestApart(two.drinkerFlow, one.drinkerFlow)).toBeLessThan(100 * SAME_FLOW);
        expect(Math.abs(two.flow[0]! - two.flow[1]!)).toBeLessThan(100 * SAME_FLOW);
      }),
      RUNS,
    );
  });

  it("by Darcy-Weisbach in laminar flow is that of one pipe of half the length", () => {
    const gentle = { coefficient: fc.double({ min: 1e-8, max: 1e-7, noNaN: true }) };
    fc.assert(
      fc.property(trees(gentle), lengths, bores, (drawn, length, bore) => {
        const two = solved(
          behind(drawn, [
            { length, bore },
            { length, bore },
          ]),
          "darcyWeisbach",
        );
        const one = solved(behind(drawn, [{ length: length / 2, bore }]), "darcyWeisbach");
        expect(farthestApart(two.head, one.head)).toBeLessThan(5e-8);
        expect(farthestApart(two.drinkerFlow, one.drinkerFlow)).toBeLessThan(100 * SAME_FLOW);
      }),
      RUNS,
    );
  });
});

const device = (kind: number, setting: number): Omit<PipePart, "from" | "to"> => ({
  kind,
  setting,
  length: 0.001,
  bore: 0.016,
  kInfinity: 10,
});

describe.each(FRICTION_LAWS)("solveLine (%s)", (friction) => {
  it("of pipes in series, one after the other, is that of their lengths added", () => {
    fc.assert(
      fc.property(
        trees(),
        fc.array(lengths, { minLength: 2, maxLength: 6 }),
        bores,
        (drawn, pieces, bore) => {
          const whole = solved(behind(drawn, [{ length: pieces.reduce((a, b) => a + b), bore }]), friction);
          const series = pieces.reduceRight((rest, length) => behind(rest, [{ length, bore }]), drawn);
          const parts = solved(series, friction);
          expect(farthestApart(parts.head.slice(pieces.length), whole.head.slice(1))).toBeLessThan(SAME_HEAD);
        },
      ),
      RUNS,
    );
  });

  it("with a regulator set above all there is loses what its fitting alone would", () => {
    fc.assert(
      fc.property(trees(), (drawn) => {
        const open = solved(behind(drawn, [device(SEGMENT_KIND.pipe, 0)]), friction);
        const idle = solved(
          behind(drawn, [device(SEGMENT_KIND.regulator, drawn.sourceHead[0]! + 0.01)]),
          friction,
        );
        expect(farthestApart(idle.head, open.head)).toBeLessThan(SAME_HEAD);
        expect(farthestApart(idle.drinkerFlow, open.drinkerFlow)).toBeLessThan(SAME_FLOW);
      }),
      RUNS,
    );
  });

  it("with a regulator and head to spare gives its zone the setting, whatever stands upstream", () => {
    fc.assert(
      fc.property(trees(), fc.double({ min: 20, max: 60, noNaN: true }), (drawn, plenty) => {
        const setting = drawn.sourceHead[0]!;
        const zone = solved(drawn, friction);
        const held = solved(
          { ...behind(drawn, [device(SEGMENT_KIND.regulator, setting)]), sourceHead: [plenty] },
          friction,
        );
        fc.pre(plenty - 10 * velocityHead(held.flow[0]!) > setting);
        expect(farthestApart(held.head.slice(1), zone.head)).toBeLessThan(SAME_HEAD);
        expect(farthestApart(held.drinkerFlow, zone.drinkerFlow)).toBeLessThan(SAME_FLOW);
        expect(held.flow[0]).toBeCloseTo(zone.sourceFlow[0]!, 12);
      }),
      RUNS,
    );
  });

  it("with a one-way valve that water runs through takes its opening head and its fitting, no more", () => {
    fc.assert(
      fc.property(trees(), fc.double({ min: 0, max: 0.1, noNaN: true }), (drawn, opensAt) => {
        const valve = solved(behind(drawn, [device(SEGMENT_KIND.oneWay, opensAt)]), friction);
        fc.pre(valve.flow[0]! > 1e-9);
        const plain = solved(
          { ...behind(drawn, [device(SEGMENT_KIND.pipe, 0)]), sourceHead: [drawn.sourceHead[0]! - opensAt] },
          friction,
        );
        expect(farthestApart(valve.head.slice(1), plain.head.slice(1))).toBeLessThan(SAME_HEAD);
        expect(farthestApart(valve.drinkerFlow, plain.drinkerFlow)).toBeLessThan(SAME_FLOW);
      }),
      RUNS,
    );
  });

  it("with a one-way valve against the flow is that of a shut tap in its place, and feeds nothing beyond", () => {
    fc.assert(
      fc.property(trees(), fc.nat(), (drawn, pick) => {
        const s = pick % drawn.parts.pipes.length;
        const { from, to } = drawn.parts.pipes[s]!;
        const free = solved(drawn, friction);
        fc.pre(free.flow[s]! > 1e-9);
        const against = solved(
          withPipe(drawn, s, { from: to, to: from, kind: SEGMENT_KIND.oneWay, setting: 0 }),
          friction,
        );
        const shut = solved(withPipe(drawn, s, { shut: true }), friction);
        expect(against.flow[s]).toBe(0);
        expect(farthestApart(against.drinkerFlow, shut.drinkerFlow)).toBeLessThan(SAME_FLOW);
      }),
      RUNS,
    );
  });

  it("with a shut tap is that of the line without that pipe", () => {
    fc.assert(
      fc.property(trees(), fc.nat(), (drawn, pick) => {
        const s = pick % drawn.parts.pipes.length;
        const shut = solved(withPipe(drawn, s, { shut: true }), friction);
        const without = solved(
          withPipes(
            drawn,
            drawn.parts.pipes.filter((_, i) => i !== s),
          ),
          friction,
        );
        expect(shut.head).toStrictEqual(without.head);
        expect(shut.reached).toStrictEqual(without.reached);
        expect(shut.drinkerFlow).toStrictEqual(without.drinkerFlow);
      }),
      RUNS,
    );
  });
});

const velocityHead = (flow: number) => (flow / ((Math.PI / 4) * 0.016 ** 2)) ** 2 / (2 * 9.80665);
