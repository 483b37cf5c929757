import type { Plan } from "@headfall/hydraulics";
import henHouse from "../../../../docs/examples/alder-bank-hen-house.json?plan";
import rainBarrel from "../../../../docs/examples/alder-bank-rain-barrel.json?plan";
import twoPens from "../../../../docs/examples/alder-bank-two-pens.json?plan";

/** The plans that come with the page; the first is shown on a first visit. */
export const EXAMPLES: readonly Plan[] = [henHouse, rainBarrel, twoPens];
