import type { TemplateResult } from "lit";

/** Something the page has to say, until it is closed or no longer true. */
export interface Notice {
  readonly key: string;
  readonly words: string;
  readonly body?: TemplateResult;
  /** Told at once, as something that went wrong under the user's hand. */
  readonly isUrgent?: boolean;
  readonly acts: readonly { readonly words: string; readonly act: () => unknown }[];
  /** What the button says that closes it; "Close" when left out. */
  readonly closeWords?: string;
}
