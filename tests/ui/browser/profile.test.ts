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
  // All of one verdict are one path; each of them begins with a move to its place.
  const marks = [...profile.shadowRoot!.querySelectorAll("figure > svg .mark")];
  const counted = marks.map((mark) => [mark.classList[1], mark.getAttribute("d")!.match(/M/g)!.length]);
  expect(counted).toEqual([
    ["good", 2],
    ["drips", 1],
    ["starves", 1],
    ["dry", 1],
  ]);
  const shapes = marks.map((mark) =>
    mark
      .getAttribute("d")!
      .split("M")[1]!
      .replace(/^[^m]*/, ""),
  );
  expect(new Set(shapes).size).toBe(4);
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
  const marks = profile.shadowRoot!.querySelector("figure > svg .mark")!.getBoundingClientRect();
  const at = { clientX: marks.right - 5, clientY: marks.y, bubbles: true };
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
