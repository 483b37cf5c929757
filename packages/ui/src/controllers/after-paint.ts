/**
 * Has something done once the frame that is now being made has been shown, in a task of its own: what can wait must not
 * hold that up.
 *
 * @returns takes it back, as long as it is not done
 */
export function afterPaint(act: () => unknown): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const frame = requestAnimationFrame(() => {
    timer = setTimeout(act);
  });
  return () => {
    cancelAnimationFrame(frame);
    clearTimeout(timer);
  };
}
