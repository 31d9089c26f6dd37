import type { Facts } from "../../book/facts.ts";
import type { OriginalSheet } from "../../sheets/original.ts";
import { boughtOriginals, millOriginals } from "./materials.ts";
import { peopleOriginals } from "./people.ts";
import { procedureOriginals } from "./procedures.ts";

/** Every original of the shelves, by the shelf's name. */
export const shelvedOriginals = (facts: Facts): Readonly<Record<"shop" | "order", readonly OriginalSheet[]>> => ({
  shop: [...procedureOriginals(facts), ...millOriginals(facts), ...peopleOriginals(facts)],
  order: boughtOriginals(facts),
});
