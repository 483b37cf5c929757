import { drawChart, type Series } from "./chart.js";
import { answerTo, casesOf, comparisonOf, givenNumber, spread } from "./points.js";

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;

/** Hours until a lagged pipe is at freezing, and ice that grows in a day, over the air. */
export function drawFrost(): string {
  const pipe = casesOf("freezing-pipes-2014", "timeToFreezing");
  const ice = casesOf("lake-ice-growth", "iceGrowth");
  const hours: Series = {
    name: "2 in pipe, lagged 1.5 in",
    curve: spread(-30, -0.5, 120).map((air) => [
      air,
      answerTo(pipe[0]!, { air: `${air} degC` }, { figure: "time", unit: "h" }),
    ]),
    points: pipe.map((one) => ({
      x: celsius(givenNumber(one, "air")),
      y: comparisonOf(one, "time")!.printed,
      within: one.tolerance.absolute!,
    })),
  };
  const growth = ice.map((one, k): Series => {
    const found = comparisonOf(one, "growth")!;
    return {
      name: k === 0 ? "wind, clear sky" : "calm or cloudy",
      curve: spread(-20, 0, 80).map((air) => [
        air,
        answerTo(one, { air: `${air} degC` }, { figure: "growth", unit: "mm" }),
      ]),
      points: [
        { x: celsius(givenNumber(one, "air")), y: found.printed * 25.4, within: found.allowed * 25.4 },
      ],
    };
  });
  return drawChart({
    title: "Frost: hours to freezing in a pipe, ice on still water",
    panels: [
      {
        x: { title: "air [°C]", from: -30, to: 0 },
        y: { title: "time from 5.6 °C to 0 °C [h]", from: 0, to: 12 },
        height: 210,
        series: [hours],
      },
      {
        x: { title: "air [°C]", from: -20, to: 0 },
        y: { title: "growth of 2 in of ice in a day [mm]", from: 0, to: 60 },
        height: 210,
        series: growth,
      },
    ],
    under: [
      "Points above: worked example of the handbook's equation on a page of forensic engineers, 2014 (seen), good to 0.05 h.",
      "Points below: a rule of thumb of a page on lake ice (seen), good to a third, as the bars show; our films of 15 and 7 W/(m² K)",
      "were chosen for wind and for calm. Only these few printed times are known to us; the lines lean on physics elsewhere.",
    ],
  });
}

/** A roof's year of water against a printed table, by square metre of roof. */
export function drawRoof(): string {
  const cases = casesOf("enhealth-2011", "roofYield");
  const perSquare = (one: (typeof cases)[number], cubic: number) => (1000 * cubic) / givenNumber(one, "area");
  const yields: Series = {
    name: "ours: 80 %, less 24 mm",
    curve: spread(0, 1300, 130).map((rain) => [
      rain,
      perSquare(cases[0]!, answerTo(cases[0]!, { rain: `${rain} mm` }, { figure: "volume", unit: "m3" })),
    ]),
  };
  const printed: Series = {
    name: "table B.1, by m² of roof",
    points: cases.map((one) => {
      const found = comparisonOf(one, "volume")!;
      return {
        x: givenNumber(one, "rain"),
        y: perSquare(one, found.printed),
        within: perSquare(one, found.allowed),
      };
    }),
  };
  return drawChart({
    title: "What a roof yields in a year",
    panels: [
      {
        x: { title: "rain in the year [mm]", from: 0, to: 1300 },
        y: { title: "water [L a m² of roof]", from: 0, to: 1000 },
        height: 300,
        series: [yields, printed],
      },
    ],
    under: [
      "Points: enHealth, Guidance on use of rainwater tanks, 2011, table B.1 (seen): eight of its cells, roofs of 100 to 500 m².",
      "Bars: what the case allows, since the table prints whole kilolitres, cut or rounded. Line: runOff.",
    ],
  });
}
