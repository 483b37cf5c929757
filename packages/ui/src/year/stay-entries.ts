import { batchesOf, type Plan, type PlanBirds, writeDay } from "@headfall/hydraulics";
import type { Entry } from "../fields/entry.js";
import type { PlanChange } from "../store/plan-change.js";

type Move = NonNullable<PlanBirds["moves"]>[number];

/** One batch of a plan, and the day the year begins. */
export interface StayPlace {
  readonly plan: Plan;
  readonly pen: number;
  readonly batch: number;
}

const birdsOf = ({ plan, pen, batch }: StayPlace): PlanBirds => batchesOf(plan.pens![pen]!)[batch]!;

function pathOf({ plan, pen, batch }: StayPlace): readonly (string | number)[] {
  return Array.isArray(plan.pens![pen]!.birds) ? ["pens", pen, "birds", batch] : ["pens", pen, "birds"];
}

/** The days on which a batch comes, moves and goes. */
export function stayEntries(place: StayPlace): readonly Entry[] {
  const { plan, pen, batch } = place;
  const birds = birdsOf(place);
  const key = `stay ${pen + 1} ${batch + 1}`;
  const penName = plan.pens![pen]!.id ?? `pen ${pen + 1}`;
  const called = `birds ${batch + 1} of ${penName}`;
  const date = (which: "arrives" | "leaves", title: string): Entry => ({
    form: "picked",
    key: `${key} ${which}`,
    title,
    name: `${title}: ${called}`,
    picks: "date",
    value: birds[which],
    change: (value) => ({
      kind: "set",
      path: [...pathOf(place), which],
      value,
      what: `${title.toLowerCase()}, ${called}`,
    }),
  });
  return [
    date("arrives", "Arrive on"),
    ...(birds.moves ?? []).flatMap((move, m) => moveEntries(place, move, m)),
    date("leaves", "Leave on"),
  ];
}

function moveEntries(place: StayPlace, move: Move, m: number): Entry[] {
  const { plan, pen, batch } = place;
  const key = `stay ${pen + 1} ${batch + 1} move ${m + 1}`;
  const path = [...pathOf(place), "moves", m];
  const pens = (plan.pens ?? []).map(({ id }, p) => id ?? `pen ${p + 1}`);
  return [
    {
      form: "picked",
      key: `${key} on`,
      title: `Move ${m + 1}, on`,
      name: `Day of move ${m + 1}, birds ${batch + 1} of ${pens[pen]}`,
      picks: "date",
      value: move.on,
      change: (value) =>
        value === undefined
          ? movesBecome(place, m, undefined)
          : { kind: "set", path: [...path, "on"], value, what: `day of a move` },
    },
    {
      form: "choice",
      key: `${key} to`,
      title: `Move ${m + 1}, to`,
      name: `Where move ${m + 1} leads, birds ${batch + 1} of ${pens[pen]}`,
      value: move.to,
      words: move.to,
      groups: () => [{ options: pens.map((name) => ({ value: name, words: name })) }],
      change: (value) => ({ kind: "set", path: [...path, "to"], value, what: "pen of a move" }),
    },
  ];
}

/** One more move, four weeks after what came before it, to the next pen; undefined where there is no other pen. */
export function addMove(place: StayPlace, today: number): PlanChange | undefined {
  const { plan, pen } = place;
  const pens = (plan.pens ?? []).map(({ id }, p) => id ?? `pen ${p + 1}`);
  const { moves = [], arrives, leaves } = birdsOf(place);
  const last = moves[moves.length - 1];
  const where = last === undefined ? pens[pen] : last.to;
  const to = pens.find((name) => name !== where);
  if (to === undefined) return undefined;
  const before = [last?.on, arrives].find((day) => day !== undefined);
  const from = before === undefined ? today : Math.round(Date.parse(`${before}T00:00Z`) / 86_400_000);
  const on = writeDay(from + 28);
  // A move after they have left would be refused: then they leave later.
  if (leaves !== undefined && leaves <= on) return undefined;
  return movesBecome(place, moves.length, { on, to });
}

function movesBecome(place: StayPlace, at: number, move: Move | undefined): PlanChange {
  const { moves = [] } = birdsOf(place);
  const next = move === undefined ? moves.filter((_, m) => m !== at) : [...moves, move];
  return {
    kind: "set",
    path: [...pathOf(place), "moves"],
    value: next.length === 0 ? undefined : next,
    what: move === undefined ? "move taken out" : "move",
  };
}
