/**
 * The smallest plan that still fails: keys and entries are taken out, and lists cut down, as long as the fault
 * remains. `fails` must answer false for what is no valid plan.
 */
export function shrinkPlan<Data>(data: Data, fails: (data: Data) => boolean): Data {
  let smallest = data;
  for (let again = true; again; ) {
    again = false;
    for (const candidate of smaller(smallest)) {
      if (!fails(candidate as Data)) continue;
      smallest = candidate as Data;
      again = true;
      break;
    }
  }
  return smallest;
}

/** The value with one part less, largest parts first. */
function* smaller(value: unknown): Generator<unknown> {
  if (typeof value !== "object" || value === null) return;
  if (Array.isArray(value)) {
    for (let i = value.length - 1; i >= 0; i -= 1) yield value.filter((_, k) => k !== i);
    for (const [i, part] of value.entries()) {
      for (const less of smaller(part)) yield value.map((one, k) => (k === i ? less : one));
    }
    return;
  }
  const entries = Object.entries(value);
  for (const [key] of entries) yield Object.fromEntries(entries.filter(([other]) => other !== key));
  for (const [key, part] of entries) {
    for (const less of smaller(part)) yield { ...value, [key]: less };
    if (typeof part === "number" && part > 1) yield { ...value, [key]: Math.floor(part / 2) };
  }
}
