/** Version of the library; a test holds it against the package. */
export const VERSION = "0.1.0";
