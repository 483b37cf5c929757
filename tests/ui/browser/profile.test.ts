import type { HeadfallProfile } from "@headfall/ui";
import { afterEach, expect, test } from "vitest";
import { accessibilityFaults } from "./accessibility.js";
import { profileShown } from "./profile-host.js";

afterEach(() => document.body.replaceChildren());

const texts = (profile: HeadfallProfile) =>
  [...profile.shadowRoot!.querySelectorAll("text, figcaption")].map((node) =>
    node.textContent!.replace(/\s+/g, " ").trim(),
  );

test("headfall-profile has nothing that axe objects to, and says its verdicts in its name", async () => {
  const profile = await profileShown(["good", "drips"]);
  expect(await accessibilityFaults(profile)).toEqual([]);
  expect(profile.shadowRoot!.querySelector("figure > svg")!.getAttribute("aria-label")).toContain(
    "1 drips, 1 good",
  );
});

test("headfall-profile draws one mark for each drinker, by its verdict's shape", async () => {
  const profile = await profileShown(["good", "good", "drips", "starves", "dry"]);
  const marks = [...profile.shadowRoot!.querySelectorAll("figure > svg .mark")];
  expect(marks.map((mark) => mark.classList[1])).toEqual(["good", "good", "drips", "starves", "dry"]);
  expect(new Set(marks.map((mark) => mark.getAttribute("d"))).size).toBe(4);
});

test("headfall-profile states how much larger heights and losses are drawn than lengths", async () => {
  const profile = await profileShown(["good", "good"]);
  expect(texts(profile).join(" ")).toMatch(/Heights drawn [\d.]+ times lengths, losses [\d.]+ times/);
});

test("headfall-profile measures the head of the drinker looked at", async () => {
  // Drinker 1: surface 1.2 m, 1 cm lost, at 0.44 m.
  expect(texts(await profileShown(["good"]))).toContain("head 75 cm");
});

test("when the drawing is pressed near a drinker, that drinker is chosen", async () => {
  const profile = await profileShown(["good", "good", "good"]);
  let chosen = -1;
  profile.addEventListener("drinker-chosen", (event) => {
    chosen = event.drinker;
  });
  const mark = profile.shadowRoot!.querySelectorAll("figure > svg .mark")[2]!.getBoundingClientRect();
  const at = { clientX: mark.x + mark.width / 2, clientY: mark.y, bubbles: true };
  profile.shadowRoot!.querySelector("figure")!.dispatchEvent(new MouseEvent("click", at));
  expect(chosen).toBe(2);
});

test("when its box becomes wider, the drawing follows", async () => {
  const profile = await profileShown(["good"]);
  profile.parentElement!.style.width = "700px";
  await expect
    .poll(() => profile.shadowRoot!.querySelector("figure > svg")!.getAttribute("viewBox"))
    .toBe("0 0 700 420");
});
