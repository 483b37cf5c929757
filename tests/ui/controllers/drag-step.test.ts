import { describe, expect, it } from "vitest";
import { DragStep } from "../../../packages/ui/src/controllers/drag-step.js";
import { nextTask } from "../../../packages/ui/src/controllers/next-task.js";
import { EditWantedEvent } from "../../../packages/ui/src/store/edit-wanted-event.js";

const lifted = (height: number, gesture: string) =>
  new EditWantedEvent({ kind: "setHeight", joint: "end", height }, gesture);
const landed = (gesture: string) =>
  new EditWantedEvent({ kind: "mergeJoints", joint: "end", into: "tee" }, gesture);

function steps() {
  const made: EditWantedEvent[] = [];
  return { made, step: new DragStep((wanted) => made.push(wanted)) };
}

describe("DragStep", () => {
  it("makes a step in a task of its own, and of several alike the last", async () => {
    const { made, step } = steps();
    const last = lifted(3, "hand 1");
    step.put(lifted(1, "hand 1"));
    step.put(lifted(2, "hand 1"));
    step.put(last);
    expect(made).toEqual([]);
    expect(step.isWaiting).toBe(true);
    await nextTask();
    expect(made).toEqual([last]);
    expect(step.isWaiting).toBe(false);
  });

  it("leaves out nothing of another kind, nor of another drag, and keeps their order", async () => {
    const { made, step } = steps();
    const wanted = [lifted(1, "hand 1"), landed("hand 1"), lifted(2, "hand 2")];
    for (const each of wanted) step.put(each);
    await nextTask();
    expect(made).toEqual(wanted);
  });

  it("makes it at once for one who asks for the plan, and not again", async () => {
    const { made, step } = steps();
    step.put(lifted(1, "hand 1"));
    step.makeNow();
    expect(made).toHaveLength(1);
    await nextTask();
    expect(made).toHaveLength(1);
  });

  it("may be asked for the plan while it makes a step", () => {
    let made = 0;
    const step: DragStep = new DragStep(() => {
      made += 1;
      step.makeNow();
    });
    step.put(lifted(1, "hand 1"));
    step.makeNow();
    expect(made).toBe(1);
  });
});
