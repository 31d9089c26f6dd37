// Made from the files of this folder by `npm run types`; change them, not this one.
import type { Fact } from "../model/fact.ts";
import { restated } from "./figures.ts";

/** What several records state alike. */
export const facts: readonly Fact[] = [...restated];
