declare module "*?raw" {
  const text: string;
  export default text;
}

declare module "*?url" {
  const address: string;
  export default address;
}

/** A plan that was checked when the page was built. */
declare module "*?plan" {
  import type { Plan } from "@headfall/hydraulics";

  const plan: Plan;
  export default plan;
}
