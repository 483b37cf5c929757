/** Finds what leads nowhere: to a page that is not there, or to a heading that a page does not have. */
export function findBrokenLinks(pages) {
  const anchorsOf = new Map(
    pages.map(({ page, rendered }) => [page.out, new Set(rendered.headings.map(({ anchor }) => anchor))]),
  );
  return pages.flatMap(({ page, rendered }) =>
    rendered.links.flatMap(({ target, anchor }) => {
      const anchors = anchorsOf.get(target);
      if (anchors === undefined) return [`${page.path}: there is no page ${target}`];
      if (anchor !== "" && !anchors.has(anchor)) return [`${page.path}: ${target} has no heading #${anchor}`];
      return [];
    }),
  );
}
