import type { ReactiveControllerHost } from "lit";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { DragPace } from "../../../packages/ui/src/controllers/drag-pace.js";

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

function paced() {
  const host = { addController: vi.fn(), requestUpdate: vi.fn() };
  return { host, pace: new DragPace(host as unknown as ReactiveControllerHost) };
}

describe("DragPace", () => {
  it("makes nothing wait while no hand drags", () => {
    const { pace } = paced();
    expect(pace.resting).not.toBe(pace.resting);
    expect(pace.following).not.toBe(pace.following);
  });

  it("keeps what can wait as it is through a drag, and has it drawn once the hand has rested", () => {
    const { pace, host } = paced();
    pace.note();
    const before = pace.resting;
    for (let step = 0; step < 20; step += 1) {
      vi.advanceTimersByTime(50);
      pace.note();
      expect(pace.resting).toBe(before);
    }
    expect(host.requestUpdate).not.toHaveBeenCalled();
    vi.advanceTimersByTime(200);
    expect(host.requestUpdate).toHaveBeenCalledTimes(1);
    expect(pace.isDragging).toBe(false);
    expect(pace.resting).not.toBe(before);
  });

  it("lets what follows now and then do so a few times a second", () => {
    const { pace } = paced();
    const seen = new Set<object>();
    for (let step = 0; step < 60; step += 1) {
      pace.note();
      vi.advanceTimersByTime(16);
      seen.add(pace.following);
    }
    // What was there before, and then each 160 ms of these 960: the first step that comes later than 150 ms.
    expect(seen.size).toBe(7);
  });

  it("forgets a drag when its host goes", () => {
    const { pace, host } = paced();
    pace.note();
    pace.hostDisconnected();
    expect(pace.isDragging).toBe(false);
    vi.advanceTimersByTime(1000);
    expect(host.requestUpdate).not.toHaveBeenCalled();
  });
});
