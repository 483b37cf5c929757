/** The screens every view is looked at on, in both lights. */
export const PHONE_SIZE = { width: 360, height: 740 };
export const DESKTOP_SIZE = { width: 1280, height: 900 };

export const SCREENS = [
  ["on a phone, in light", PHONE_SIZE, "light"],
  ["on a phone, in the dark", PHONE_SIZE, "dark"],
  ["on a desktop, in light", DESKTOP_SIZE, "light"],
  ["on a desktop, in the dark", DESKTOP_SIZE, "dark"],
] as const;
