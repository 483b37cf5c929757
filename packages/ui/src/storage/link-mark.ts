/** What a link to a plan begins with, after the address of the page. */
export const LINK_MARK = "#plan=";
