import type { FrontAnswer, FrontPoint } from "../../search/find-front.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeTable } from "../text-table.js";
import { writeHead } from "../words.js";
import { writeChanges, writeCost } from "./cure-sentences.js";

const TITLES = {
  margin: "What more head to spare costs",
  height: "What a higher stand saves in pipe",
} as const;

/** One trade-off as a table for a terminal. */
export function writeFrontText(
  name: string,
  front: FrontAnswer,
  which: "margin" | "height",
  system: UnitSystem,
  paint: Paint,
): string {
  const points = which === "margin" ? front.costAgainstMargin : front.heightAgainstSize;
  const title = paint(`${name === "" ? "This plan" : name}. ${TITLES[which]}`, "title");
  if (points.length === 0) return `${title}\nNothing that was searched makes it work.\n`;
  const table = writeTable({
    columns:
      which === "margin" ? ["to spare", "cost", "what to do"] : ["stand", "cost, of pipe", "what to do"],
    alignRight: [true, false, false],
    rows: points.map((point) => [
      which === "margin" ? spareOf(point, system) : writeQuantity(point.stand, "length", system),
      writeCost(point.cost, front.money, system),
      point.changes.length === 0 ? "Leave it as it is." : writeChanges(point, system),
    ]),
  });
  const proof = front.proven
    ? "Each line is the cheapest of its kind: nothing in sizes and stands is both cheaper and better."
    : "The search ended early: for some lines a cheaper one is not ruled out.";
  return `${title}\n${table}\n\n${paint(proof, "quiet")}\n`;
}

const spareOf = ({ margin }: FrontPoint, system: UnitSystem): string =>
  Number.isFinite(margin) ? writeHead(margin, system) : "";
