/**
 * Registers the rooms beside the line. They show numbers and drawings with the elements of
 * `define.ts` and `define-rest.ts`, which a page of one's own registers as well.
 */

import { HeadfallBirds } from "./birds/birds-element.js";
import { HeadfallBuild } from "./build/build-element.js";
import { HeadfallCure } from "./cure/cure-element.js";
import { HeadfallDay } from "./day/day-element.js";
import { HeadfallMishaps } from "./mishaps/mishaps-element.js";
import { HeadfallRain } from "./rain/rain-element.js";
import { HeadfallTime } from "./time/time-element.js";
import { HeadfallTrouble } from "./trouble/trouble-element.js";
import { HeadfallWeather } from "./weather/weather-element.js";
import { HeadfallYard } from "./yard/yard-element.js";
import { HeadfallYear } from "./year/year-element.js";

const elements = {
  "headfall-birds": HeadfallBirds,
  "headfall-build": HeadfallBuild,
  "headfall-cure": HeadfallCure,
  "headfall-day": HeadfallDay,
  "headfall-time": HeadfallTime,
  "headfall-rain": HeadfallRain,
  "headfall-mishaps": HeadfallMishaps,
  "headfall-trouble": HeadfallTrouble,
  "headfall-weather": HeadfallWeather,
  "headfall-yard": HeadfallYard,
  "headfall-year": HeadfallYear,
} as const;

for (const [name, element] of Object.entries(elements)) {
  if (customElements.get(name) === undefined) customElements.define(name, element);
}

declare global {
  interface HTMLElementTagNameMap {
    "headfall-birds": HeadfallBirds;
    "headfall-build": HeadfallBuild;
    "headfall-cure": HeadfallCure;
    "headfall-day": HeadfallDay;
    "headfall-time": HeadfallTime;
    "headfall-rain": HeadfallRain;
    "headfall-mishaps": HeadfallMishaps;
    "headfall-trouble": HeadfallTrouble;
    "headfall-weather": HeadfallWeather;
    "headfall-yard": HeadfallYard;
    "headfall-year": HeadfallYear;
  }
}
