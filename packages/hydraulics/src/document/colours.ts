/** What the sun falls on, as plans name it. Each is a row of the table of colours. */
export const COLOURS = ["black", "dark", "grey", "white", "bright-metal"] as const;
export type Colour = (typeof COLOURS)[number];
