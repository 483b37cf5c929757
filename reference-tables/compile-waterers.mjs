import { loadTable } from "./load-tables.mjs";
import { defaultRows, moduleOf, objectOf, words } from "./table-rows.mjs";

/** What each way of working is measured by; a blank in one of these is an error. */
const watererColumns = {
  vacuum: "lip rim_mm jar_mm hole_mm holes pool_mm lip_over_hole_mm reservoir_l",
  nipples: "vessel places drinker",
  bell: "lip rim_mm jar_mm pool_mm lip_over_hole_mm vessel drinker",
  pan: "lip rim_mm floor_mm depth_mm",
  trough: "lip length_mm width_mm depth_mm",
};

function watererOf(table, row) {
  const shared = "id name works base_mm left_mm empty_kg fills seal height_as from_d";
  const own = row.lip === "spouts" ? `${watererColumns[row.works]} places` : watererColumns[row.works];
  const { from, also, citation, ...made } = objectOf(table, row, `${shared} ${own}`.split(" "));
  return {
    ...made,
    species: words(row.species),
    fromDays: from,
    ...(row.to_d === "" ? {} : { toDays: Number(row.to_d) }),
    hangs: row.hangs === "yes",
    hasShade: row.shade === "yes",
    also,
    citation,
  };
}

/** Names of waterers apart from the rest: reading a plan needs no more, and comes first on the page. */
function watererNamesModule() {
  const rows = defaultRows(loadTable("waterers")).map(({ id, name, also }) => [id, name, words(also)]);
  return moduleOf("waterers.csv", "WatererName", rows)
    .replace("./row-types.js", "./waterer-types.js")
    .replace("const waterers", "const watererNames");
}

function watererModule() {
  const table = loadTable("waterers");
  const rows = defaultRows(table).map((row) => watererOf(table, row));
  return moduleOf("waterers.csv", "WatererKind", rows).replace("./row-types.js", "./waterer-types.js");
}

/** File name to text, for both modules of loose waterers. */
export const compileWaterers = () => [
  ["waterer-names.generated.ts", watererNamesModule()],
  ["waterers.generated.ts", watererModule()],
];
