import { shippedDefinitions } from "../../src/definitions.ts";
import { readBook } from "../../src/pipeline.ts";
import { bySort, explained } from "../support/missed.ts";
import { slipsOf, type SlipClass } from "../support/slips.ts";
import { sweeper, type Found, type Mode, type Swept } from "../support/sweep.ts";

/**
 * Enters believable slips into the records of a book, one at a time, and prints by kind how many are found: by a finding that
 * stands at the value, by another one, or not at all. `--missed` names every gross slip that passes unseen.
 */
export function measureSlips(title: string, from: string, most: number, modes: readonly Mode[], missed: boolean): void {
  const read = readBook(from);
  const { slips, unread } = slipsOf(read.records, read.kinds, most);
  const sweep = sweeper(read, shippedDefinitions(read.kinds));
  for (const mode of modes) {
    const swept = slips.map((slip) => sweep(slip, mode));
    console.log(
      `\nslips in ${title}, ${mode === "alone" ? "in the record alone" : "copied into what would copy it"}: at most ${most} places of a field; ${unread} fields say why nothing reads them`,
    );
    console.log(
      `${"kind".padEnd(26)}${"gross".padStart(7)}${"own".padStart(7)}${"else".padStart(7)}${"unfound".padStart(9)}${"found".padStart(8)}${"near".padStart(8)}${"found".padStart(8)}`,
    );
    for (const kind of [...new Set(slips.map(({ record }) => record.kind)), ""]) {
      const own = kind === "" ? swept : swept.filter(({ slip }) => slip.record.kind === kind);
      const count = (of: SlipClass, found?: Found) =>
        own.filter((one) => one.slip.class === of && (found === undefined || one.found === found)).length;
      const share = (of: SlipClass) =>
        count(of) === 0 ? "–" : `${((100 * (count(of) - count(of, "unfound"))) / count(of)).toFixed(0)} %`;
      console.log(
        `${(kind || "all").padEnd(26)}${String(count("gross")).padStart(7)}${String(count("gross", "own")).padStart(7)}${String(count("gross", "elsewhere")).padStart(7)}${String(count("gross", "unfound")).padStart(9)}${share("gross").padStart(8)}${String(count("near")).padStart(8)}${share("near").padStart(8)}`,
      );
    }
    if (missed) for (const line of missedLines(swept)) console.log(line);
  }
}

/** What nothing found, by field and sort; what the table has no reason for, and what it still has though all are found. */
function missedLines(swept: readonly Swept[]): readonly string[] {
  const sorts = bySort(swept);
  const missed = sorts.filter(({ unfound }) => unfound > 0);
  return [
    ...missed.map(
      ({ name, all, unfound }) =>
        `  ${name} (${unfound} of ${all})${explained.has(name) ? "" : ", of which the table says nothing"}`,
    ),
    ...sorts
      .filter(({ name, unfound }) => unfound === 0 && explained.has(name))
      .map(({ name }) => `  ${name}: in the table, and found here`),
  ];
}
