import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { readPlan } from "../../packages/hydraulics/src/index.js";
import { writeBundle } from "../../packages/ui/src/storage/plan-bundle.js";
import { writeLink } from "../../packages/ui/src/storage/share-link.js";
import { randomPlan } from "../arbitraries/plans.js";

const examples = fileURLToPath(new URL("../../docs/examples/", import.meta.url));

/** Texts that each reader is given first: what it is meant for, in every form it knows. */
export async function beginWith(reader: string): Promise<readonly string[]> {
  const plans = [
    ...examplePlans(),
    ...Array.from({ length: 12 }, (_, k) => JSON.stringify(randomPlan(4 * k + 1))),
  ];
  if (reader === "plan") return plans;
  if (reader === "plans") return [writeBundle(plans.slice(0, 3).map((text) => JSON.parse(text)))];
  if (reader === "link") return Promise.all(plans.map(linkOf));
  if (reader === "batch")
    return [plans.slice(0, 3).map(oneLine).join("\n"), `${oneLine(plans[0]!)}\r\n\nno plan\n`];
  if (reader === "survey") return SURVEYS;
  return [...RECORDS, openRecord()];
}

const examplePlans = () =>
  readdirSync(examples)
    .filter((name) => name.endsWith(".json"))
    .map((name) => readFileSync(examples + name, "utf8"));

const oneLine = (text: string) => JSON.stringify(JSON.parse(text));

async function linkOf(text: string): Promise<string> {
  const reading = readPlan(text);
  if (!reading.ok) throw new Error(text);
  const link = await writeLink(reading.plan, "https://example.org/");
  return link.slice(link.indexOf("#"));
}

/** Two months of the open data that the page takes its examples from. */
function openRecord(): string {
  const entry = createRequire(import.meta.url).resolve("vega-datasets");
  return readFileSync(entry.replace(/build[\\/][^\\/]*$/, "data/weather.csv"), "utf8").slice(0, 4000);
}

const SURVEYS = [
  "2 m, 15 cm\n4 m, 12 cm",
  "along\tfall\n1,5\t0,2\n3\t-0,1",
  "6 ft 6 in; 3 1/2 in\n10 ft; -2 in",
  "2;3\n\n4;5",
];

/** A month of a station in fixed columns. */
const fixed = (element: string, values: readonly string[]) =>
  `USW00024233201201${element}${Array.from({ length: 31 }, (_, k) => values[k] ?? "-9999   ").join("")}`;

const RECORDS = [
  [
    fixed("PRCP", ["    0   ", "  109   ", "    8 X ", "  203   "]),
    fixed("TMIN", ["  -50   ", "   12   "]),
  ].join("\n"),
  ["20160228", "20160301"].map((day) => `USW00024233,${day},PRCP,25,,,W,`).join("\n"),
  ["20160228", "20160301"].map((day) => `USW00024233,${day},TMIN,-25,,,W,`).join("\n"),
  '"STATION","DATE","PRCP","PRCP_ATTRIBUTES","TMAX","TMIN"\n"USW00024233","2012-01-01","  109",",,W","128","50"',
  "date,rain mm\n2026-01-01,1.5\n2026-01-02,T",
  "date;rain mm\n13.1.2026;1,5\n14.1.2026;2",
  "date\train in\n1/13/2026\t0.5\n1/14/2026\t0",
  "date,tmin C,tmax C\n2026-01-01,-3.5,2\n2026-01-02,,4",
  "place,date,rain,tmin\nhill,1/2/2026,2,1\ndale,1/2/2026,3,2\nhill,1/3/2026,0,-1",
  "2026-01-01,5\n2026-01-02,0",
];
