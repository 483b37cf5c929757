import type { RainReadingOptions } from "@headfall/hydraulics";

/** A record of rain that a page has ready for its users to try the room with. */
export interface RainExample {
  readonly name: string;
  /** Whose it is, and what may be made of it: shown beside it. */
  readonly from: string;
  /** What its text leaves open. */
  readonly options: RainReadingOptions;
  /** Its text; called when it is chosen, and rejected where it cannot be had. */
  text(): Promise<string>;
}
