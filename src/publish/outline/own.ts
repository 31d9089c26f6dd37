import type { Page } from "../publication.ts";

/** The page with other members; blocks that are made when they are read stay so. */
export function withOwn(page: Page, members: Partial<Page>): Page {
  const descriptors = { ...Object.getOwnPropertyDescriptors(page), ...Object.getOwnPropertyDescriptors(members) };
  return Object.defineProperties({}, descriptors) as Page;
}
