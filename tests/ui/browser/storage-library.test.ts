import type { Plan } from "@headfall/hydraulics";
import { deleteDB, openDB } from "idb";
import { afterEach, expect, test } from "vitest";
import { findLastPlan } from "../../../packages/ui/src/storage/find-last-plan.js";
import { PlanLibrary } from "../../../packages/ui/src/storage/plan-library.js";
import { PlanShelf } from "../../../packages/ui/src/storage/plan-shelf.js";
import { smallLine, withStand } from "../fixtures/stored-plans.js";

const NAME = "headfall-library-test";
const shelves: PlanShelf[] = [];

function openShelf(): PlanShelf {
  const shelf = new PlanShelf(NAME);
  shelves.push(shelf);
  return shelf;
}

/** Puts a record on the shelf as another program would. */
async function putRaw(record: object): Promise<void> {
  const database = await openDB(NAME);
  await database.put("plans", record);
  database.close();
}

afterEach(async () => {
  for (const shelf of shelves.splice(0)) await shelf.close();
  await deleteDB(NAME);
});

test("a plan that was added is read back the same, by a library opened anew too", async () => {
  const { id } = await new PlanLibrary(openShelf()).add(smallLine);
  expect(await new PlanLibrary(openShelf()).read(id)).toMatchObject({ plan: smallLine, revision: 1 });
});

test("save writes only when the record stands where it was read, and else says what stands there", async () => {
  const library = new PlanLibrary(openShelf());
  const { id } = await library.add(smallLine);
  expect(await library.save(id, withStand(smallLine, "70 cm"), 1)).toEqual({ ok: true, revision: 2 });
  const late = await library.save(id, withStand(smallLine, "80 cm"), 1);
  expect(late).toMatchObject({ ok: false, stored: { revision: 2, plan: withStand(smallLine, "70 cm") } });
  expect(await library.read(id)).toMatchObject({ revision: 2, plan: withStand(smallLine, "70 cm") });
});

test("of twenty savings begun at once from the same revision, one is done and nineteen are told", async () => {
  const libraries = [new PlanLibrary(openShelf()), new PlanLibrary(openShelf())];
  const { id } = await libraries[0]!.add(smallLine);
  const savings = await Promise.all(
    Array.from({ length: 20 }, (_, index) =>
      libraries[index % 2]!.save(id, withStand(smallLine, `${index + 1} cm`), 1),
    ),
  );
  expect(savings.filter(({ ok }) => ok)).toHaveLength(1);
});

test("copies get names of their own, and renaming changes the plan and the list alike", async () => {
  const library = new PlanLibrary(openShelf());
  const { id } = await library.add(smallLine);
  await library.copy(id);
  await library.copy(id);
  expect(await library.rename(id, "Duck pen")).toEqual({ ok: true });
  const list = await library.list();
  expect(new Set(list.map(({ name }) => name))).toEqual(
    new Set(["Duck pen", `${smallLine.name} (copy)`, `${smallLine.name} (copy 2)`]),
  );
  expect(await library.read(id)).toMatchObject({ plan: { name: "Duck pen" } });
});

test("a name that no plan may have is refused with its problem, and the old one stays", async () => {
  const library = new PlanLibrary(openShelf());
  const { id } = await library.add(smallLine);
  const renaming = await library.rename(id, "two\nlines");
  expect(renaming).toMatchObject({ ok: false, problems: [{ path: "name" }] });
  expect(await library.read(id)).toMatchObject({ name: smallLine.name });
});

test("a deleted plan can be brought back until the deleted ones are emptied", async () => {
  const library = new PlanLibrary(openShelf());
  const [one, two] = [await library.add(smallLine), await library.add(smallLine)];
  await library.delete(one.id);
  await library.delete(two.id);
  await library.bringBack(two.id);
  expect(await library.emptyDeleted()).toBe(1);
  expect(await library.read(one.id)).toBeUndefined();
  expect(await library.read(two.id)).toMatchObject({ plan: smallLine, deletedAt: undefined });
});

test("records that cannot be opened are listed, and no method of the library changes them", async () => {
  const shelf = openShelf();
  const library = new PlanLibrary(shelf);
  await library.list();
  const newer = {
    id: "newer",
    name: "From tomorrow",
    plan: { headfall: 99 },
    revision: 4,
    changedAt: 1,
    extra: 1,
  };
  const damaged = { id: "damaged", plan: "eaten" };
  await putRaw(newer);
  await putRaw(damaged);
  expect((await library.list()).map(({ id, kind }) => [id, kind])).toEqual([
    ["newer", "newer"],
    ["damaged", "damaged"],
  ]);
  for (const id of ["newer", "damaged"]) {
    await library.rename(id, "x");
    await library.delete(id);
    await library.bringBack(id);
    expect(await library.copy(id)).toBeUndefined();
  }
  await library.emptyDeleted();
  expect(await shelf.one("newer")).toEqual(newer);
  expect(await shelf.one("damaged")).toEqual(damaged);
});

test("what a newer page has put beside a plan stays when an older one saves it", async () => {
  const shelf = openShelf();
  const library = new PlanLibrary(shelf);
  await library.list();
  await putRaw({ id: "a", name: "", plan: smallLine, revision: 2, changedAt: 1, pinned: true });
  await library.save("a", withStand(smallLine, "70 cm"), 2);
  expect(await shelf.one("a")).toMatchObject({ pinned: true, revision: 3 });
});

test("findLastPlan gives the wanted plan, else the one changed last, never a deleted one", async () => {
  const shelf = openShelf();
  const library = new PlanLibrary(shelf);
  expect(await findLastPlan(shelf, ["gone"])).toBeUndefined();
  await library.list();
  const stored = (id: string, changedAt: number, plan: unknown = smallLine) =>
    putRaw({ id, name: "", plan, revision: 1, changedAt });
  await stored("old", 1);
  await stored("new", 2);
  await stored("newest, shut", 3, { headfall: 99 });
  expect(await findLastPlan(shelf, ["gone", "old"])).toMatchObject({ id: "old" });
  expect(await findLastPlan(shelf, ["newest, shut"])).toMatchObject({ id: "new" });
  await library.delete("new");
  expect(await findLastPlan(shelf, ["new"])).toMatchObject({ id: "old" });
});

test("a database of a newer page is refused as such and stays as it is", async () => {
  const newer = await openDB(NAME, 7, { upgrade: (database) => void database.createObjectStore("future") });
  await newer.put("future", smallLine, "kept");
  await expect(openShelf().all()).rejects.toMatchObject({ kind: "newer" });
  expect(await newer.get("future", "kept")).toEqual(smallLine);
  newer.close();
});

test("a page that is open lets a newer one have the database, and is refused kindly after that", async () => {
  const shelf = openShelf();
  const library = new PlanLibrary(shelf);
  const { id } = await library.add(smallLine);
  const newer = await openDB(NAME, 2);
  await expect(library.save(id, smallLine, 1)).rejects.toMatchObject({ kind: "newer" });
  expect(await newer.get("plans", id)).toMatchObject({ plan: smallLine });
  newer.close();
});

test("a plan of ten thousand runs is saved and read back whole", async () => {
  const runs = Array.from({ length: 10_000 }, (_, index) => ({ id: `run ${index}`, length: "1 m" }));
  const plan: Plan = { ...smallLine, runs };
  const library = new PlanLibrary(openShelf());
  const { id } = await library.add(plan);
  expect(await library.read(id)).toMatchObject({ plan });
});
