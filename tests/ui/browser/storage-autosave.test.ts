import type { Plan } from "@headfall/hydraulics";
import { deleteDB, openDB } from "idb";
import { afterEach, expect, test, vi } from "vitest";
import { Autosave, type AutosaveEvents } from "../../../packages/ui/src/storage/autosave.js";
import { PlanLibrary } from "../../../packages/ui/src/storage/plan-library.js";
import { newId } from "../../../packages/ui/src/storage/plan-names.js";
import { PlanShelf } from "../../../packages/ui/src/storage/plan-shelf.js";
import { recoverLeftover, writeLeftover } from "../../../packages/ui/src/storage/recover-leftover.js";
import { Tabs } from "../../../packages/ui/src/storage/tabs.js";
import { PlanStore } from "../../../packages/ui/src/store/plan-store.js";
import { smallLine, withLength, withStand } from "../fixtures/stored-plans.js";

const NAME = "headfall-autosave-test";
const shelf = new PlanShelf(NAME);
const library = new PlanLibrary(shelf);
const opened: { close: () => void }[] = [];

afterEach(async () => {
  vi.restoreAllMocks();
  for (const each of opened.splice(0)) each.close();
  await shelf.close();
  await deleteDB(NAME);
});

/** A tab with a plan in hand, as the page sets it up. */
function openTab(id: string, plan: Plan, revision: number) {
  const store = new PlanStore(plan);
  const told: { parted: string[]; deleted: string[] } = { parted: [], deleted: [] };
  const events: AutosaveEvents = {
    onState: () => undefined,
    onSaved: (saved) => tabs.tell(saved),
    onParted: (_before, name) => told.parted.push(name),
    onDeleted: (deleted) => told.deleted.push(deleted),
  };
  const base = revision === 0 ? undefined : plan;
  const autosave = new Autosave(store, library, { id, revision, base }, events);
  const tabs = new Tabs((saved) => {
    if (saved === autosave.draft.id) void autosave.lookElsewhere();
  });
  opened.push(autosave, tabs);
  return { store, autosave, told };
}

const edit = (store: PlanStore, change: (plan: Plan) => Plan) => store.replace(change(store.plan), "an edit");
const stand = (typed: string) => (plan: Plan) => withStand(plan, typed);
const length = (typed: string) => (plan: Plan) => withLength(plan, typed);

async function twoTabs() {
  const { id, plan } = await library.add(smallLine);
  return { id, one: openTab(id, plan, 1), other: openTab(id, plan, 1) };
}

test("a change is saved by itself, once for all changes of a moment", async () => {
  const { id } = await library.add(smallLine);
  const { store, autosave } = openTab(id, smallLine, 1);
  for (let rise = 61; rise <= 90; rise++) edit(store, stand(`${rise} cm`));
  expect(autosave.state.kind).toBe("saving");
  await expect.poll(() => autosave.state.kind).toBe("saved");
  expect(await library.read(id)).toMatchObject({ revision: 2, plan: withStand(smallLine, "90 cm") });
});

test("an undo is saved like any change", async () => {
  const { id } = await library.add(smallLine);
  const { store, autosave } = openTab(id, smallLine, 1);
  edit(store, stand("70 cm"));
  await autosave.flush();
  store.undo();
  await autosave.flush();
  expect(await library.read(id)).toMatchObject({ revision: 3, plan: smallLine });
});

test("a plan that was never saved nor changed is not put among the plans", async () => {
  const store = new PlanStore(smallLine);
  const draft = { id: newId(), revision: 0, base: smallLine };
  const autosave = new Autosave(store, library, draft, {
    onState: () => undefined,
    onSaved: () => undefined,
    onParted: () => undefined,
    onDeleted: () => undefined,
  });
  opened.push(autosave);
  await autosave.flush();
  expect(await library.list()).toEqual([]);
  edit(store, stand("70 cm"));
  await autosave.flush();
  expect(await library.list()).toMatchObject([{ id: draft.id, plan: withStand(smallLine, "70 cm") }]);
});

test("an edit saved in one tab arrives in the other as a step that can be undone there", async () => {
  const { one, other } = await twoTabs();
  edit(one.store, stand("70 cm"));
  await one.autosave.flush();
  await expect.poll(() => other.store.plan.sources[0]!.stand).toBe("70 cm");
  other.store.undo();
  await other.autosave.flush();
  await expect.poll(() => one.store.plan.sources[0]!.stand).toBe("60 cm");
});

test("edits made at once in both tabs at different places are both kept, in both tabs", async () => {
  const { id, one, other } = await twoTabs();
  edit(one.store, stand("70 cm"));
  edit(other.store, length("5 m"));
  await Promise.all([one.autosave.flush(), other.autosave.flush()]);
  const both = withLength(withStand(smallLine, "70 cm"), "5 m");
  await expect.poll(() => [one.store.plan, other.store.plan]).toEqual([both, both]);
  expect(await library.read(id)).toMatchObject({ plan: both });
  expect([...one.told.parted, ...other.told.parted]).toEqual([]);
});

test("edits made at once in both tabs at the same place are both kept, one as a plan of its own", async () => {
  const { one, other } = await twoTabs();
  edit(one.store, stand("70 cm"));
  edit(other.store, stand("80 cm"));
  await one.autosave.flush();
  await other.autosave.flush();
  const name = `${smallLine.name} (other tab)`;
  expect(other.told.parted).toEqual([name]);
  const stands = (await library.list()).map(
    (kept) => kept.kind === "openable" && [kept.name, kept.plan.sources[0]!.stand],
  );
  expect(new Set(stands)).toEqual(
    new Set([
      [smallLine.name, "70 cm"],
      [name, "80 cm"],
    ]),
  );
  expect(other.store.plan).toMatchObject({ name, sources: [{ stand: "80 cm" }] });
});

test("without a channel between tabs, the later saver still brings in what the earlier saved", async () => {
  vi.stubGlobal("BroadcastChannel", undefined);
  Reflect.deleteProperty(globalThis, "BroadcastChannel");
  const { one, other } = await twoTabs();
  vi.unstubAllGlobals();
  edit(one.store, stand("70 cm"));
  await one.autosave.flush();
  edit(other.store, length("5 m"));
  await other.autosave.flush();
  expect(other.store.plan).toEqual(withLength(withStand(smallLine, "70 cm"), "5 m"));
});

test("two tabs that each make two hundred edits end with the same plan, and none of the edits is lost", async () => {
  const groups = (plan: Plan, index: number, count: number): Plan => ({
    ...plan,
    runs: plan.runs.map((run, i) => (i === index ? { ...run, length: `${count} m` } : run)),
  });
  const runs = [0, 1].map((index) => ({ id: `run ${index}`, length: "1 m" }));
  const { id, plan } = await library.add({ ...smallLine, runs });
  const tabs = [openTab(id, plan, 1), openTab(id, plan, 1)];
  for (let count = 2; count <= 201; count++) {
    for (const [index, { store, autosave }] of tabs.entries()) {
      edit(store, (before) => groups(before, index, count));
      if (count % (7 + index) === 0) void autosave.flush();
    }
    if (count % 10 === 0) await new Promise((done) => setTimeout(done, 5));
  }
  await Promise.all(tabs.map(({ autosave }) => autosave.flush()));
  const lengths = () => tabs.map(({ store }) => store.plan.runs.map((run) => run.length));
  await expect.poll(lengths).toEqual([
    ["201 m", "201 m"],
    ["201 m", "201 m"],
  ]);
  expect(tabs.flatMap(({ told }) => told.parted)).toEqual([]);
});

test("a plan deleted in another tab is told, and comes back by the next change here", async () => {
  const { id, one } = await twoTabs();
  await library.delete(id);
  await one.autosave.lookElsewhere();
  expect(one.told.deleted).toEqual([id]);
  edit(one.store, stand("70 cm"));
  await one.autosave.flush();
  expect(await library.read(id)).toMatchObject({ deletedAt: undefined, plan: withStand(smallLine, "70 cm") });
});

test("a plan that was removed for good elsewhere is saved anew by the next change here", async () => {
  const { id, one } = await twoTabs();
  await library.delete(id);
  await library.emptyDeleted();
  edit(one.store, stand("70 cm"));
  await one.autosave.flush();
  expect(await library.read(id)).toMatchObject({ plan: withStand(smallLine, "70 cm") });
});

test("when the record has become one that only a newer page can open, it is left, and the plan goes on as another", async () => {
  const { id, one } = await twoTabs();
  const newer = { id, name: "n", plan: { headfall: 99 }, revision: 9, changedAt: 1 };
  await shelf.turn(id, () => newer);
  edit(one.store, stand("70 cm"));
  await one.autosave.flush();
  expect(one.told.parted).toHaveLength(1);
  expect(await shelf.one(id)).toEqual(newer);
  expect((await library.list()).filter(({ kind }) => kind === "openable")).toHaveLength(1);
});

test("when a put is refused for want of room, it says so, and the next change that fits saves everything", async () => {
  const { id } = await library.add(smallLine);
  const { store, autosave } = openTab(id, smallLine, 1);
  const put = vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(() => {
    throw new DOMException("no room", "QuotaExceededError");
  });
  edit(store, stand("70 cm"));
  await autosave.flush();
  expect(autosave.state).toEqual({ kind: "unsaved", trouble: "full" });
  expect(await library.read(id)).toMatchObject({ revision: 1, plan: smallLine });
  put.mockRestore();
  edit(store, length("5 m"));
  await expect.poll(() => autosave.state.kind).toBe("saved");
  expect(await library.read(id)).toMatchObject({ plan: withLength(withStand(smallLine, "70 cm"), "5 m") });
});

test("when the database may not be opened, it says so, and tries again at the next change", async () => {
  const { store, autosave } = openTab(newId(), smallLine, 0);
  const open = vi.spyOn(IDBFactory.prototype, "open").mockImplementation(() => {
    throw new DOMException("not here", "SecurityError");
  });
  await autosave.flush();
  expect(autosave.state).toEqual({ kind: "unsaved", trouble: "denied" });
  open.mockRestore();
  edit(store, stand("70 cm"));
  await expect.poll(() => autosave.state.kind).toBe("saved");
});

test("a save that the browser never ends is given up, does not come about later, and is tried again", async () => {
  const { id } = await library.add(smallLine);
  const { store, autosave } = openTab(id, smallLine, 1);
  const { put } = IDBObjectStore.prototype;
  let isHeld = true;
  const held = vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(function (
    this: IDBObjectStore,
    value,
  ) {
    const asked = put.call(this, value);
    const askOn = () => {
      if (isHeld) this.get("nothing").onsuccess = askOn;
    };
    askOn();
    return asked;
  });
  edit(store, stand("70 cm"));
  await autosave.flush();
  expect(autosave.state).toEqual({ kind: "unsaved", trouble: "silent" });
  isHeld = false;
  held.mockRestore();
  expect(await library.read(id)).toMatchObject({ revision: 1, plan: smallLine });
  edit(store, length("5 m"));
  await autosave.flush();
  expect(await library.read(id)).toMatchObject({
    revision: 2,
    plan: withLength(withStand(smallLine, "70 cm"), "5 m"),
  });
});

test("a database that never opens is given up after a while, and the page goes on", async () => {
  // Another one that is held open in an older version, so that it cannot be opened in this one.
  const holding = `${NAME}-held`;
  const holder = await openDB(holding, 1);
  const { autosave } = openTab(newId(), smallLine, 0);
  const { open } = IDBFactory.prototype;
  const held = vi.spyOn(IDBFactory.prototype, "open").mockImplementation(function (this: IDBFactory) {
    return open.call(this, holding, 2);
  });
  await autosave.flush();
  expect(autosave.state).toEqual({ kind: "unsaved", trouble: "silent" });
  held.mockRestore();
  await autosave.flush();
  expect(autosave.state.kind).toBe("saved");
  holder.close();
  await deleteDB(holding);
});

test("what a page was left with is put onto its plan, also when that was changed elsewhere since", async () => {
  const { id } = await library.add(smallLine);
  const text = writeLeftover({ id, revision: 1, base: smallLine }, withStand(smallLine, "70 cm"));
  await library.save(id, withLength(smallLine, "5 m"), 1);
  expect(await recoverLeftover(library, text)).toBe(id);
  const both = withLength(withStand(smallLine, "70 cm"), "5 m");
  expect(await library.read(id)).toMatchObject({ plan: both });
  expect(await recoverLeftover(library, text)).toBe(id);
  expect(await library.list()).toHaveLength(1);
});

test("what a page was left with becomes a plan of its own when the same place was changed elsewhere", async () => {
  const { id } = await library.add(smallLine);
  const text = writeLeftover({ id, revision: 1, base: smallLine }, withStand(smallLine, "70 cm"));
  await library.save(id, withStand(smallLine, "80 cm"), 1);
  expect(await recoverLeftover(library, text)).not.toBe(id);
  expect(await library.list()).toHaveLength(2);
});

test.each(["", "null", "{}", '{"id": 4}', '{"id": "a", "plan": {"headfall": 99}}'])(
  "leftover text %j that holds no plan is passed over",
  async (text) => {
    expect(await recoverLeftover(library, text)).toBeUndefined();
    expect(await library.list()).toEqual([]);
  },
);
