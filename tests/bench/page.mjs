/** The bars of the page among what page-bars.mjs tells. */
import { measurePage } from "./page-bars.mjs";

/** @param bench  where rows and measured bars go (book.mjs) */
export async function measureOnPage({ row, measured }) {
  const rows = [];
  await measurePage(({ what, ...cells }) => {
    rows.push({ what, ...cells });
    row(what, cells);
  });
  const that = (begin) => rows.filter(({ what }) => what.startsWith(begin));
  const [visit] = that("first verdict");
  measured("first verdict", visit["verdict painted ms"]);
  measured("first script", visit["kB gzip of script"]);
  const drags = that("dragging");
  measured("long task", Math.max(...drags.map((each) => each["longest task ms"])), {
    "tasks over 50 ms": drags.map((each) => each["tasks over 50 ms"]).join(", "),
    "95 % of the work ms": Math.max(...drags.map((each) => each["work 95 % ms"])),
  });
  const [samples] = that("samples in the worker");
  measured("samples", samples["200 samples ms"], { "coarse ms": samples["coarse ms"] });
}
