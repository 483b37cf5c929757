import MiniSearch, { type SearchResult } from "minisearch";
import { INDEX_OPTIONS, SEARCH_OPTIONS } from "../search-terms.mjs";

const MOST_SHOWN = 12;

/** A search over all pages, answered in the browser from an index that is fetched when the first word is typed. */
export function setUpSearch(form: HTMLFormElement, root: URL): void {
  const field = form.querySelector("input")!;
  const found = form.querySelector<HTMLElement>(".found")!;
  const spoken = form.querySelector<HTMLElement>("[role=status]")!;
  let index: Promise<MiniSearch> | undefined;

  async function show(): Promise<void> {
    const asked = field.value.trim();
    if (asked === "") return hide();
    index ??= fetchIndex(root);
    try {
      const places = (await index).search(asked, SEARCH_OPTIONS);
      // Meanwhile other letters may have been typed.
      if (asked === field.value.trim()) showPlaces(places);
    } catch {
      index = undefined; // the next letter tries again
      found.hidden = false;
      found.textContent = "The index could not be fetched. Is the network there?";
    }
  }

  function showPlaces(places: readonly SearchResult[]): void {
    const list = document.createElement("ol");
    list.append(...places.slice(0, MOST_SHOWN).map((place) => placeView(place, root)));
    found.hidden = false;
    found.replaceChildren(places.length === 0 ? "Nothing found. Try another word." : list);
    found.scrollTop = 0;
    spoken.textContent = places.length === 1 ? "1 place found" : `${places.length} places found`;
  }

  function hide(): void {
    found.hidden = true;
    spoken.textContent = "";
  }

  field.addEventListener("input", () => void show());
  field.addEventListener("focus", () => void show());
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    found.querySelector("a")?.click();
  });
  form.addEventListener("keydown", (event) => {
    if (event.key === "Escape") {
      field.focus();
      hide();
    } else if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      event.preventDefault();
      step([field, ...found.querySelectorAll<HTMLElement>("a")], event.key === "ArrowDown" ? 1 : -1);
    }
  });
  form.addEventListener("focusout", ({ relatedTarget }) => {
    if (!form.contains(relatedTarget as Node | null)) hide();
  });
  found.addEventListener("click", hide);
  form.hidden = false;
}

async function fetchIndex(root: URL): Promise<MiniSearch> {
  const answer = await fetch(new URL("search.json", root));
  if (!answer.ok) throw new Error(`the index of words: ${answer.status}`);
  return MiniSearch.loadJSON(await answer.text(), INDEX_OPTIONS);
}

function placeView({ title, page, kind, way, shown }: SearchResult, root: URL): HTMLElement {
  const item = document.createElement("li");
  const link = document.createElement("a");
  link.href = new URL(way, root).href;
  const name = document.createElement("strong");
  name.textContent = title;
  const where = document.createElement("span");
  where.textContent = title === page ? kind : `${page} · ${kind}`;
  const text = document.createElement("small");
  text.textContent = shown;
  link.append(name, " ", where, text);
  item.append(link);
  return item;
}

function step(stops: readonly HTMLElement[], by: number): void {
  const at = stops.indexOf(document.activeElement as HTMLElement);
  stops[Math.min(Math.max(at + by, 0), stops.length - 1)]?.focus();
}
