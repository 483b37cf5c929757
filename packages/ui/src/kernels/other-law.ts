import type { FrictionLaw } from "@headfall/hydraulics";

/** The law that is not this one: the second opinion. */
export function otherLaw(law: FrictionLaw): FrictionLaw {
  return law === "hazenWilliams" ? "darcyWeisbach" : "hazenWilliams";
}
