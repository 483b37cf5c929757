import { type Plan, readPlan } from "@headfall/hydraulics";
import henHouse from "../../../../docs/examples/alder-bank-hen-house.json?raw";
import rainBarrel from "../../../../docs/examples/alder-bank-rain-barrel.json?raw";
import twoPens from "../../../../docs/examples/alder-bank-two-pens.json?raw";

/** The plans that come with the page; the first is shown on a first visit. */
export const EXAMPLES: readonly Plan[] = [henHouse, rainBarrel, twoPens].flatMap((text) => {
  const reading = readPlan(text);
  return reading.ok ? [reading.plan] : [];
});
