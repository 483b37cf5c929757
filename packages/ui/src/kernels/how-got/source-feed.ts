import { LAW_WORDS } from "@headfall/hydraulics";
import { constant, difference, power, product, quotient, term } from "./expression.js";
import { type HowGot, type Step, soundSteps, stepOf } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import { alwaysValid } from "./validity.js";

/** What the float valve of a header tank lets in while its supply is lowest. */
export function howSourceFeed(request: HowRequest, source: number): HowGot {
  const { checked, figures } = request;
  const { id } = checked.line.sources[source]!;
  const { feedFlow, feedKeepsUp, drawBusiest } = checked.sources[source]!;
  const byHazen = checked.solutions.lowestBusiest.hazenWilliams.feedFlow[source]!;
  return {
    title: `Flow that fills ${quoted(id)}`,
    result: feedFlow === undefined ? "nothing fills it" : figures.flow(feedFlow),
    steps: feedFlow === undefined || feedFlow <= 0 ? [] : soundSteps(feedStep(request, source)),
    valid: [alwaysValid("Flow through an opening", "for heads well above the size of the opening")],
    ...(feedFlow === undefined
      ? {}
      : {
          secondOpinion: {
            by: LAW_WORDS.hazenWilliams,
            result: figures.flow(byHazen),
            difference: figures.flowDifference(byHazen - feedFlow),
          },
        }),
    notes:
      feedFlow === undefined
        ? ["It is no header tank: people or rain fill it."]
        : [
            `With its float valve wide open, the water behind it lowest and the birds busiest, by ${LAW_WORDS.darcyWeisbach}.`,
            feedKeepsUp === true
              ? `It keeps up with the ${figures.flow(drawBusiest)} that is drawn.`
              : `It falls behind the ${figures.flow(drawBusiest)} that is drawn.`,
          ],
    sources: ["unwin-1911"],
  };
}

function feedStep({ checked, figures }: HowRequest, source: number): Step {
  const feed = checked.line.sources[source]!.feed!;
  const grade = checked.solutions.lowestBusiest.darcyWeisbach.head[feed.point]!;
  const coefficient = feed.coefficient * Math.sqrt(figures.unitHead);
  const unit = figures.system === "us" ? "1 ft" : "1 m";
  const write = figures.alike(grade, feed.height);
  const spare = difference(
    term("grade line before the valve", grade, write(grade)),
    term("height it comes out at", feed.height, write(feed.height)),
  );
  return stepOf(
    "flow",
    product(
      term(`flow of the open valve at ${unit}`, coefficient, figures.flowIn(coefficient)),
      power(quotient(spare, constant(figures.unitHead, unit)), 0.5),
    ),
    figures.flowIn,
  );
}
