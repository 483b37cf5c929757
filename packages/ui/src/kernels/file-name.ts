const LONGEST = 80;

/** A name that every system takes for a file: "Alder Bank: hen house" becomes "alder-bank-hen-house.json". */
export function fileNameOf(words: string, ending: string): string {
  const name = words
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-/, "")
    .slice(0, LONGEST)
    .replace(/-$/, "");
  return `${name === "" ? "line" : name}.${ending}`;
}
