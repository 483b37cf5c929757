import "@headfall/ui/define";
import { checkPlan, type Plan, readPlan, writeProblem } from "@headfall/hydraulics";
import { type EditWantedEvent, type GestureGivenUpEvent, type HeadfallBirds, PlanStore } from "@headfall/ui";
import { readPreferences } from "./preferences.js";

/** Puts the element that a place asks for into it, with the plan that stands there. */
export async function showLive(place: HTMLElement): Promise<void> {
  const plan = await planOf(place);
  const { element = "headfall-line", units = "" } = place.dataset;
  const system = units === "us" ? "us" : readPreferences().units;
  const box = document.createElement("div");
  box.className = "stage";
  const store = new PlanStore(plan);
  box.append(
    element === "headfall-line" ? lineOf(store, system) : await roomOf(element, store, system),
    stepsOf(store, plan),
  );
  place.append(box);
}

async function planOf(place: HTMLElement): Promise<Plan> {
  const link = place.dataset["fromLink"] === undefined ? undefined : place.querySelector("a")!;
  const text = link === undefined ? place.querySelector("code")!.textContent : await fetchText(link.href);
  const reading = readPlan(text);
  if (reading.ok) return reading.plan;
  throw new Error(reading.problems.map((problem) => writeProblem(problem)).join("\n"));
}

async function fetchText(address: string): Promise<string> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return answer.text();
}

function lineOf(store: PlanStore, units: "metric" | "us"): HTMLElement {
  const line = document.createElement("headfall-line");
  line.units = units;
  line.store = store;
  return line;
}

/** A room is given the plan and what the check found; it says which edit is wanted, and is given the plan that came of it. */
async function roomOf(name: string, store: PlanStore, system: "metric" | "us"): Promise<HTMLElement> {
  await Promise.all([import("@headfall/ui/define-rest"), import("@headfall/ui/define-rooms")]);
  // All rooms are given the same.
  const room = document.createElement(name) as HeadfallBirds;
  room.system = system;
  room.day = new Date().toISOString().slice(0, 10);
  const show = (refusal: string): void => {
    // None of the rooms that documents show tells how sure it is.
    const checking = checkPlan(store.plan, { samples: 0 });
    room.plan = store.plan;
    room.refusal = refusal;
    if (checking.ok) room.checked = checking.checked;
  };
  room.addEventListener("edit-wanted", ({ change, gesture }: EditWantedEvent) => {
    const edited = store.edit(change, system, gesture);
    if (!edited.ok) show(edited.because);
  });
  room.addEventListener("gesture-given-up", ({ gesture }: GestureGivenUpEvent) => store.giveUp(gesture));
  store.listen(() => show(""));
  show("");
  return room;
}

/** What was changed here is kept nowhere: it can be put back, or taken along. */
function stepsOf(store: PlanStore, plan: Plan): HTMLElement {
  const row = document.createElement("p");
  row.className = "steps";
  const again = document.createElement("button");
  again.type = "button";
  again.textContent = "As it was";
  again.disabled = true;
  again.addEventListener("click", () => store.open(plan));
  store.listen((now) => {
    again.disabled = now === plan;
  });
  row.append(again, " Change anything here; nothing of it is kept.");
  return row;
}
