import { readFileSync } from "node:fs";
import { join } from "node:path";
import { packageRoot } from "../../src/root.ts";
import type { Slip } from "./slips.ts";
import type { Swept } from "./sweep.ts";

/** The committed table of gross slips that nothing finds, by the reason why not: `kind field: how`. */
export const missedTable: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries(
    JSON.parse(readFileSync(join(packageRoot, "tests/judge/missed.json"), "utf8")) as Record<string, string[]>,
  ),
);

/** `part role: next choice`: a slip whatever record it is entered in. */
export const nameOfSlip = ({ field, how }: Pick<Slip, "field" | "how">): string => `${field}: ${how}`;

/** A sort of slip, with how many of how many were not found. */
export interface Missed {
  readonly name: string;
  readonly all: number;
  readonly unfound: number;
}

/** Gross slips by field and sort, in the order in which they were entered. */
export function bySort(swept: readonly Swept[]): readonly Missed[] {
  const sorts = new Map<string, Missed>();
  for (const { slip, found } of swept) {
    if (slip.class !== "gross") continue;
    const name = nameOfSlip(slip);
    const { all, unfound } = sorts.get(name) ?? { all: 0, unfound: 0 };
    sorts.set(name, { name, all: all + 1, unfound: unfound + (found === "unfound" ? 1 : 0) });
  }
  return [...sorts.values()];
}

/** Slips that the table has a reason for. */
export const explained: ReadonlySet<string> = new Set([...missedTable.values()].flat());
