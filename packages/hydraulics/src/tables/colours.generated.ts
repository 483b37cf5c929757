// Made from reference-tables/colours.csv by reference-tables/compile-tables.mjs. Edit the table, not this file.
import type { SunColour } from "./weather-types.js";

export const sunColours: readonly SunColour[] = [
  {"id":"black","name":"black","absorptance":0.95,"absorptanceLow":0.9,"absorptanceHigh":0.98,"citation":{"source":"duffie-beckman","where":"table of absorptances","seen":"from memory"}},
  {"id":"bright-metal","name":"bright metal","absorptance":0.5,"absorptanceLow":0.3,"absorptanceHigh":0.65,"citation":{"source":"duffie-beckman","where":"table of absorptances","seen":"from memory"}},
  {"id":"dark","name":"dark: green, brown or blue","absorptance":0.9,"absorptanceLow":0.8,"absorptanceHigh":0.95,"citation":{"source":"duffie-beckman","where":"table of absorptances","seen":"from memory"}},
  {"id":"grey","name":"grey","absorptance":0.7,"absorptanceLow":0.6,"absorptanceHigh":0.8,"citation":{"source":"duffie-beckman","where":"table of absorptances","seen":"from memory"}},
  {"id":"white","name":"white","absorptance":0.3,"absorptanceLow":0.2,"absorptanceHigh":0.4,"citation":{"source":"duffie-beckman","where":"table of absorptances","seen":"from memory"}},
];
