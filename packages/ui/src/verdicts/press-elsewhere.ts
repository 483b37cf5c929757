/** A press that moves farther than this is a drag, not a press [px]. */
const STILL = 8;

/** Watches for a press outside of an element, and for Escape anywhere, while started. */
export interface PressWatch {
  start(): void;
  stop(): void;
}

/**
 * Calls `close` when its user presses elsewhere without dragging, or presses Escape where nothing else takes it. A press
 * on a field to type or choose in does not count, nor one on another number.
 */
export function closesOnPress(element: HTMLElement, close: () => void): PressWatch {
  let down: { x: number; y: number } | undefined;
  const isElsewhere = (event: Event) =>
    !event.composedPath().some((node) => node === element || isToStay(node));
  const pressed = (event: PointerEvent) => {
    down = isElsewhere(event) ? { x: event.clientX, y: event.clientY } : undefined;
  };
  const released = (event: PointerEvent) => {
    const isStill = down !== undefined && Math.hypot(event.clientX - down.x, event.clientY - down.y) < STILL;
    down = undefined;
    if (isStill) close();
  };
  const typed = (event: KeyboardEvent) => {
    if (event.key === "Escape" && !event.defaultPrevented) close();
  };
  let stopping: AbortController | undefined;
  return {
    start() {
      stopping?.abort();
      stopping = new AbortController();
      const { signal } = stopping;
      document.addEventListener("pointerdown", pressed, { signal, capture: true });
      document.addEventListener("pointerup", released, { signal, capture: true });
      document.addEventListener("keydown", typed, { signal });
    },
    stop() {
      stopping?.abort();
      stopping = undefined;
    },
  };
}

const isToStay = (node: EventTarget): boolean =>
  node instanceof Element && node.matches("input, select, textarea, label, [data-how]");

/** What has the focus, looked for inside of elements too: a button, or a part of a drawing. */
export function focusedNow(): HTMLElement | SVGElement | undefined {
  let focused = document.activeElement;
  while (focused?.shadowRoot?.activeElement) focused = focused.shadowRoot.activeElement;
  return focused instanceof HTMLElement || focused instanceof SVGElement ? focused : undefined;
}
