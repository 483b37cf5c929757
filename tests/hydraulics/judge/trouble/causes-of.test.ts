import { expect, test } from "vitest";
import { askAboutTrouble } from "../../../../packages/hydraulics/src/judge/trouble/ask-about-trouble.js";
import { causesOf } from "../../../../packages/hydraulics/src/judge/trouble/causes-of.js";
import { headerTank } from "../header-tank.js";
import { ASKED_ON, planOf } from "./ask.js";

test("causesOf a line of many drinkers tries those looked at and others evenly among them, no more than it says", () => {
  const drinkers = { id: "lane", kind: "nipple-side-action", count: 52, every: "10 cm" };
  const asking = askAboutTrouble(
    planOf({
      headfall: 1,
      sources: [{ vessel: "drum-55gal-plastic", stand: "1 m" }],
      runs: [{ length: "6 m", drinkers }],
    }),
  );
  if (!asking.ok) throw new Error(JSON.stringify(asking.problems));
  const { bench, usual } = asking.question;
  const { candidates, drinkersTried } = causesOf(bench, usual, []);
  expect(drinkersTried).toBe(48);
  const blocked = candidates.filter(({ cause }) => cause.code === "drinkerBlocked");
  expect(new Set(blocked.map(({ cause }) => cause.id)).size).toBe(drinkersTried);
});

test("causesOf a header tank: water is low in what fills it, never in the tank by itself", () => {
  const asking = askAboutTrouble(planOf(headerTank), { day: ASKED_ON });
  if (!asking.ok) throw new Error(JSON.stringify(asking.problems));
  const { bench, usual } = asking.question;
  const low = causesOf(bench, usual, []).candidates.filter(({ cause }) => cause.code === "waterLow");
  expect(low.map(({ cause }) => cause.id)).toEqual(["tote"]);
});
