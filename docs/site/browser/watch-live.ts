/** Brings a plan to life when its place comes near: the elements are large, and not every reader comes that far. */
export function watchLive(places: Iterable<HTMLElement>): void {
  const watcher = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) {
        if (!isIntersecting) continue;
        watcher.unobserve(target);
        void bring(target as HTMLElement);
      }
    },
    { rootMargin: "400px" },
  );
  for (const place of places) watcher.observe(place);
}

async function bring(place: HTMLElement): Promise<void> {
  try {
    const { showLive } = await import("./show-live.js");
    await showLive(place);
  } catch (error) {
    reportError(error);
    const said = document.createElement("p");
    said.role = "alert";
    said.textContent = "This plan could not be fetched. Is the network there? Reload the page to try again.";
    place.append(said);
  }
}
