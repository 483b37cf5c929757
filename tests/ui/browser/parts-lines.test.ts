import { afterEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import {
  alert,
  button,
  choice,
  DUCKS,
  FEED,
  focused,
  HENS,
  shown,
  TEE,
  textbox,
  type,
  unfold,
} from "./part-verbs.js";
import { alderBank } from "./plan-host.js";

afterEach(() => document.body.replaceChildren());

test("when a run is drawn from here by its button, the plan has 5 m more pipe, from this joint", async () => {
  const host = await shown(TEE);
  await userEvent.click(button("Draw a run from here"));
  await expect.poll(() => host.plan.runs).toHaveLength(4);
  const added = host.plan.runs.at(-1)!;
  expect(added.from).toBe("tee");
  expect(added.length).toBe("5 m");
});

test("when drinkers are put along a run, the offer fits its length, and as many are in the plan", async () => {
  const host = await shown(FEED);
  await expect.element(textbox("How many")).toHaveValue("10");
  await expect.element(textbox("One every")).toHaveValue("30 cm");
  await userEvent.click(button("Put them"));
  await expect
    .poll(() => host.plan.runs[0]!.drinkers)
    .toMatchObject({ kind: "nipple-side-action", count: 10, every: "30 cm" });
});

test("when more drinkers are wanted than fit, the field says how many would", async () => {
  const host = await shown(FEED);
  await userEvent.fill(textbox("How many"), "20");
  await userEvent.click(button("Put them"));
  await expect
    .element(alert())
    .toHaveTextContent("20 drinkers every 30 cm take 6 m of pipe; the run has 4 m. At most 13 would fit");
  expect(host.plan.runs[0]!.drinkers).toBeUndefined();
});

test("when readings are typed one by one, they stand in the order of their distances", async () => {
  const host = await shown(DUCKS);
  await unfold("Survey");
  for (const [far, low] of [
    ["2", "10"],
    ["1 m", "-4 cm"],
  ]) {
    await userEvent.fill(textbox("Distance"), far!);
    await userEvent.fill(textbox("Drop"), low!);
    await userEvent.keyboard("{Enter}");
    await expect.poll(() => focused(host.view)).toBe(textbox("Distance").element());
  }
  await expect
    .poll(() => host.plan.runs[2]!.survey)
    .toEqual([
      { along: "1 m", fall: "-4 cm" },
      { along: "2 m", fall: "10 cm" },
    ]);
  await unfold("How far each may be off");
  await type("Reading 1 may be off by", "4 mm");
  await expect.poll(() => host.plan.runs[2]!.survey?.map(({ doubt }) => doubt)).toEqual(["4 mm", undefined]);
  await userEvent.click(button("Delete reading 1"));
  await expect.poll(() => host.plan.runs[2]!.survey).toEqual([{ along: "2 m", fall: "10 cm" }]);
  await userEvent.click(button("Delete reading 1"));
  await expect.poll(() => host.plan.runs[2]).not.toHaveProperty("survey");
  await expect.poll(() => focused(host.view)?.textContent).toBe("Survey");
});

test("when a survey is pasted from a spreadsheet, every line is a reading; a bad line is named and nothing taken", async () => {
  const host = await shown(HENS);
  await unfold("Survey");
  const box = textbox("Or many at once, one pair a line");
  await userEvent.fill(box, "1 m\t5 cm\n3 m\tdeep");
  await userEvent.click(button("Take these readings"));
  await expect.element(alert()).toHaveTextContent('"3 m deep"');
  expect(host.plan.runs[1]!.survey).toBeUndefined();
  await userEvent.fill(box, "1 m\t5 cm\n3 m\t-2 cm");
  await userEvent.click(button("Take these readings"));
  await expect
    .poll(() => host.plan.runs[1]!.survey)
    .toEqual([
      { along: "1 m", fall: "5 cm" },
      { along: "3 m", fall: "-2 cm" },
    ]);
  await expect.element(box).toHaveValue("");
});

test("when fittings are added, counted and deleted, the run has them so", async () => {
  const host = await shown(FEED);
  await unfold("Fittings: 3");
  await userEvent.click(button("Add fitting"));
  await expect.poll(() => host.plan.runs[0]!.fittings).toEqual(["ball-valve", "elbow-90 x 3"]);
  await type("How many, Ball valve, full bore, fully open", "2");
  await expect.poll(() => host.plan.runs[0]!.fittings).toEqual(["ball-valve x 2", "elbow-90 x 3"]);
  await userEvent.click(button("Delete Ball valve, full bore, fully open"));
  await expect.poll(() => host.plan.runs[0]!.fittings).toEqual(["elbow-90 x 3"]);
});

test("when a pipe of own bore is chosen, its bore and coefficient can be typed", async () => {
  const host = await shown(FEED);
  await userEvent.selectOptions(choice("Pipe"), "Own bore");
  await type("Bore", "13");
  await type("Hazen-Williams C", "150");
  await expect.poll(() => host.plan.runs[0]!.pipe).toEqual({ bore: "13 mm", hazenWilliams: 150 });
});

test("when a valve and a regulator are set, the run has them, and can be without again", async () => {
  const host = await shown(HENS);
  await unfold("More");
  await userEvent.click(page.getByRole("checkbox", { name: "One-way valve at its start" }));
  await type("Head that opens it", "3");
  await expect.poll(() => host.plan.runs[1]!.oneWay).toEqual({ opensAt: "3 cm" });
  await userEvent.click(page.getByRole("checkbox", { name: "Low-pressure regulator at its start" }));
  await expect.poll(() => host.plan.runs[1]!.regulator).toEqual({ sets: "30 cm" });
  await userEvent.click(page.getByRole("checkbox", { name: "One-way valve at its start" }));
  await expect.poll(() => host.plan.runs[1]!.oneWay).toBeUndefined();
});

test("when a run is cut in two, there is one run more and as much pipe; outside the run the field refuses", async () => {
  const host = await shown(DUCKS);
  await unfold("More");
  await type("Cut in two, so far from its start", "9 m");
  await expect.element(alert()).toHaveTextContent("within the run");
  await type("Cut in two, so far from its start", "1 m");
  await expect.poll(() => host.plan.runs).toHaveLength(4);
});

test("when a joint's height comes from a fall, that fall is what is offered", async () => {
  const host = await shown({ kind: "joint", joint: "ducks end" });
  await type("Fall of ducks", "12");
  await expect.poll(() => host.plan.runs[2]!.fall).toBe("12 cm");
});

test("when a joint says its own height, it can be typed, and a bleed put there", async () => {
  const host = await shown(TEE);
  await type("Pipe above that ground", "35");
  await userEvent.click(page.getByRole("checkbox", { name: "Air can leave here" }));
  await expect
    .poll(() => host.plan.points![0])
    .toEqual({ id: "tee", ground: "-10 cm", above: "35 cm", bleed: true });
});

test("when two joints are joined, their runs meet", async () => {
  const host = await shown({ kind: "joint", joint: "ducks end" });
  await unfold("More");
  await userEvent.selectOptions(choice("Join to"), "hens end");
  await userEvent.click(button("Join"));
  await expect
    .poll(() => host.wanted.at(-1)!.change)
    .toEqual({ kind: "mergeJoints", joint: "ducks end", into: "hens end" });
});

test("when a part is duplicated or deleted by its buttons, the plan has one more or one less", async () => {
  const host = await shown(DUCKS);
  await userEvent.click(button("Duplicate"));
  await expect.poll(() => host.plan.runs).toHaveLength(4);
  host.view.selected = { kind: "run", run: 3 };
  await userEvent.click(button("Delete"));
  await expect.poll(() => host.plan.runs).toHaveLength(3);
});

test("when a height is typed at a joint whose fall its run tells, it takes the place of that fall", async () => {
  const host = await shown({ kind: "joint", joint: "ducks end" });
  await unfold("More");
  await type("Height of the ground", "-50");
  await expect.poll(() => host.plan.points!.at(-1)).toEqual({ id: "ducks end", ground: "-50 cm" });
  expect(host.plan.runs[2]).not.toHaveProperty("fall");
  host.undo();
  expect(host.plan.runs[2]!.fall).toBe("2 in");
});

test("when a header tank is to be filled from the line, its source and float valve can be chosen", async () => {
  const tank = { id: "tank", vessel: "bucket-20l", stand: "10 cm" };
  const host = await shown(
    { kind: "source", source: 1 },
    { ...alderBank, sources: [...alderBank.sources, tank] },
  );
  await unfold("More");
  const from = choice("Filled from").element() as HTMLSelectElement;
  from.focus();
  await expect.poll(() => from.options.length).toBeGreaterThan(3);
  await userEvent.selectOptions(from, "ducks end");
  await expect.poll(() => host.wanted.length).toBe(1);
  expect(host.view.refusal).toBe("");
  await userEvent.selectOptions(choice("Float valve"), "float-valve");
  await type("Seat of the float valve", "4");
  await expect
    .poll(() => host.plan.sources[1]!.feed)
    .toEqual({ from: "ducks end", valve: "float-valve", opening: "4 mm" });
});
