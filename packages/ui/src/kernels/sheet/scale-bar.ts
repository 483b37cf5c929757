import type { UnitSystem } from "../typed-quantity.js";
import { FOOT } from "../us-units.js";
import { onPaper, type SheetScale } from "./scales.js";
import { line, rectangle, type Shape } from "./shapes.js";

const decades = (from: number, count: number) =>
  Array.from({ length: count }, (_, i) => [1, 2, 5].map((step) => step * 10 ** (from + i))).flat();

/** Round lengths a bar can have [m], with their words. */
const LENGTHS: Readonly<Record<UnitSystem, readonly (readonly [length: number, words: string])[]>> = {
  metric: [
    ...[1, 2, 5, 10, 20, 50].map((cm) => [cm / 100, `${cm} cm`] as const),
    ...decades(0, 5).map((m) => [m, `${m} m`] as const),
  ],
  us: [
    ...[1, 2, 3, 6].map((inches) => [(inches * FOOT) / 12, `${inches} in`] as const),
    ...decades(0, 5).map((feet) => [feet * FOOT, `${feet} ft`] as const),
  ],
};

const LONGEST = 60;

/** A bar of a round length at the drawing's scale, in five parts, dark and light by turns. */
export function scaleBar(
  scale: SheetScale,
  system: UnitSystem,
  at: { x: number; y: number },
  what: string,
): Shape[] {
  const fitting = LENGTHS[system].filter(([length]) => onPaper(length, scale) <= LONGEST);
  const [length, words] = fitting[fitting.length - 1] ?? LENGTHS[system][0]!;
  const long = onPaper(length, scale);
  const parts = [0, 1, 2, 3, 4].map((i) =>
    rectangle(i % 2 === 0 ? "filled" : "check", {
      left: at.x + (i * long) / 5,
      right: at.x + ((i + 1) * long) / 5,
      top: at.y,
      bottom: at.y + 1.6,
    }),
  );
  return [
    ...parts,
    { kind: "text", x: at.x + long + 1.5, y: at.y + 1.7, text: `${words}${what}`, size: 2.5 },
  ];
}

/** A bar whose length is known, so that a printer that shrinks pages is found out with a ruler. */
export function rulerCheck(system: UnitSystem, right: number, y: number): Shape[] {
  const [long, words] = system === "us" ? [101.6, "4 in"] : [100, "100 mm"];
  const left = right - long;
  return [
    line("check", [left, y], [right, y]),
    line("check", [left, y - 1.5], [left, y + 1.5]),
    line("check", [right, y - 1.5], [right, y + 1.5]),
    {
      kind: "text",
      x: left + long / 2,
      y: y + 3.6,
      text: `This bar is ${words}: check with a ruler. If it is not, print at 100 %.`,
      size: 2.5,
      anchor: "middle",
    },
  ];
}
