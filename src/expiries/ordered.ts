import { date } from "../model/input.ts";

/** The day on which what is taken along must still hold. */
export const ordered = { ordered: date("book.book.orderDate") };
