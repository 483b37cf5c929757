import type { PublishedCase } from "../case-file.js";
import { type Chart, drawChart, type Series } from "./chart.js";
import { answerTo, casesOf, comparisonOf, givenNumber, percentApart, spread } from "./points.js";

interface Rows {
  readonly source: string;
  readonly question: string;
  /** What a pipe is called in the cases: the words before this one are its size. */
  readonly sizeIn: RegExp;
  readonly flows: readonly [number, number];
  readonly losses: readonly [number, number];
  readonly percent: number;
}

/** Rows of a handbook's friction table: head lost over flow, a line of ours for each size of pipe; residuals below. */
function frictionChart(words: Pick<Chart, "title" | "under">, rows: Rows): string {
  const { flows, losses, percent } = rows;
  const cases = casesOf(rows.source, rows.question);
  const sizeOf = ({ what }: PublishedCase) => rows.sizeIn.exec(what)![1]!;
  const sizes = [...new Set(cases.map(sizeOf))];
  const flow = { title: "flow [US gal/min]", from: flows[0], to: flows[1], isLog: true };
  const losing = sizes.map((size): Series => {
    const ofSize = cases.filter((one) => sizeOf(one) === size);
    return {
      name: `${size} pipe`,
      curve: spread(flows[0], flows[1], 160, true).map((at) => [
        at,
        answerTo(ofSize[0]!, { flow: `${at} gpm` }, { figure: "headLoss", unit: "ft" }),
      ]),
      points: ofSize.map((one) => ({
        x: givenNumber(one, "flow"),
        y: comparisonOf(one, "headLoss")!.printed,
      })),
    };
  });
  const apart = sizes.map((size): Series => {
    const ofSize = cases.filter((one) => sizeOf(one) === size);
    return {
      name: size,
      points: ofSize.map((one) => {
        const loss = comparisonOf(one, "headLoss")!;
        return {
          x: givenNumber(one, "flow"),
          y: percentApart(loss),
          within: (100 * loss.allowed) / loss.printed,
        };
      }),
    };
  });
  return drawChart({
    ...words,
    panels: [
      {
        x: flow,
        y: { title: "head lost in 100 ft [ft]", from: losses[0], to: losses[1], isLog: true },
        height: 330,
        series: losing,
      },
      {
        x: flow,
        y: { title: "ours less printed [%]", from: -percent, to: percent },
        height: 150,
        series: apart,
        isKeyless: true,
      },
    ],
  });
}

export const drawFrictionSteel = (): string =>
  frictionChart(
    {
      title: "Friction in steel pipe: a handbook's rows and our Darcy-Weisbach",
      under: [
        "Points: Hydraulic Institute, Engineering Data Book, tables of water at 60 °F in Schedule 40 steel pipe (seen).",
        "Lines: headLossDarcyWeisbach with Churchill's factor, the table's bores and 0.00015 ft of roughness.",
        "The kinks are where flow turns from laminar to turbulent (Reynolds numbers of 2000 to 4000): there laws differ by two,",
        "and the handbook's own rows are not smooth. Bars: what the case allows.",
      ],
    },
    {
      source: "hydraulic-institute-edb",
      question: "frictionDarcyWeisbach",
      sizeIn: /of (\S+ in) Schedule/,
      flows: [0.01, 20],
      losses: [0.05, 200],
      percent: 45,
    },
  );

export const drawFrictionPlastic = (): string =>
  frictionChart(
    {
      title: "Friction in plastic pipe: rows of a code and our Hazen-Williams",
      under: [
        "Points: Illinois Administrative Code, Title 77, Part 906, Appendix A, Exhibit I: Schedule 40 plastic pipe, C 150 (seen).",
        "Lines: headLossHazenWilliams, C 150. The table prints no bores: outside less two least walls was taken.",
        "It prints hundredths of a foot, up to 14 % of its smallest figure. Bars: what the case allows.",
      ],
    },
    {
      source: "illinois-906-exhibit-i",
      question: "frictionHazenWilliams",
      sizeIn: /of (\S+ in) Schedule/,
      flows: [0.8, 30],
      losses: [0.04, 20],
      percent: 16,
    },
  );
