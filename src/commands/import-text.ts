import { faultText, planJson, planSentence, planText, writtenWords } from "../imports/plan-text.ts";
import type { ImportPlan, PlannedRecord } from "../imports/import-plan.ts";
import type { Proposal } from "../imports/propose.ts";
import type { ReadMaps } from "../imports/read-maps.ts";
import { fileOfNew } from "../imports/record-files.ts";
import type { Uncompared } from "../imports/uncompared.ts";
import type { Kind } from "../model/kind.ts";
import { recordWords } from "../model/titles.ts";
import { jsonText, plain } from "../report/plain.ts";

/** What an import found, and what came of it. */
export interface Imported {
  /** Name of the sheet's file. */
  readonly name: string;
  readonly mapName: string;
  readonly mapFile: string;
  readonly mapText: string;
  readonly maps: ReadMaps;
  readonly proposal: Proposal | undefined;
  /** With all that is wrong, that of the proposal too. */
  readonly plan: ImportPlan;
  /** Whether anything cannot be read, or is to be settled in the map. */
  readonly unsettled: boolean;
  /** Records that are written, or would be. */
  readonly planned: readonly PlannedRecord[];
  readonly uncompared: readonly Uncompared[];
  readonly kinds: ReadonlyMap<string, Kind>;
  /** Files that were written. */
  readonly files: readonly string[];
  /** Whether there is anything to write. */
  readonly waits: boolean;
  readonly writes: boolean;
  readonly overwrites: boolean;
}

/** For programs; ends with a line end. */
export const importJson = ({ name, mapFile, maps, proposal, plan, files }: Imported, tool: unknown): string =>
  jsonText({
    tool,
    format: 1,
    file: name,
    map: mapFile,
    ...(proposal?.own === false && { proposed: proposal.maps, grounds: proposal.grounds }),
    ...planJson(plan),
    mapFaults: maps.faults,
    written: files,
  });

/** For people: what the map is, what becomes of the rows, what cannot be read, what was written. */
export function importText(told: Imported): string {
  const { name, maps, proposal, plan, unsettled, uncompared, kinds, waits, writes, overwrites } = told;
  return [
    proposalText(told),
    unsettled && proposal !== undefined ? "" : plainLines(planText(plan, name, kinds)),
    faultsOfMap(maps),
    ...plan.faults.map((fault) => `${plainLines(faultText(name, fault))}\n`),
    `${planSentence(plan, !writes ? "shown" : overwrites && !unsettled ? "written over" : "left")}\n`,
    ...(writes ? uncompared.map((one) => uncomparedText(one, kinds)) : []),
    ...writtenLines(told),
    unsettled
      ? "no record is written while anything cannot be read or is not settled\n"
      : !writes && waits
        ? "nothing is written yet; to write it: --write\n"
        : "",
  ].join("");
}

function proposalText({ proposal, mapText, mapFile, writes }: Imported): string {
  if (proposal === undefined || mapText === "" || proposal.own) return "";
  return [
    `${writes ? "written" : "proposed"}   ${mapFile}: what the headings mean; correct it, and import again\n`,
    ...proposal.grounds.map((ground) => `             ${plain(ground)}\n`),
    writes ? "" : `${mapText}\n`,
  ].join("");
}

function writtenLines({ planned, files, mapName }: Imported): readonly string[] {
  const homeOf = ({ before, kind }: PlannedRecord) => before?.file ?? fileOfNew(mapName, kind.name);
  return files.map((path) => {
    const words = writtenWords(planned.filter((one) => homeOf(one) === path));
    return `written    ${path}${words === "" ? "" : `: ${words}`}\n`;
  });
}

function uncomparedText({ original, records, value }: Uncompared, kinds: ReadonlyMap<string, Kind>): string {
  const names = records.map(({ kind, id }) => recordWords(kinds, { kind: kind.name, id })).join(", ");
  return value === undefined
    ? `the comparison of original ${original.id}, which stands on a shelf, says nothing of ${names} any more: the new values are to be compared\n`
    : `the comparison of ${names} was taken out of original ${original.id}: the new values are to be compared\n`;
}

/** What is wrong with maps, each at its line. */
export const faultsOfMap = ({ faults }: ReadMaps): string =>
  faults
    .map(
      ({ file, line, column, message, hint }) =>
        `${file}:${line}:${column} ${plain(message)}\n  hint   ${plain(hint)}\n`,
    )
    .join("");

/** Lines that were made here stay lines; what sheets say cannot act on a terminal. */
const plainLines = (text: string): string => text.split("\n").map(plain).join("\n");
