import { type Plan, writeProblem } from "@headfall/hydraulics";
import { type LinkReading, readLink } from "../storage/share-link.js";
import type { Notice } from "./notice.js";

/** A plan that came by a link, or what was wrong with it. */
export interface LinkedPlan {
  readonly plan: Plan | undefined;
  readonly news: Notice;
}

/** Reads the plan in the page's own address and takes it out of there, so that it does not come again. */
export async function takeLink(): Promise<LinkedPlan> {
  const { hash } = location;
  history.replaceState(history.state, "", location.pathname + location.search);
  const reading = await readLink(hash);
  return {
    plan: reading.ok ? reading.plan : undefined,
    news: { key: "link", words: wordsFor(reading), acts: [] },
  };
}

function wordsFor(reading: LinkReading): string {
  if (reading.ok)
    return "This plan came by a link. It is now one of your own plans; whoever sent it keeps theirs.";
  const unharmed = "Your own plans are unharmed.";
  if (reading.because === "tooLarge")
    return `The link holds more than a plan can be, and was not opened. ${unharmed}`;
  const [problem] = reading.problems;
  if (problem !== undefined)
    return `The link holds no plan that can be opened: ${writeProblem(problem)} ${unharmed}`;
  return `The link is broken: part of it may have been cut off on the way. Ask for it again, or for the plan as a file. ${unharmed}`;
}
