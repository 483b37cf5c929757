import { type PlanBirds, writeDay } from "@headfall/hydraulics";
import type { Entry } from "../fields/entry.js";
import { nameOfPen, namesOfPens } from "../kernels/pen-names.js";
import { type BirdsPlace, birdsAt, pathOfBirds } from "../store/birds-place.js";
import type { PlanChange } from "../store/plan-change.js";
import { setAt } from "../store/set-at.js";

type Move = NonNullable<PlanBirds["moves"]>[number];

/** The days on which a batch comes, moves and goes. */
export function stayEntries(place: BirdsPlace): readonly Entry[] {
  const { plan, pen, batch } = place;
  const birds = birdsAt(place);
  const key = `stay ${pen + 1} ${batch + 1}`;
  const called = `birds ${batch + 1} of ${nameOfPen(plan, pen)}`;
  const date = (which: "arrives" | "leaves", title: string): Entry => ({
    form: "picked",
    key: `${key} ${which}`,
    title,
    name: `${title}: ${called}`,
    picks: "date",
    value: birds[which],
    change: setAt([...pathOfBirds(place), which], `${title.toLowerCase()}, ${called}`),
  });
  return [
    date("arrives", "Arrive on"),
    ...(birds.moves ?? []).flatMap((move, m) => moveEntries(place, move, m)),
    date("leaves", "Leave on"),
  ];
}

function moveEntries(place: BirdsPlace, move: Move, m: number): Entry[] {
  const { plan, pen, batch } = place;
  const key = `stay ${pen + 1} ${batch + 1} move ${m + 1}`;
  const path = [...pathOfBirds(place), "moves", m];
  const pens = namesOfPens(plan);
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
          : setAt([...path, "on"], "day of a move")(value),
    },
    {
      form: "choice",
      key: `${key} to`,
      title: `Move ${m + 1}, to`,
      name: `Where move ${m + 1} leads, birds ${batch + 1} of ${pens[pen]}`,
      value: move.to,
      words: move.to,
      groups: () => [{ options: pens.map((name) => ({ value: name, words: name })) }],
      change: setAt([...path, "to"], "pen of a move"),
    },
  ];
}

/** One more move, four weeks after what came before it, to the next pen; undefined where there is no other pen. */
export function addMove(place: BirdsPlace, today: number): PlanChange | undefined {
  const { plan, pen } = place;
  const pens = namesOfPens(plan);
  const { moves = [], arrives, leaves } = birdsAt(place);
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

function movesBecome(place: BirdsPlace, at: number, move: Move | undefined): PlanChange {
  const { moves = [] } = birdsAt(place);
  const next = move === undefined ? moves.filter((_, m) => m !== at) : [...moves, move];
  const write = setAt([...pathOfBirds(place), "moves"], move === undefined ? "move taken out" : "move");
  return write(next.length === 0 ? undefined : next);
}
