/** Lights the page as the reader chose, before anything of it is seen. */
import { readPreferences } from "./preferences.js";

const { light } = readPreferences();
if (light === "sun" || light === "dark") document.documentElement.dataset["light"] = light;
