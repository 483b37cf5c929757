/** Has something done once the frame that is now being made has been shown: what can wait must not hold that up. */
export function afterPaint(act: () => unknown): void {
  requestAnimationFrame(() => setTimeout(act));
}
