/*
 * The caller's own mistakes: each check names the function, the parameter, the value and the range,
 * in one line, and throws RangeError. Documents are never checked here; they become problems as data.
 */

const shown = (value: unknown): string => (typeof value === "number" ? String(value) : typeof value);

/** Throws RangeError unless every value named is a finite number. */
export function requireFinite(owner: string, values: Readonly<Record<string, number>>): void {
  for (const name in values) {
    const value = values[name];
    if (!Number.isFinite(value)) {
      throw new RangeError(`${owner}: ${name} is ${shown(value)}; it must be a finite number`);
    }
  }
}

/** Throws RangeError unless every value named is finite and above zero. */
export function requirePositive(owner: string, values: Readonly<Record<string, number>>): void {
  for (const name in values) {
    const value = values[name];
    if (!(Number.isFinite(value) && value > 0)) {
      throw new RangeError(`${owner}: ${name} is ${shown(value)}; it must be finite and above 0`);
    }
  }
}

/** Throws RangeError unless every value named is finite and not below zero. */
export function requireNotNegative(owner: string, values: Readonly<Record<string, number>>): void {
  for (const name in values) {
    const value = values[name];
    if (!(Number.isFinite(value) && value >= 0)) {
      throw new RangeError(`${owner}: ${name} is ${shown(value)}; it must be finite and not below 0`);
    }
  }
}

/** Throws RangeError unless the value lies from least to greatest, both included. */
export function requireBetween(
  owner: string,
  name: string,
  value: number,
  range: { readonly least: number; readonly greatest: number },
): void {
  if (!(value >= range.least && value <= range.greatest)) {
    throw new RangeError(
      `${owner}: ${name} is ${shown(value)}; it must be from ${range.least} to ${range.greatest}`,
    );
  }
}
