/**
 * Anything a record may hold, as text to keep: JSON where it can be written so, the rest in words, so that a
 * damaged record can always be taken out.
 */
export function writeRaw(value: unknown): string {
  const above = new WeakSet<object>();
  const written = JSON.stringify(
    value,
    (_key, part: unknown) => {
      if (typeof part === "bigint") return `${part}`;
      if (part instanceof Map || part instanceof Set) return [...part];
      if (typeof part !== "object" || part === null) return part;
      if (above.has(part)) return "(the same as above)";
      above.add(part);
      return part;
    },
    2,
  );
  return `${written ?? "null"}\n`;
}
