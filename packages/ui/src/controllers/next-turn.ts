/**
 * The next frame, or the next task if that begins sooner: what a hand does is then drawn in the frame it belongs to, and
 * what a check brings is drawn before it, apart from all else that a frame has to do.
 */
export const nextTurn = (): Promise<unknown> =>
  new Promise((resolve) => {
    requestAnimationFrame(resolve);
    setTimeout(resolve);
  });
