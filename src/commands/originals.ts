import { addOriginals, reviewOriginals, type OriginalsReview } from "../load/originals-add.ts";
import { plain } from "../report/plain.ts";
import { counted } from "../report/words.ts";
import { bookFolder, readOrSay } from "./books.ts";
import { bookArgument, formatOption, type Command } from "./command.ts";

export const originals: Command = {
  name: "originals",
  summary: "compare files/ with the records that name its files, and record new ones",
  arguments: [bookArgument],
  options: {
    add: { means: "write records, with hash and page count, for files that no record names" },
    format: formatOption(["text", "json"]),
  },
  help: [
    "New records go into a file of their own, originals/added-<n>.json; what each file shows is for you to state. A hash that " +
      "was recorded is never overwritten: a file that was replaced on purpose gets a record of its own.",
    "Exit 0: every file is recorded as it is. Exit 1: a file is changed or missing, or (without --add) not recorded.",
  ],
  async run(given, effects) {
    const dir = await bookFolder(given.arguments[0], effects);
    const read = readOrSay(dir, effects);
    if (read === undefined) return 2;
    const review = reviewOriginals(read);
    const adds = given.options.has("add") && review.unrecorded.length > 0;
    const added = adds ? await addOriginals(dir, review.unrecorded) : null;
    if (given.options.get("format") === "json")
      effects.print(`${JSON.stringify({ tool: effects.engine.tool, format: 1, added, ...review }, null, 2)}\n`);
    else effects.print(reviewText(review, added));
    const open = review.changed.length + review.missing.length + (added === null ? review.unrecorded.length : 0);
    return open > 0 ? 1 : 0;
  },
};

function reviewText(review: OriginalsReview, added: string | null): string {
  const pages = (count: number | undefined) => (count === undefined ? "pages not counted" : counted(count, "page"));
  const rows = review.unrecorded.map(
    ({ id, path, sha256, pages: count }) =>
      `${added === null ? "not recorded" : "added       "} ${plain(path)} as ${id}, ${pages(count)}, SHA-256 ${sha256.slice(0, 16)}`,
  );
  return [
    ...rows,
    ...review.problems.map(({ path, problem }) => `look at      ${plain(path)}: ${problem}`),
    ...review.changed.map(
      ({ id, path, recorded, found }) =>
        `changed      ${plain(path)}: ${id} records ${plain(recorded).slice(0, 16)}, the file has ${found.slice(0, 16)}; put the original back, or record the new file beside it`,
    ),
    ...review.missing.map(({ id, path }) => `missing      ${plain(path)}: ${id} names it; put the file there`),
    `${counted(review.sound, "original")} as recorded, ${review.unrecorded.length} ${added === null ? "not recorded" : `added in ${added}`}, ` +
      `${review.changed.length} changed, ${review.missing.length} missing`,
    ...(added === null && review.unrecorded.length > 0 ? [`to record them: databook originals --add`] : []),
    "",
  ].join("\n");
}
