/** Registers the elements of Headfall; the only file of this package with a side effect. */
import "./index.js";
