import { excerptSeen, ownChoice } from "../model/basis.ts";
import type { Table } from "../model/table.ts";

const en1011 = excerptSeen("EN 1011-1", "table of thermal efficiency factors");
const relative = ownChoice("taken as the process it is a variant of; the table of EN 1011-1 does not name it");

const factors: readonly (readonly [string, string, typeof en1011])[] = [
  ["111", "0.8", en1011],
  ["114", "0.8", en1011],
  ["121", "1.0", en1011],
  ["122", "1.0", relative],
  ["124", "1.0", relative],
  ["125", "1.0", relative],
  ["131", "0.8", en1011],
  ["135", "0.8", en1011],
  ["136", "0.8", en1011],
  ["138", "0.8", en1011],
  ["141", "0.6", en1011],
  ["142", "0.6", relative],
  ["143", "0.6", relative],
  ["145", "0.6", relative],
  ["15", "0.6", en1011],
];

/** Thermal efficiency k of arc welding processes (numbers of ISO 4063), relative to submerged arc welding. */
export const arcEfficiency: Table = {
  id: "arc-efficiency",
  title: "Thermal efficiency of arc welding processes",
  standard: "EN 1011-1",
  keys: [{ name: "process", match: "equal" }],
  columns: { efficiency: { unit: "1", means: "share of the arc energy that enters the workpiece" } },
  rows: factors.map(([process, efficiency, basis]) => ({ keys: { process }, values: { efficiency }, basis })),
};
