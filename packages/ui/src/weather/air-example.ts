import type { AirReadingOptions } from "@headfall/hydraulics";

/** A daily record of the air that a page has ready for its users to try the room with. */
export interface AirExample {
  readonly name: string;
  /** Whose it is, and what may be made of it: shown beside it. */
  readonly from: string;
  /** What its text leaves open. */
  readonly options: AirReadingOptions;
  /** Its text; called when it is chosen, and rejected where it cannot be had. */
  text(): Promise<string>;
}
