// Made from reference-tables/roofs.csv by reference-tables/compile-tables.mjs. Edit the table, not this file.
import type { RoofRow } from "./row-types.js";

export const roofs: readonly RoofRow[] = [
  ["any-90","any roof, a tenth lost",0.9,0.9,0.9,0.0005,"greywater-faq","answer on roofs","seen"],
  ["any-conservative","any roof, a third lost",0.67,0.67,0.67,0.0005,"washington-cisterns","construction page","seen"],
  ["any-enhealth","any hard roof, over a year",0.8,0.8,0.85,0.0005,"enhealth-2011","App. B and 5.4","seen"],
  ["any-ontario","any roof, over a year with snow and overflow",0.8,0.8,0.8,0.0005,"ontario-lid-wiki","three sites","seen"],
  ["asphalt-shingle","asphalt composition shingle",0.85,0.8,0.9,0.001,"texas-manual-2005","roof materials","from memory"],
  ["clay-tile","clay tile",0.84,0.75,0.9,0.001,"farreny-2011","mean coefficients","from memory"],
  ["concrete-tile","concrete tile",0.8,0.75,0.9,0.001,"texas-manual-2005","roof materials","from memory"],
  ["flat-gravel-bs","flat roof, gravel layer",0.45,0.4,0.5,0.0005,"bs-8515","drainage coefficients","seen"],
  ["flat-smooth-bs","flat roof, smooth",0.5,0.5,0.5,0.0005,"bs-8515","drainage coefficients","seen"],
  ["green","green roof",0.3,0.2,0.5,0.02,"green-roof-lexicon","upper value of 0.3","seen"],
  ["metal","sheet metal (galvanised, aluminium-zinc, painted steel)",0.92,0.9,0.95,0.0005,"farreny-2011","mean coefficients","from memory"],
  ["pitched-tile-bs","pitched roof tiles",0.8,0.75,0.9,0.0005,"bs-8515","drainage coefficients","seen"],
  ["plastic","corrugated plastic or polycarbonate",0.91,0.88,0.95,0.0003,"farreny-2011","mean coefficients","from memory"],
  ["tar-gravel","built-up tar and gravel",0.7,0.6,0.85,0.004,"farreny-2011","mean coefficients","from memory"],
  ["tarp","tarpaulin over the run",0.75,0.6,0.9,0.002,"common-practice","judgement","from memory"],
  ["thatch","thatch",0.2,0.2,0.4,0.005,"gould-nissen-1999","coefficients","from memory"],
  ["wood-shake","wood shake",0.8,0.7,0.85,0.002,"common-practice","typical range","from memory"],
];
