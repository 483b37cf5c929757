// Made from reference-tables/frost-materials.csv by reference-tables/compile-tables.mjs. Edit the table, not this file.
import type { FrostMaterial } from "./weather-types.js";

export const frostMaterials: readonly FrostMaterial[] = [
  {"id":"copper","name":"copper","pipes":["copper"],"softensAbove":200,"bursts":true,"note":"ice bursts it; joints of soft solder soften first","citation":{"source":"common-practice","where":"frost and heat limits","seen":"from memory"}},
  {"id":"garden-hose","name":"soft PVC hose","pipes":["garden-hose"],"brittleBelow":-10,"softensAbove":50,"bursts":false,"note":"grows stiff and cracks when bent cold","citation":{"source":"common-practice","where":"frost and heat limits","seen":"from memory"}},
  {"id":"hdpe","name":"HDPE (drums, totes, buckets)","pipes":[],"brittleBelow":-40,"softensAbove":60,"bursts":true,"note":"tough when cold; a full closed vessel still splits","citation":{"source":"common-practice","where":"frost and heat limits","seen":"from memory"}},
  {"id":"pex","name":"PEX","pipes":["pex"],"brittleBelow":-40,"softensAbove":90,"bursts":false,"note":"stretches and comes back; its fittings do not","citation":{"source":"common-practice","where":"frost and heat limits","seen":"from memory"}},
  {"id":"polyethylene","name":"polyethylene pipe and drip tube","pipes":["polyethylene"],"brittleBelow":-40,"softensAbove":60,"bursts":false,"note":"stretches; its barbed fittings do not","citation":{"source":"common-practice","where":"frost and heat limits","seen":"from memory"}},
  {"id":"polypropylene","name":"polypropylene (founts, cups, fittings)","pipes":[],"brittleBelow":0,"softensAbove":90,"bursts":true,"note":"brittle near 0 to -10 degC","citation":{"source":"common-practice","where":"frost and heat limits","seen":"from memory"}},
  {"id":"pvc","name":"rigid PVC","pipes":["pvc"],"brittleBelow":0,"softensAbove":60,"bursts":true,"note":"a knock breaks it below about 0 degC; do not lean on it","citation":{"source":"common-practice","where":"frost and heat limits","seen":"from memory"}},
  {"id":"rubber","name":"rubber pans","pipes":[],"brittleBelow":-40,"softensAbove":80,"bursts":false,"note":"stamp or knock the ice out","citation":{"source":"common-practice","where":"frost and heat limits","seen":"from memory"}},
  {"id":"steel","name":"steel (drums, founts)","pipes":[],"softensAbove":200,"bursts":true,"note":"seams open when its ice swells","citation":{"source":"common-practice","where":"frost and heat limits","seen":"from memory"}},
];
