import { createHash } from "node:crypto";
import { basename, join, resolve } from "node:path";
import { mapSchema, readMaps, type ReadMaps } from "../imports/read-maps.ts";
import { mapText } from "../imports/map-text.ts";
import type { ImportPlan } from "../imports/import-plan.ts";
import { planImport } from "../imports/plan.ts";
import { propose, type Proposal, type WantedKinds } from "../imports/propose.ts";
import { changedFiles, fileOfNew, written } from "../imports/record-files.ts";
import { NotWritten, putFiles, textAt, type FileChange } from "../load/put-files.ts";
import { uncomparedBy, type Rewritten, type Uncompared } from "../imports/uncompared.ts";
import type { Kind } from "../model/kind.ts";
import type { BookRecord } from "../model/record.ts";
import { plain } from "../report/plain.ts";
import { packageRoot } from "../root.ts";
import { isSheetFault, type Workbook } from "../sheets/cells.ts";
import { readSheetFile } from "../sheets/read.ts";
import { bookFolder, readOrSay } from "./books.ts";
import { formatOption, UsageError, type Command, type Effects, type Exit, type Given } from "./command.ts";
import { notReadClause } from "./not-read.ts";
import { bytesOf, nameOfMap } from "./import-file.ts";
import { faultsOfMap, importJson, importText, type Imported } from "./import-text.ts";
import { wantedKinds } from "./wanted-kinds.ts";

const delimiters: ReadonlyMap<string, "," | ";" | "\t"> = new Map([
  ["comma", ","],
  ["semicolon", ";"],
  ["tab", "\t"],
]);

export const importSheet: Command = {
  name: "import",
  summary: "take a shop's sheet (.xlsx or .csv) into the records, by a map of its headings",
  readsBook: true,
  arguments: [{ name: "sheet", required: true, means: "workbook or CSV file to take in" }],
  options: {
    book: { value: "DIR", means: "folder of the book; the one around here, or records/, if not given" },
    map: { value: "NAME", means: "map of the sheet, imports/NAME.json in the book; named like the file if not given" },
    kind: {
      value: "KIND",
      means:
        "at the first import: what the rows are, where the headings leave a doubt; of several sheets SHEET=KIND, with commas",
    },
    write: { means: "write what is shown; without it nothing is written" },
    overwrite: {
      means:
        "with --write: conflicts too; what a person compared with the original of the former values is then taken out of the comparison",
    },
    delimiter: {
      value: "SIGN",
      choices: [...delimiters.keys()],
      means: "sign between the fields of a CSV file, where its first rows leave a doubt",
    },
    format: formatOption(["text", "json"]),
  },
  help: [
    "Shows what would become of each row: new, changed with the old and the new value, unchanged, no longer in the sheet; and " +
      "what cannot be read, by sheet, row and heading. A cell is read as it is displayed. Nothing is guessed: a date such as " +
      "01/02/2026 or a number such as 1,234 is read when the map declares the order or the sign.",
    "The first import proposes a map, which --write keeps as imports/NAME.json: by heading the field it goes to, unit, words " +
      "and how ids are made. A heading nobody knows is refused with the nearest field until the map says where it goes, or ignores it.",
    "New records go to sheets/NAME/KIND.json; a record that stands elsewhere is changed where it stands. Each remembers its file, " +
      "row and a digest of what was written. Importing again changes only what the map writes. A conflict is a change to values " +
      "that were typed or changed by hand, compared, signed, or that an exception rests on. Rows that are gone are listed, nothing is deleted.",
    "Nothing is written while anything cannot be read, and all that is written is written, or none of it.",
    "Exit 0: all is read, and nothing is left open. Exit 1: something cannot be read, is a conflict, or is to be settled in " +
      "the map. Exit 2: the sheet, the map or the book cannot be used at all.",
  ],
  async run(given, effects) {
    const [writes, overwrites] = [given.options.has("write"), given.options.has("overwrite")];
    if (overwrites && !writes) throw new UsageError("--overwrite goes with --write; without it nothing is written");
    const file = resolve(effects.cwd, given.arguments[0] ?? "");
    const name = basename(file);
    const dir = await bookFolder(given.options.get("book"), effects);
    const read = readOrSay(dir, effects);
    if (read === undefined) return 2;
    const unread = notReadClause(read);
    if (unread !== undefined) {
      effects.say(
        `the book cannot be compared with a sheet, as what it holds is not known: ${unread}\n` +
          "  hint   check says what is wrong with it\n",
      );
      return 2;
    }
    const { bytes, openElsewhere } = await bytesOf(file);
    if (openElsewhere) effects.say(`${name} is open in another program: what is not saved there is not read\n`);
    effects.progress("reading the sheet");
    const delimiter = delimiters.get(given.options.get("delimiter") ?? "");
    const workbook = await readSheetFile(bytes, name, delimiter === undefined ? {} : { delimiter });
    if (isSheetFault(workbook)) {
      const { message, why, hint, place } = workbook;
      effects.say(
        `${name}${place === undefined ? "" : `, ${place}`}: ${plain(message)}\n  why    ${plain(why)}\n  hint   ${plain(hint)}\n`,
      );
      return 2;
    }
    for (const left of workbook.leftOut) effects.say(`${name}: ${plain(left)}: not read\n`);
    const mapName = nameOfMap(given.options.get("map"), name);
    const mapFile = `imports/${mapName}.json`;
    const known = await textAt(join(dir, mapFile));
    const proposal =
      known === undefined
        ? proposed(workbook, read.kinds, wantedKinds(given.options.get("kind"), workbook, read.kinds))
        : undefined;
    const mapText = known ?? proposal?.text ?? "";
    const maps: ReadMaps =
      mapText === ""
        ? { maps: [], faults: [] }
        : readMaps(mapFile, mapText, read.kinds, mapSchema(join(packageRoot, "schemas")));
    if (known !== undefined && maps.faults.length > 0) {
      effects.say(faultsOfMap(maps));
      return 2;
    }
    const plan = planImport({
      workbook,
      file: name,
      sha256: createHash("sha256").update(bytes).digest("hex"),
      maps: maps.maps,
      mapName,
      records: read.records,
      kinds: read.kinds,
    });
    const task = {
      records: read.records,
      kinds: read.kinds,
      dir,
      name,
      mapName,
      mapFile,
      known,
      mapText,
      maps,
      proposal: proposal?.proposal,
      plan,
    };
    return finish(task, given, effects, overwrites, writes);
  },
};

interface Task {
  readonly dir: string;
  readonly name: string;
  readonly mapName: string;
  readonly mapFile: string;
  readonly known: string | undefined;
  readonly mapText: string;
  readonly maps: ReadMaps;
  readonly proposal: Proposal | undefined;
  readonly plan: ImportPlan;
  readonly records: readonly BookRecord[];
  readonly kinds: ReadonlyMap<string, Kind>;
}

async function finish(task: Task, given: Given, effects: Effects, overwrites: boolean, writes: boolean): Promise<Exit> {
  const { dir, mapName, mapFile, known, mapText, maps, proposal, plan, kinds } = task;
  const unknown = maps.maps.length === 0 ? (proposal?.unknown ?? []) : [];
  const faults = [...(proposal?.faults ?? []), ...unknown, ...plan.faults];
  const unsettled = faults.length > 0 || maps.faults.length > 0;
  const planned = unsettled ? [] : written(plan, overwrites);
  const uncompared = uncomparedBy(planned, task.records);
  // An original that the sheet itself writes keeps what it says: the digests tell that it is out of date.
  const own = new Set(planned.map(({ before }) => before));
  const records = [...planned, ...withoutComparison(uncompared, kinds).filter(({ before }) => !own.has(before))];
  const keepsMap = known === undefined && mapText !== "" && proposal?.own !== true;
  const changes = writes ? await changesOf(dir, mapName, records) : [];
  if (keepsMap) changes.push({ path: mapFile, before: undefined, after: mapText });
  if (writes) await put(dir, changes);
  const told: Imported = {
    ...task,
    plan: { ...plan, faults },
    unsettled,
    planned,
    uncompared,
    files: writes ? changes.map(({ path }) => path) : [],
    waits: keepsMap || records.length > 0,
    writes,
    overwrites,
  };
  const format = given.options.get("format");
  effects.print(format === "json" ? importJson(told, effects.engine.tool) : importText(told));
  const open = plan.records.some(({ state }) => state === "conflict") && !(overwrites && writes);
  return unsettled || open ? 1 : 0;
}

/** Records of originals that lose the comparison of what is overwritten. */
const withoutComparison = (uncompared: readonly Uncompared[], kinds: ReadonlyMap<string, Kind>): readonly Rewritten[] =>
  uncompared.flatMap(({ original, value }) => {
    const kind = kinds.get(original.kind);
    return kind === undefined || value === undefined ? [] : [{ kind, id: original.id, before: original, value }];
  });

/** The files that records are written to, as they are and as they will be. */
async function changesOf(dir: string, mapName: string, records: readonly Rewritten[]): Promise<FileChange[]> {
  const texts = new Map<string, string | undefined>();
  const files = new Set(records.map(({ before, kind }) => before?.file ?? fileOfNew(mapName, kind.name)));
  for (const path of files) texts.set(path, await textAt(join(dir, path)));
  return [...changedFiles(records, mapName, (path) => texts.get(path))].map(([path, after]) => ({
    path,
    before: texts.get(path),
    after,
  }));
}

async function put(dir: string, changes: readonly FileChange[]): Promise<void> {
  try {
    await putFiles(dir, changes);
  } catch (error) {
    if (error instanceof NotWritten) throw new UsageError(error.message);
    throw error;
  }
}

function proposed(
  workbook: Workbook,
  kinds: ReadonlyMap<string, Kind>,
  wanted: WantedKinds,
): { readonly proposal: Proposal; readonly text: string } {
  const proposal = propose(workbook, kinds, wanted);
  const [one, ...more] = proposal.maps;
  if (one === undefined) return { proposal, text: "" };
  return { proposal, text: mapText(more.length === 0 ? one : proposal.maps) };
}
