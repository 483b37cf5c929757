// Made from reference-tables/soils, threads, holes and stock-lengths.csv by reference-tables/compile-tables.mjs. Edit the tables, not this file.
import type { Hole, Soil, StockLength, Thread } from "./building-types.js";

export const soils: readonly Soil[] = [
  {"id":"clay","name":"clay, silt, or clay with sand","pressure":71820,"citation":{"source":"awc-dca-6","where":"notes of the tables, 1,500 psf","seen":"seen"}},
  {"id":"gravel","name":"gravel, or gravel with sand","pressure":143640,"citation":{"source":"irc-r401","where":"table R401.4.1, 3,000 psf","seen":"from memory"}},
  {"id":"rock","name":"solid rock","pressure":574560,"citation":{"source":"irc-r401","where":"table R401.4.1, 12,000 psf","seen":"from memory"}},
  {"id":"sand","name":"sand, or sand and gravel with silt or clay","pressure":95760,"citation":{"source":"irc-r401","where":"table R401.4.1, 2,000 psf","seen":"from memory"}},
  {"id":"split-rock","name":"layered or splitting rock","pressure":191520,"citation":{"source":"irc-r401","where":"table R401.4.1, 4,000 psf","seen":"from memory"}},
];

export const threads: readonly Thread[] = [
  {"id":"bsp-1","kind":"bsp","size":"1","name":"BSP thread, 1 in","major":0.033249,"perInch":11,"hole":0.034,"tap":0.0305,"citation":{"source":"iso-7-1","where":"table of dimensions","seen":"from memory"}},
  {"id":"bsp-1/2","kind":"bsp","size":"1/2","name":"BSP thread, 1/2 in","major":0.020955,"perInch":14,"hole":0.0215,"tap":0.01875,"citation":{"source":"iso-7-1","where":"table of dimensions","seen":"from memory"}},
  {"id":"bsp-3/4","kind":"bsp","size":"3/4","name":"BSP thread, 3/4 in","major":0.026441,"perInch":14,"hole":0.027,"tap":0.02425,"citation":{"source":"iso-7-1","where":"table of dimensions","seen":"from memory"}},
  {"id":"ght-3/4","kind":"ght","size":"3/4","name":"garden hose thread, 3/4 in","major":0.02699,"perInch":11.5,"hole":0.0275,"tap":0,"citation":{"source":"asme-b1-20-7","where":"basic major diameter 1.0625 in","seen":"from memory"}},
  {"id":"npt-1","kind":"npt","size":"1","name":"NPT thread, 1 in","major":0.033228,"perInch":11.5,"hole":0.034,"tap":0.029,"citation":{"source":"asme-b1-20-1","where":"outside diameter of pipe 1.315 in; table of threads","seen":"from memory"}},
  {"id":"npt-1/2","kind":"npt","size":"1/2","name":"NPT thread, 1/2 in","major":0.021224,"perInch":14,"hole":0.022,"tap":0.0183,"citation":{"source":"asme-b1-20-1","where":"outside diameter of pipe 0.840 in; table of threads","seen":"from memory"}},
  {"id":"npt-1/8","kind":"npt","size":"1/8","name":"NPT thread, 1/8 in","major":0.010242,"perInch":27,"hole":0.0105,"tap":0.0086,"citation":{"source":"asme-b1-20-1","where":"outside diameter of pipe 0.405 in; table of threads","seen":"from memory"}},
  {"id":"npt-3/4","kind":"npt","size":"3/4","name":"NPT thread, 3/4 in","major":0.026568,"perInch":14,"hole":0.027,"tap":0.0238,"citation":{"source":"asme-b1-20-1","where":"outside diameter of pipe 1.050 in; table of threads","seen":"from memory"}},
];

export const holes: readonly Hole[] = [
  {"id":"bulkhead-1","part":"bulkhead","name":"bulkhead fitting, 1 in","thread":"npt-1","hole":0.0445,"holeLow":0.041,"holeHigh":0.048,"citation":{"source":"common-practice","where":"patterns sold","seen":"from memory"}},
  {"id":"bulkhead-1/2","part":"bulkhead","name":"bulkhead fitting, 1/2 in","thread":"npt-1/2","hole":0.032,"holeLow":0.028,"holeHigh":0.035,"citation":{"source":"common-practice","where":"patterns sold","seen":"from memory"}},
  {"id":"bulkhead-3/4","part":"bulkhead","name":"bulkhead fitting, 3/4 in","thread":"npt-3/4","hole":0.038,"holeLow":0.035,"holeHigh":0.042,"citation":{"source":"common-practice","where":"patterns sold","seen":"from memory"}},
  {"id":"grommet-nipple","part":"push-in nipple","name":"nipple pushed into a rubber grommet","thread":"","hole":0.0095,"holeLow":0.009,"holeHigh":0.011,"citation":{"source":"common-practice","where":"patterns sold","seen":"from memory"}},
  {"id":"screw-nipple","part":"screw-in nipple","name":"nipple screwed into plastic, 1/8 in thread","thread":"npt-1/8","hole":0.0087,"holeLow":0.0083,"holeHigh":0.009,"citation":{"source":"common-practice","where":"patterns sold","seen":"from memory"}},
];

export const stockLengths: readonly StockLength[] = [
  {"id":"copper","family":"copper","form":"stick","length":3.048,"citation":{"source":"common-practice","where":"lengths sold","seen":"from memory"}},
  {"id":"drip","family":"drip","form":"coil","length":30.48,"citation":{"source":"common-practice","where":"lengths sold","seen":"from memory"}},
  {"id":"hose","family":"hose","form":"coil","length":15.24,"citation":{"source":"common-practice","where":"lengths sold","seen":"from memory"}},
  {"id":"pe","family":"pe","form":"coil","length":25,"citation":{"source":"common-practice","where":"lengths sold","seen":"from memory"}},
  {"id":"pex","family":"pex","form":"coil","length":30.48,"citation":{"source":"common-practice","where":"lengths sold","seen":"from memory"}},
  {"id":"pvc","family":"pvc","form":"stick","length":3.048,"citation":{"source":"common-practice","where":"lengths sold","seen":"from memory"}},
  {"id":"pvcu","family":"pvcu","form":"stick","length":3,"citation":{"source":"common-practice","where":"lengths sold","seen":"from memory"}},
];
