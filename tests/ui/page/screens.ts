/** The screens every view is looked at on. */
export const PHONE_SIZE = { width: 360, height: 740 };
export const DESKTOP_SIZE = { width: 1280, height: 900 };

export const SCREENS = [
  ["on a phone", PHONE_SIZE],
  ["on a desktop", DESKTOP_SIZE],
] as const;
