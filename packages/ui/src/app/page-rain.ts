import { HeadfallRain } from "../rain/rain-element.js";
import { RAIN_EXAMPLES } from "./rain-examples.js";

/** The room of the rain with the records that come with the page. */
export class PageRain extends HeadfallRain {
  constructor() {
    super();
    this.examples = RAIN_EXAMPLES;
  }
}
