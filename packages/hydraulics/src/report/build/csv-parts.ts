import type { BuildSheet } from "../../judge/build/build-sheet.js";
import { type CsvCell, type CsvOptions, writeCsv } from "../csv.js";
import { type CsvUnits, inUnits, titled } from "../csv-units.js";
import { writeBasis, writePart } from "./build-words.js";

/**
 * Every part as a row, then every length of pipe to buy or to cut from.
 *
 * @param sheet    from `buildSheetOf`
 * @param units    "si", or the units of "metric" or "us"; each column has one unit, said in its title
 * @param options  whether to begin with the mark of UTF-8
 * @returns comma-separated values, see `writeCsv`
 * @example writePartsCsv(sheet, "metric").split("\r\n")[1]   // "bucket-5gal,\"Bucket, 5 US gal, outlet in the ..."
 */
export function writePartsCsv(sheet: BuildSheet, units: CsvUnits, options?: CsvOptions): string {
  const { money } = sheet.price;
  const priceIn = (title: string) => (money === undefined ? title : `${title} [${money}]`);
  const length = (metres: number) => inUnits(metres, "length", units);
  const titles = [
    "part",
    "name",
    "size",
    "count",
    titled("length each", "length", units),
    "for",
    "why",
    priceIn("price each"),
    priceIn("price"),
  ];
  const parts = sheet.parts.map((part): CsvCell[] => [
    ...[part.id, writePart(part), part.size, part.count, undefined, part.where.join("; "), writeBasis(part)],
    part.price,
    part.price === undefined ? undefined : part.price * part.count,
  ]);
  const pipes = sheet.pipes.flatMap((pipe) =>
    pipe.bars.map(({ from, length: metres, pieces }): CsvCell[] => {
      const price =
        from === "sold" && pipe.price !== undefined && pipe.cutting.bought > 0
          ? (pipe.price * metres) / pipe.cutting.bought
          : undefined;
      const why = from === "sold" ? "to buy" : "on hand";
      const runs = [...new Set(pieces.map(({ run }) => run))].join("; ");
      return [pipe.pipe, pipe.name, undefined, 1, length(metres), runs, why, price, price];
    }),
  );
  return writeCsv([titles, ...parts, ...pipes], options);
}
