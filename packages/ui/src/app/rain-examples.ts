import weather from "../../../../node_modules/vega-datasets/data/weather.csv?url";
import type { RainExample } from "../rain/rain-example.js";

const FROM =
  "From the file weather.csv of vega-datasets 3.2.1 (code under BSD-3-Clause; the file is marked there as a data set of the US Government, from NOAA's daily records). Its makers have changed it and call it a starting point: good to try this page with, no advice on a climate.";

/** Fetched only when a record of it is chosen. */
async function text(): Promise<string> {
  const answer = await fetch(weather);
  if (!answer.ok) throw new Error(`answer ${answer.status}`);
  return answer.text();
}

/** The records of rain that come with the page: four years of two places. */
export const RAIN_EXAMPLES: readonly RainExample[] = ["Seattle", "New York"].map((place) => ({
  name: `${place}, 2012 to 2015`,
  from: FROM,
  options: { unit: "mm", place },
  text,
}));
