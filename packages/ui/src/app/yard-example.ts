import yard from "../../../../docs/examples/alder-bank-yard.json?plan";

/** The example with loose waterers: it comes with the list of plans, not with the first look at the page. */
export const YARD_EXAMPLE = yard;
