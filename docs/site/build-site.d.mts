/** A document as it stands in docs/. */
export interface SitePage {
  readonly path: string;
  readonly text: string;
  readonly title: string;
  readonly kind: string;
  readonly weight: number;
  /** Where its page goes. */
  readonly out: string;
}

/** A document, what was made of it, and its whole page. */
export interface RenderedPage {
  readonly page: SitePage;
  readonly rendered: {
    readonly html: string;
    readonly headings: readonly { readonly level: number; readonly text: string; readonly anchor: string }[];
    readonly links: readonly { readonly target: string; readonly anchor: string }[];
    readonly files: readonly string[];
    readonly hasLive: boolean;
    readonly sections: readonly { readonly title: string; readonly anchor: string; readonly text: string }[];
  };
  readonly html: string;
}

export function renderSite(documents?: readonly SitePage[]): RenderedPage[];
export function buildSite(folder: string, documents?: readonly SitePage[]): Promise<number>;
