import type { ReactiveControllerHost } from "lit";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { DragPace } from "../../../packages/ui/src/controllers/drag-pace.js";

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal("requestAnimationFrame", (act: () => void) => setTimeout(act, 16));
  vi.stubGlobal("cancelAnimationFrame", (timer: number) => clearTimeout(timer));
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

function paced() {
  const host = { addController: vi.fn(), requestUpdate: vi.fn() };
  return { host, pace: new DragPace(host as unknown as ReactiveControllerHost) };
}

const waitingOf = (pace: DragPace) =>
  (["above", "side", "panel", "below", "tables"] as const).filter((what) => pace.isWaiting(what)).join(" ");

describe("DragPace", () => {
  it("makes nothing wait while no hand drags", () => {
    const { pace } = paced();
    expect(waitingOf(pace)).toBe("");
    expect(pace.isDragging).toBe(false);
  });

  it("makes all wait through a drag; once the hand has rested, one thing follows a frame", () => {
    const { pace, host } = paced();
    for (let step = 0; step < 20; step += 1) {
      pace.note();
      vi.advanceTimersByTime(50);
      expect(waitingOf(pace)).toBe("panel below tables");
    }
    expect(host.requestUpdate).not.toHaveBeenCalled();
    const seen: string[] = [];
    host.requestUpdate.mockImplementation(() => seen.push(waitingOf(pace)));
    vi.advanceTimersByTime(250);
    expect(seen).toEqual(["panel below tables"]);
    expect(pace.isDragging).toBe(true);
    vi.advanceTimersByTime(100);
    expect(seen).toEqual(["panel below tables", "below tables", "tables", ""]);
    expect(pace.isDragging).toBe(false);
  });

  it.each([
    [16, 232],
    [120, 440],
    [199, 500],
  ])("with a step every %i ms takes %i ms without one for rest", (between, rest) => {
    const { pace, host } = paced();
    for (let step = 0; step < 5; step += 1) {
      if (step > 0) vi.advanceTimersByTime(between);
      pace.note();
    }
    vi.advanceTimersByTime(rest - 1);
    expect(host.requestUpdate).not.toHaveBeenCalled();
    vi.advanceTimersByTime(1);
    expect(host.requestUpdate).toHaveBeenCalledOnce();
  });

  it("makes the other drawing wait, too, which follows first; none of them where a field is under the hand", () => {
    const { pace } = paced();
    pace.held = "side";
    pace.note();
    expect(waitingOf(pace)).toBe("above panel below tables");
    vi.advanceTimersByTime(200);
    expect(waitingOf(pace)).toBe("panel below tables");
    pace.held = undefined;
    pace.note();
    expect(waitingOf(pace)).toBe("panel below tables");
  });

  it("makes all wait again when the hand goes on before all has followed", () => {
    const { pace, host } = paced();
    pace.note();
    vi.advanceTimersByTime(200);
    pace.note();
    vi.advanceTimersByTime(100);
    expect(waitingOf(pace)).toBe("panel below tables");
    expect(host.requestUpdate).toHaveBeenCalledTimes(1);
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
