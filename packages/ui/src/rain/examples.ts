import type { RainReadingOptions } from "@headfall/hydraulics";
import weather from "../../../../node_modules/vega-datasets/data/weather.csv?url";

/** A record that comes with the page: four years of rain of one place, fetched when it is chosen. */
export interface ExampleRecord {
  readonly name: string;
  readonly options: RainReadingOptions;
}

export const EXAMPLES: readonly ExampleRecord[] = [
  { name: "Seattle, 2012 to 2015", options: { unit: "mm", place: "Seattle" } },
  { name: "New York, 2012 to 2015", options: { unit: "mm", place: "New York" } },
];

/** Where the examples are from, and what may be made of them. */
export const EXAMPLES_FROM =
  "From the file weather.csv of vega-datasets 3.2.1 (code under BSD-3-Clause; the file is marked there as a data set of the US Government, from NOAA's daily records). Its makers have changed it and call it a starting point: good to try this page with, no advice on a climate.";

/** The text of the examples' file. @throws Error where it cannot be fetched */
export async function fetchExamples(): Promise<string> {
  const answer = await fetch(weather);
  if (!answer.ok) throw new Error(`answer ${answer.status}`);
  return answer.text();
}
