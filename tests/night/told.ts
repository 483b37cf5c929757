/** The faults, or the one that nothing should throw. */
export function told(ask: () => string[]): string[] {
  try {
    return ask();
  } catch (error) {
    const stack = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return [`throws ${stack.split("\n").slice(0, 4).join(" | ")}`];
  }
}
