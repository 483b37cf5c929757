const CHANNEL = "headfall-plans";

/** Tells the other tabs of this browser that a plan was saved, and hears it from them. What was saved they read. */
export class Tabs {
  readonly #channel: BroadcastChannel | undefined;

  /** @param onSaved  told the id of a plan that another tab has saved, renamed or deleted */
  constructor(onSaved: (id: string) => void) {
    // Without it, two tabs notice each other when they save, or when one comes to the front.
    this.#channel = "BroadcastChannel" in globalThis ? new BroadcastChannel(CHANNEL) : undefined;
    this.#channel?.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
      if (typeof data === "string") onSaved(data);
    });
  }

  tell(id: string): void {
    this.#channel?.postMessage(id);
  }

  close(): void {
    this.#channel?.close();
  }
}
