import { type DayResult, type Line, type Plan, writeProblem } from "@headfall/hydraulics";
import { html, nothing, type PropertyValues } from "lit";
import { guard } from "lit/directives/guard.js";
import { WidthController } from "../controllers/width-controller.js";
import { momentAt } from "../kernels/day/day-index.js";
import { type DrawnWay, drawnWays, wayOfBusiest } from "../kernels/day/drawn-ways.js";
import type { ProfileLayout } from "../kernels/profile-layout.js";
import { isLineless, noLineView, wantRoom } from "../room/no-line.js";
import { RoomElement } from "../room/room-element.js";
import { controls } from "../styles/controls.js";
import { roomStyles } from "../styles/room.styles.js";
import { tokens } from "../styles/tokens.js";
import { tableStyles } from "../tables/table.styles.js";
import { choiceView } from "./choice-view.js";
import { dayStyles } from "./day.styles.js";
import { DayController } from "./day-controller.js";
import { daysView } from "./days-view.js";
import { drinkersView } from "./drinkers-view.js";
import { howView } from "./how-view.js";
import { playView } from "./play-view.js";
import { Player } from "./player.js";
import type { DayActs, DayRoom } from "./room.js";
import { type DayStrips, layStrips, stripsView } from "./strips-view.js";
import { answerView, toldView } from "./told-view.js";

/**
 * One day of a plan's birds at their drinkers, simulated and played on the drawing, and what is to be told of it and
 * of a hundred like it.
 *
 * @element headfall-day
 * @fires room-wanted  when the user wants to go to the birds
 */
export class HeadfallDay extends RoomElement {
  static override properties = {
    seed: { state: true },
    figure: { state: true },
    hot: { state: true },
    way: { state: true },
    layout: { state: true },
  };
  static override styles = [tokens, controls, tableStyles, roomStyles, dayStyles];

  declare private seed: number;
  declare private figure: "expect" | "size";
  declare private hot: boolean;
  /** Which of the ways is drawn; undefined: the one where most birds drink at once. */
  declare private way: number | undefined;
  declare private layout: ProfileLayout | undefined;

  readonly #days = new DayController(this);
  readonly #player = new Player(this);
  readonly #width = new WidthController(this, "(min-width: 700px)");
  /** Kept from picture to picture. */
  #ways: { readonly line: Line; readonly ways: readonly DrawnWay[] } | undefined;
  #strips: { readonly from: readonly unknown[]; readonly strips: DayStrips } | undefined;
  #result: DayResult | undefined;

  constructor() {
    super();
    this.seed = 1;
    this.figure = "expect";
    this.hot = false;
    this.way = undefined;
    this.how = undefined;
    this.layout = undefined;
    this.addEventListener("how-wanted", ({ subject }) => {
      this.how = subject;
    });
  }

  override willUpdate(changed: PropertyValues<this>): void {
    const asked = changed as ReadonlyMap<PropertyKey, unknown>;
    if (asked.has("plan") && this.plan?.weather?.hotSpell === undefined) this.hot = false;
    if (["plan", "day", "figure", "hot"].some((key) => asked.has(key))) this.#days.forgetMany();
    if (["plan", "day", "seed", "figure", "hot"].some((key) => asked.has(key))) this.#ask();
    if (this.#days.result !== this.#result) this.#dayCame(this.#days.result);
  }

  #ask(): void {
    const { plan, day, seed, figure, hot } = this;
    if (plan?.pens !== undefined && !isLineless(plan)) this.#days.ask({ plan, day, seed, figure, hot });
  }

  /** The first day opens on its busiest moment, not on the dark; the days after it stay at the time that was watched. */
  #dayCame(result: DayResult | undefined): void {
    if (this.#result === undefined) {
      const [busiest] = [...(result?.pens ?? [])].sort((a, b) => b.mostAtOnce - a.mostAtOnce);
      this.#player.time = busiest?.mostAt ?? 0;
    }
    this.#result = result;
  }

  override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    if (isLineless(plan))
      return html`<h2>A day at the drinkers</h2> ${noLineView("Here birds are followed through a day at the drinkers of a line.")} ${CAUTIONS}`;
    if (plan.pens === undefined) return html`<h2>A day at the drinkers</h2>${this.#nobody()} ${CAUTIONS}`;
    const { problems, isOld, result, index } = this.#days;
    return html`
      <h2>A day at the drinkers</h2>
      <p>Day ${this.seed}, by chance: each bird comes, finds a place or waits, and drinks as fast as its drinker then gives.</p>
      ${choiceView({ ...this.#choice(), hasHotSpell: plan.weather?.hotSpell !== undefined })}
      ${problems.length === 0 ? nothing : html`<p class="problem" role="alert">${problems.map(writeProblem).join(" ")}</p>`}
      <div class=${isOld ? "older" : nothing}>
        ${
          result === undefined || index === undefined
            ? problems.length > 0
              ? nothing
              : html`<p role="status">Following each bird through its day ...</p>`
            : this.#told({ ...this.#choice(), ...this.#known(plan), result, index })
        }
      </div>
      ${this.howPanel(this.#days.told)}
    `;
  }

  #told(room: DayRoom) {
    const { checked, result, system, isWide, days, progress } = room;
    const { time, isPlaying, rate } = this.#player;
    const ways = this.#waysOf(checked?.line);
    const played = {
      ...{ ...room, moment: momentAt(room.index, time), isPlaying, rate, ways, layout: this.layout },
      way: this.way === undefined || this.way >= ways.length ? wayOfBusiest(ways, room) : this.way,
    };
    // What does not move is not gone through with every picture.
    const still = [result, checked, system, isWide];
    return html`${guard(still, () => answerView(room))} ${playView(played)}
      ${stripsView(this.#stripsOf(room, still), time, this.#acts.seek)}
      ${guard(still, () => html`${toldView(room)} ${drinkersView(room)}`)}
      ${guard([days, progress, system], () => daysView(room))}
      ${guard(still, () => html`${howView(room)} ${CAUTIONS}`)}`;
  }

  #waysOf(line: Line | undefined): readonly DrawnWay[] {
    if (line === undefined) return [];
    if (this.#ways?.line !== line) this.#ways = { line, ways: drawnWays(line) };
    return this.#ways.ways;
  }

  #stripsOf(room: DayRoom, from: readonly unknown[]): DayStrips {
    if (this.#strips === undefined || from.some((each, k) => each !== this.#strips?.from[k]))
      this.#strips = { from, strips: layStrips(room) };
    return this.#strips.strips;
  }

  #nobody() {
    return html`<p>Nobody drinks yet: say which birds drink from this line, and watch them through a day at its drinkers.
      <button type="button" @click=${wantRoom("birds")}>Go to the birds</button></p>`;
  }

  #choice() {
    const { seed, figure, hot } = this;
    return { seed, figure, hot, acts: this.#acts };
  }

  #known(plan: Plan) {
    const { checked, system } = this;
    const { days, progress } = this.#days;
    return { plan, checked, system, days, progress, isWide: this.#width.matches };
  }

  readonly #acts: DayActs = {
    another: () => {
      this.seed += 1;
    },
    firstDay: () => {
      this.seed = 1;
    },
    drink: (figure) => {
      this.figure = figure;
    },
    heat: (hot) => {
      this.hot = hot;
    },
    playOrPause: () => (this.#player.isPlaying ? this.#player.pause() : this.#player.play()),
    seek: (time) => this.#player.seek(time),
    speed: (rate) => {
      this.#player.rate = rate;
    },
    lookAlong: (way) => {
      this.way = way;
    },
    drawn: (layout) => {
      this.layout = layout;
    },
    runMany: () => {
      const { plan, day, seed, figure, hot } = this;
      if (plan !== undefined) this.#days.askMany({ plan, day, seed, figure, hot });
    },
    cancelMany: () => this.#days.cancelMany(),
  };
}

const CAUTIONS = html`<section class="cautions" aria-label="Cautions">
  <p>A simulated day is no promise: look at the birds and their water every day.</p>
  <p>Chicks and quail can drown in shallow open water. Birds that stop drinking, or drink far more, may be ill: ask a vet.</p>
</section>`;
