import type { Plan } from "@headfall/hydraulics";
import { HeadfallBirds } from "../../../packages/ui/src/birds/birds-element.js";
import { HeadfallHow } from "../../../packages/ui/src/verdicts/how-element.js";
import { RoomHost, registerOnce } from "./room-host.js";

export { TODAY } from "./room-host.js";

registerOnce({ "headfall-birds": HeadfallBirds, "headfall-how": HeadfallHow });

export class BirdsHost extends RoomHost<HeadfallBirds> {
  constructor(plan: Plan) {
    super(document.createElement("headfall-birds") as HeadfallBirds, plan);
  }
}

/** The room on the page, drawn, its weeks judged. */
export async function birdsRoom(plan: Plan, width = 420): Promise<BirdsHost> {
  const host = await new BirdsHost(plan).place(width);
  const { view } = host;
  if (plan.pens !== undefined)
    await new Promise<void>((done) => {
      const look = () => (view.shadowRoot!.querySelector(".drunk") === null ? setTimeout(look, 20) : done());
      look();
    });
  return host;
}
