/** Numbered names of one base, in the order in which they were given. */
interface Kin {
  readonly base: string;
  readonly numbers: number[];
}

/**
 * Names with their numbers drawn together: "hen line 1 to 4 and 7, barrel". In the order given.
 *
 * @example writeNames(["hen line 1", "hen line 2", "hen line 3"])   // "hen line 1 to 3"
 */
export function writeNames(names: readonly string[]): string {
  const kin: Kin[] = [];
  for (const name of names) {
    const [, base, digits] = /^(.*) (\d{1,9})$/.exec(name) ?? [];
    const same =
      base === undefined ? undefined : kin.find((one) => one.base === base && one.numbers.length > 0);
    if (same !== undefined) same.numbers.push(Number(digits));
    else kin.push({ base: base ?? name, numbers: base === undefined ? [] : [Number(digits)] });
  }
  const parts = kin.map(({ base, numbers }) =>
    numbers.length === 0 ? base : `${base} ${listed(rangesOf(numbers))}`,
  );
  return kin.length === 1 || kin.every(({ numbers }) => numbers.length < 2)
    ? listed(parts)
    : parts.join("; ");
}

function rangesOf(numbers: readonly number[]): string[] {
  const ranges: { from: number; to: number }[] = [];
  for (const number of [...numbers].sort((a, b) => a - b)) {
    const last = ranges[ranges.length - 1];
    if (last !== undefined && number === last.to + 1) last.to = number;
    else ranges.push({ from: number, to: number });
  }
  return ranges.flatMap(({ from, to }) =>
    to === from ? [String(from)] : to === from + 1 ? [String(from), String(to)] : [`${from} to ${to}`],
  );
}

/** "a", "a and b", "a, b and c". */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} and ${words[words.length - 1]}`;
}
