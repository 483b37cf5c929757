import type { Random } from "../../numerics/random.js";
import { placeIndex, SEEING, type Seen, weakBelow } from "./chances.js";
import type { Expectation } from "./expectation.js";
import { ANSWERS, type Look, type Sign } from "./signs.js";

/** How a rehearsed keeper errs: not how the answer reckons with it, but of the same size. */
const KEEPER = {
  /** Chance that what is told is any of the answers instead. */
  mistakes: 0.02,
  /** Noise of what is judged by eye, as a logarithm. */
  eye: 0.25,
  /** Noise of a level read off a stick [m]. */
  stick: 0.002,
} as const;

/** What a keeper says to a look at a line in a true state: thresholds by eye, and now and then a mistake. */
export function answerOfKeeper(look: Look, truth: Expectation, seen: Seen, random: Random): Sign {
  const answers: readonly string[] = ANSWERS[look.look];
  const honest = seenByEye(look, truth, seen, random);
  const sees = random.uniform() < KEEPER.mistakes ? answers[random.integerBelow(answers.length)] : honest;
  return { ...look, sees };
}

function seenByEye(look: Look, truth: Expectation, { usual, places }: Seen, random: Random): string {
  const index = placeIndex(look, places);
  const eye = () => Math.exp(KEEPER.eye * random.normal());
  const stick = () => KEEPER.stick * random.normal();
  switch (look.look) {
    case "gives": {
      const flow = truth.flow[index] * eye();
      const weak = weakBelow(usual.need[index], usual.flow[index]);
      return flow < SEEING.dryShare * weak ? "dry" : flow < weak ? "weak" : "fine";
    }
    case "drips":
      return truth.overSeal[index] + 0.08 * random.normal() > 0 ? "drips" : "holds";
    case "night": {
      const { nightFall, nightUsual } = truth.sources[index];
      return nightFall - nightUsual + stick() > SEEING.reading ? "falls" : "holds";
    }
    case "day": {
      const { dayFall, dayUsual } = truth.sources[index];
      const ratio = Math.max(0, dayFall * eye() + stick()) / Math.max(dayUsual, 1e-3);
      if (ratio < SEEING.stillShare) return "still";
      return ratio < SEEING.lessShare ? "less" : ratio > SEEING.fasterShare ? "faster" : "asMarked";
    }
    case "water": {
      const { timeToEmpty, below } = truth.sources[index];
      if (timeToEmpty * eye() < usual.lastSeen) return "empty";
      return below + 5 * stick() > SEEING.lowBy ? "low" : "asThought";
    }
    case "ground":
      return truth.leaks.some(
        ({ at, index: i, run, flow }) =>
          flow * eye() > SEEING.wettingFlow &&
          ((at === look.at && i === index) ||
            (look.at === "run" && run === index && random.uniform() < SEEING.wetAlongRun)),
      )
        ? "wet"
        : "dry";
    case "end": {
      const share = truth.endShare(index) * eye();
      return share > SEEING.littleShare ? "plenty" : share > SEEING.nothingShare ? "little" : "nothing";
    }
    case "lid":
      return truth.lidGain(index) * Math.exp(0.05 * random.normal()) > SEEING.lidGain ? "helps" : "noChange";
  }
}
