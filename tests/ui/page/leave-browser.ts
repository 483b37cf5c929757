import { afterAll } from "vitest";
import { leaveBrowser } from "./harness.js";

// Files share what they import, so this is said once for each of them.
afterAll(leaveBrowser);
