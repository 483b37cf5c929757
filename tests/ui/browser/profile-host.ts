import type { VerdictName } from "@headfall/hydraulics";
import { HeadfallProfile, pathToDrinker } from "@headfall/ui";
import { expect } from "vitest";
import "../../../packages/ui/src/define.js";
import { smallChecked } from "../fixtures/small-line.js";

/** The small line from the side, drawn, in a box on the page. */
export async function profileShown(
  verdicts: readonly VerdictName[],
  { width = 340, scheme = "light" } = {},
): Promise<HeadfallProfile> {
  const profile = new HeadfallProfile();
  const checked = smallChecked({ verdicts });
  const path = pathToDrinker(checked.line, 0);
  Object.assign(profile, { checked, path, moment: "fullBusiest", drinker: 0 });
  const box = document.createElement("div");
  box.style.width = `${width}px`;
  box.style.colorScheme = scheme;
  box.append(profile);
  document.body.append(box);
  await expect.poll(() => profile.shadowRoot?.querySelector("figure svg")).not.toBeNull();
  return profile;
}
