/** Tests of one mutant may take so long altogether, unless told otherwise, as long as they do while places are counted [ms]. */
const PATIENCE = 1500;
/** Its own file's tests always run, and so many others, however long: some places only a long test passes. */
const FEWEST = 3;
/** A place passed so many times as often as without the mutant, and some, is in a loop that does not end. */
const RUNAWAY = { times: 10, more: 10_000 };

/**
 * Plans which tests try a mutant: those that pass its place, those of its own file first, then the quickest. One in
 * what a file works out at the import, or calls then, is tried by the tests that pass that file or one that imports it,
 * too.
 *
 * @returns for each mutant the indices of its tests, how often its place may be passed, whether it is passed at the
 *   import, and which files of tests pass it before their tests
 */
export function planTrials({ mutants, importers, tests, atLoad, patience = PATIENCE }) {
  const sound = tests.map((test, index) => ({ ...test, index })).filter(({ failed }) => !failed);
  const byMutant = mutants.map(() => []);
  const most = new Float64Array(mutants.length);
  for (const test of sound) {
    for (const [id, times] of test.places) {
      byMutant[id - 1].push(test);
      most[id - 1] = Math.max(most[id - 1], times);
    }
  }
  const loaded = new Map(Object.values(atLoad).flat());
  const filesAtLoad = filesByMutant(atLoad);
  const byFile = testsByFile(mutants, byMutant);
  return mutants.map((mutant, index) => {
    const isAtLoad = mutant.isStatic || loaded.has(mutant.id);
    const passing = isAtLoad
      ? [...byMutant[index], ...testsNear(mutant.file, byFile, importers), ...testsBeside(mutant.file, sound)]
      : byMutant[index];
    const times = Math.max(most[index], loaded.get(mutant.id) ?? 0);
    const described = ownFirst(mutant, filesAtLoad.get(mutant.id) ?? []).slice(0, FEWEST);
    const inThem = sound.filter(({ file }) => described.includes(file));
    return {
      mutant,
      indices: choose([...described, ownTests(mutant)], [...passing, ...inThem], patience),
      limit: times * RUNAWAY.times + RUNAWAY.more,
      isAtLoad,
      described,
    };
  });
}

/** Files of tests that pass each mutant before their tests. */
function filesByMutant(atLoad) {
  const files = new Map();
  for (const [file, places] of Object.entries(atLoad))
    for (const [id] of places) files.set(id, [...(files.get(id) ?? []), file]);
  return files;
}

const ownTests = ({ file }) => `tests/hydraulics/${file.replace(/\.ts$/, ".test.ts")}`;

/** Its own file's tests, then those of its folder, then others. */
function ownFirst(mutant, files) {
  const own = ownTests(mutant);
  const folder = own.slice(0, own.lastIndexOf("/"));
  const rank = (file) => (file === own ? 0 : file.startsWith(folder) ? 1 : 2);
  return files.filter((file) => file !== "").sort((a, b) => rank(a) - rank(b));
}

function testsByFile(mutants, byMutant) {
  const byFile = new Map();
  for (const [index, { file }] of mutants.entries()) {
    const all = byFile.get(file) ?? new Set();
    for (const test of byMutant[index]) all.add(test);
    byFile.set(file, all);
  }
  return byFile;
}

/** Tests that pass a file, or a file that imports it, or one that imports such a file. */
function testsNear(file, byFile, importers) {
  const around = [file, ...(importers.get(file) ?? [])];
  const near = around.flatMap((one) => [one, ...(importers.get(one) ?? [])]);
  return [...new Set(near.flatMap((one) => [...(byFile.get(one) ?? [])]))];
}

/** Tests that may read a figure of a file without passing any place in it. */
const testsBeside = (file, tests) =>
  tests.filter((test) => test.file.startsWith(`tests/hydraulics/${file.split("/")[0]}/`));

function choose(ownFiles, tests, patience) {
  const isOwn = (test) => ownFiles.includes(test.file);
  const sorted = [...new Set(tests)].sort((a, b) => a.time - b.time || a.index - b.index);
  const others = sorted.filter((test) => !isOwn(test));
  let spent = 0;
  const quick = others.filter(({ time }, at) => {
    spent += time;
    return at < FEWEST || spent <= patience;
  });
  return [...sorted.filter(isOwn), ...quick].map(({ index }) => index);
}
