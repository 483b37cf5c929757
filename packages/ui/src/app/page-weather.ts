import { HeadfallWeather } from "../weather/weather-element.js";
import { RAIN_EXAMPLES } from "./rain-examples.js";

/** The room of frost and heat with the records that come with the page: those of rain have the air of each day too. */
export class PageWeather extends HeadfallWeather {
  constructor() {
    super();
    this.examples = RAIN_EXAMPLES.map((example) => ({
      name: example.name,
      from: example.from,
      options: {
        degrees: "C",
        ...(example.options.place === undefined ? {} : { place: example.options.place }),
      },
      text: () => example.text(),
    }));
  }
}
