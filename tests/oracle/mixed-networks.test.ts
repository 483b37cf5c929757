import { describe, expect, it } from "vitest";
import { SEGMENT_KIND } from "../../packages/hydraulics/src/model/line.js";
import type { LineSolution } from "../../packages/hydraulics/src/solve/solution.js";
import { askPython, PYTHON_IS, readRecorded } from "./ask-python.js";
import { expectClose } from "./closeness.js";
import {
  compareNetwork,
  countFeatures,
  type Digest,
  digestOf,
  MIXED_BOUNDS,
  mixedNetworks,
  mixedQuestion,
  SAMPLE,
  solveMixed,
  THOUSAND,
  type ThousandNetworks,
} from "./compare-networks.js";
import { MIXED_FEATURES, type MixedNetwork } from "./mixed-networks.js";
import type { NetworkAnswer } from "./network-question.js";

/** As Python answers, or as the record keeps it: by seed. */
type Mixed = Record<string, NetworkAnswer | Digest>;

const isWhole = (answer: NetworkAnswer | Digest): answer is NetworkAnswer => "drinkerFlow" in answer;

describe(`solveLine on ${SAMPLE} of ${THOUSAND} networks of mixed features, against scipy and fluids, ${PYTHON_IS}`, () => {
  const networks = mixedNetworks(SAMPLE);
  const bySeed = new Map(networks.map((network) => [`${network.seed}`, network]));
  const solved = new Map(networks.map((network) => [`${network.seed}`, solveMixed(network)]));
  const asDigest = ([seed, answer]: [string, NetworkAnswer | Digest]): [string, Digest] => [
    seed,
    isWhole(answer) ? digestOf(bySeed.get(seed)!, solved.get(seed)!, answer) : answer,
  ];
  const { answer, recorded } = askPython<Mixed>("networks", mixedQuestion(networks), {
    name: "mixed-networks",
    digits: 9,
    keep: (all) => Object.fromEntries(Object.entries(all).map(asDigest)),
  });

  it("gives the same heads and flows on every one", () => {
    const apart = networks.flatMap((network) => {
      const theirs = answer[network.seed]!;
      if (!isWhole(theirs)) return [];
      const { head, flow, trouble } = compareNetwork(network, theirs, solved.get(`${network.seed}`)!);
      const isSame = trouble === undefined && head <= MIXED_BOUNDS.head && flow <= MIXED_BOUNDS.flow;
      return isSame ? [] : [{ seed: network.seed, head, flow, trouble }];
    });
    expect(apart).toEqual([]);
  });

  it.each([
    ["the other answers", answer],
    ["what was recorded", recorded],
  ])("comes to the sums, least and most of %s", (_whose, theirs) => {
    expect(Object.keys(theirs)).toEqual([...bySeed.keys()]);
    for (const [seed, digest] of Object.entries(theirs).map(asDigest)) {
      const ours = digestOf(bySeed.get(seed)!, solved.get(seed)!, solved.get(seed)!);
      expectClose(`network ${seed}, heads`, ours.head, digest.head, { relative: 1e-7, absolute: 1e-6 });
      expectClose(`network ${seed}, drinkers`, ours.drinkers, digest.drinkers, {
        relative: 1e-6,
        absolute: 1e-11,
      });
    }
  });

  it("is asked of every feature, of valves that shut, and of regulators that hold and that do not", () => {
    for (const row of countFeatures(networks)) expect(row.networks, row.feature).toBeGreaterThanOrEqual(3);
    const seen = networks.flatMap((network) => devicesOf(network, solved.get(`${network.seed}`)!));
    for (const what of ["valve shut", "valve open", "regulator holds", "regulator open", "point cut off"]) {
      expect(seen.filter((one) => one === what).length, what).toBeGreaterThan(0);
    }
  });
});

/** What the devices of a network do once it is solved. */
function devicesOf(network: MixedNetwork, { flow, head, reached }: LineSolution): string[] {
  const devices = network.drawn.parts.pipes.flatMap(({ kind, from, to }, s) => {
    if (kind === SEGMENT_KIND.oneWay) return flow[s] === 0 ? "valve shut" : "valve open";
    if (kind !== SEGMENT_KIND.regulator || flow[s] === 0) return [];
    return head[from]! - head[to]! > 0.02 ? "regulator holds" : "regulator open";
  });
  return reached.includes(0) ? [...devices, "point cut off"] : devices;
}

describe("the stored figures of all networks", () => {
  const stored = readRecorded<ThousandNetworks>("thousand-networks");
  const counts = (rows: ThousandNetworks["rows"]) =>
    rows.map(({ feature, networks, points, pipes, drinkers }) => ({
      feature,
      networks,
      points,
      pipes,
      drinkers,
    }));

  it("are of the networks that are drawn now; else HEADFALL_RECORD=yes npm run oracle", () => {
    expect(counts(stored.rows)).toEqual(countFeatures(mixedNetworks(THOUSAND)));
    expect(stored.rows.map(({ feature }) => feature)).toEqual(["all", ...MIXED_FEATURES]);
  });

  it("are within the bounds the sample is held to", () => {
    expect(stored.troubles).toEqual([]);
    for (const { feature, head, flow, middleHead, middleFlow } of stored.rows) {
      expect(head, feature).toBeLessThanOrEqual(MIXED_BOUNDS.head);
      expect(flow, feature).toBeLessThanOrEqual(MIXED_BOUNDS.flow);
      expect(middleHead, feature).toBeLessThanOrEqual(head);
      expect(middleFlow, feature).toBeLessThanOrEqual(flow);
    }
  });
});
