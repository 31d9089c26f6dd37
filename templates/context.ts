import type { Target } from "../src/publish/blocks.ts";

/** What a template must know of the page it prints: how to reach other pages, and which names are taken. */
export interface PageContext {
  /** Relative address of a place in the book. */
  href(target: Target): string;
  /** Relative address of a file of the issue, by its path from the root. */
  file(path: string): string;
  /** The anchor, if no element of the page has it yet: the first place of a name is where links land. */
  anchor(name: string | undefined): string | undefined;
  /** A name for an element that only this page refers to; never equal to an anchor. */
  ownName(): string;
  /** The level a heading may have, so that none is skipped. */
  headingLevel(wanted: 2 | 3): 2 | 3;
  /** The level of what stands under the last heading. */
  itemLevel(): 2 | 3;
}
