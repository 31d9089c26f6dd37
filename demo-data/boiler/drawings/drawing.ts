import type { Drawing } from "../../generated/records.ts";
import type { Facts } from "../../book/facts.ts";
import type { Paper } from "../../paper/paper.ts";

/** Draws a drawing on all its sheets. */
export type Draw = (paper: Paper, facts: Facts, drawing: Drawing) => void;
