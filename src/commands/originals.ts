import { reviewOriginals, type OriginalsReview } from "../load/originals-review.ts";
import { notReadWords } from "../model/not-read.ts";
import { jsonText, plain } from "../report/plain.ts";
import { counted } from "../report/words.ts";
import { bookFolder, readOwnFolder } from "./books.ts";
import { linkSources, proposalsFor, proposalText } from "./original-links.ts";
import { bookArgument, formatOption, UsageError, type Command } from "./command.ts";
import { notReadLine } from "./not-read.ts";

export const originals: Command = {
  name: "originals",
  summary: "compare files/ with the records that name its files, and record new ones",
  readsBook: true,
  arguments: [bookArgument],
  options: {
    add: { means: "write records, with hash, title and page count, for files that no record names" },
    link: {
      means:
        "where the name of a recorded file, or with --add of a new one, speaks of one record, and of no other, and that names no original, make it the record's source",
    },
    rename: { means: "with --add: give files whose names are not portable the names that are proposed" },
    format: formatOption(["text", "json"]),
  },
  help: [
    "New records go into a file of their own, originals/added-<n>.json, with the file's name as title; what each file shows is for " +
      "you to state. Where the name holds the id, number or mark of a record, that record is proposed; of several all are named, and which is " +
      "meant is for you to say. --link, with --add or later, writes the proposal as the record's source, with its page where the file has only one. A hash that was recorded is never overwritten: a file that was replaced on purpose gets a record of its own. A " +
      "file that lies under another name is known by its hash, and its record follows it.",
    "Said and not recorded: a file that is empty, has the bytes of another, has no form that is published, cannot be shown or " +
      "counted, or whose name some system cannot hold (unless --rename is given). What systems leave behind, such as .DS_Store and Thumbs.db, is passed over.",
    "While a file of records or a shelf cannot be read, nothing is written: it may name these files already.",
    "A shelf is looked through, and written to, only where it is named itself, in place of a book. Of the shelves a book uses, its " +
      "originals that changed or are missing are listed.",
    "Exit 0: every file is recorded as it is. Exit 1: a file is changed, missing or not recorded, or a shelf or a file of records was not read.",
  ],
  async run(given, effects) {
    const [adds, renames, links] = ["add", "rename", "link"].map((name) => given.options.has(name));
    if (renames && !adds) throw new UsageError("--rename goes with --add; without it nothing is written or renamed");
    const dir = await bookFolder(given.arguments[0], effects);
    const read = await readOwnFolder(dir, effects);
    if (read === undefined) return 2;
    const ids = read.records.filter(({ kind }) => kind === "original").map(({ id }) => id);
    const spoken = asTyped(given.arguments[0]);
    const unread = notReadWords(read);
    const review = await reviewOriginals(read);
    const proposals = proposalsFor(review, read);
    // What was not read may hold the record of a file, and name the original of a record: nothing is written beside it.
    const held = unread.length > 0 && (adds === true || links === true);
    const done = adds && !held ? await carryOut(dir, review, renames === true) : nothing;
    const recorded = new Set([...ids, ...done.recorded]);
    const linked = links && !held ? await linkSources(dir, read, proposals, done.recorded) : [];
    if (given.options.get("format") === "json")
      effects.print(
        jsonText({
          tool: effects.engine.tool,
          format: 1,
          ...done,
          linked: linked.map(({ original }) => original),
          ...review,
          proposals,
          notRead: unread,
          held,
        }),
      );
    else
      effects.print(
        reviewText(review, done, adds === true, spoken) +
          proposalText(proposals, linked, read.kinds, links === true, spoken, recorded) +
          notReadLine(read) +
          (held ? "nothing was written: what was not read may name these files already; mend that first\n" : ""),
      );
    const open =
      unread.length +
      review.changed.length +
      review.missing.length +
      review.notAdded.length +
      review.unrecorded.filter(({ id }) => !done.recorded.includes(id)).length +
      review.moved.filter(({ id }) => !done.followed.includes(id)).length;
    return open > 0 ? 1 : 0;
  },
};

/** The command as one would type it again for the same folder. */
const asTyped = (folder: string | undefined) =>
  [
    "databook originals",
    ...(folder === undefined ? [] : [/^[\w./\\:-]+$/.test(folder) ? folder : `"${plain(folder)}"`]),
  ].join(" ");

interface Done {
  /** File of the new records. */
  readonly added: string | null;
  /** Ids of new records. */
  readonly recorded: readonly string[];
  /** Ids of records that follow their file. */
  readonly followed: readonly string[];
}

const nothing: Done = { added: null, recorded: [], followed: [] };

async function carryOut(dir: string, review: OriginalsReview, renames: boolean): Promise<Done> {
  const { addOriginals, moveRecord, renameOriginal } = await import("../load/originals-add.ts");
  const adding = review.unrecorded.filter(({ from }) => renames || from === undefined);
  const moving = review.moved.filter(({ lies }) => renames || lies === undefined);
  for (const { from, path } of adding) if (from !== undefined) await renameOriginal(dir, from, path);
  for (const { lies, to } of moving) if (lies !== undefined) await renameOriginal(dir, lies, to);
  for (const one of moving) await moveRecord(dir, one);
  return {
    added: adding.length > 0 ? await addOriginals(dir, adding) : null,
    recorded: adding.map(({ id }) => id),
    followed: moving.map(({ id }) => id),
  };
}

function reviewText(review: OriginalsReview, done: Done, adds: boolean, command: string): string {
  const { unrecorded, notAdded, moved, changed, missing, junk, sound } = review;
  const named = [...unrecorded, ...moved].some((one) => one.because !== undefined);
  return [
    ...unrecorded.map(({ id, path, from, because, pages, sha256, title }) => {
      const what = `${id}, "${plain(title)}", ${counted(pages, "page")}, SHA-256 ${sha256.slice(0, 16)}`;
      const isDone = done.recorded.includes(id);
      if (from === undefined) return `${isDone ? "added       " : "not recorded"} ${plain(path)} as ${what}`;
      return isDone
        ? `added        ${plain(from)}, renamed to ${plain(path)}, as ${what}`
        : `not recorded ${plain(from)}: ${because ?? ""}; ${plain(path)} would do`;
    }),
    ...moved.map(({ id, from, to, lies, because }) =>
      done.followed.includes(id)
        ? `moved        ${plain(from)} lies at ${plain(to)} now: ${id} follows it`
        : `moved        ${plain(from)} of ${id} lies at ${plain(lies ?? to)} now${because === undefined ? "" : `: ${because}; ${plain(to)} would do`}`,
    ),
    ...notAdded.map(({ path, sort, why }) => `${sort.padEnd(12)} ${plain(path)}: ${plain(why)}`),
    ...changed.map(
      ({ id, path, recorded, found }) =>
        `changed      ${plain(path)}: ${id} records ${plain(recorded).slice(0, 16)}, the file has ${found.slice(0, 16)}; put the original back, or record the new file beside it`,
    ),
    ...missing.map(({ id, path }) => `missing      ${plain(path)}: ${id} names it; put the file there`),
    ...junk.map((path) => `passed over  ${plain(path)}: left there by a system or a program`),
    `${counted(sound, "original")} as recorded, ${done.added === null ? "none added" : `${done.recorded.length} added in ${done.added}`}, ` +
      `${unrecorded.length - done.recorded.length + notAdded.length} not recorded, ${moved.length} moved, ${changed.length} changed, ${missing.length} missing`,
    ...(!adds && unrecorded.length + moved.length > 0 ? [`to record them: ${command} --add`] : []),
    ...(named && unrecorded.length + moved.length > done.recorded.length + done.followed.length
      ? [`to give files portable names: ${command} --add --rename`]
      : []),
    "",
  ].join("\n");
}
