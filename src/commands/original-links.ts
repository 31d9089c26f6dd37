import { join } from "node:path";
import { changedFiles } from "../imports/record-files.ts";
import type { Rewritten } from "../imports/uncompared.ts";
import { linkRecords } from "../link/graph.ts";
import { ownersByName, type Spoken } from "../load/original-owners.ts";
import type { OriginalsReview } from "../load/originals-review.ts";
import { NotWritten, putFiles, textAt } from "../load/put-files.ts";
import type { Kind } from "../model/kind.ts";
import { originalsAmong, takenFrom } from "../model/read-from.ts";
import { shelfOf } from "../model/shelf.ts";
import { recordWords } from "../model/titles.ts";
import { plain } from "../report/plain.ts";
import { UsageError, type ReadBook } from "./command.ts";
import { addressOf } from "../model/record.ts";

/** An original that no record names, and the records its file's name speaks of. */
export interface OriginalProposal {
  readonly original: string;
  readonly path: string;
  readonly pages: number | null;
  readonly records: readonly Spoken[];
}

/** Proposals for new originals, and for those recorded that nothing was read from and no record names. */
export function proposalsFor(review: OriginalsReview, { records, kinds }: ReadBook): readonly OriginalProposal[] {
  const spokenOf = ownersByName(records, kinds);
  const originals = originalsAmong(records);
  const used = new Set(
    records.flatMap((one) => takenFrom(one, kinds.get(one.kind), originals).map(({ original }) => original.id)),
  );
  const { graph } = linkRecords(records, kinds);
  const idle = [...originals.byId.values()].filter(
    ({ id, file }) =>
      !used.has(id) &&
      shelfOf(file) === undefined &&
      (graph.back.get(addressOf({ kind: "original", id })) ?? []).length === 0,
  );
  return [
    ...review.unrecorded.map(({ id, path, from, pages }) => ({ original: id, path: from ?? path, pages })),
    ...idle.map(({ id, value }) => ({
      original: id,
      path: typeof value["path"] === "string" ? value["path"] : "",
      pages: typeof value["pages"] === "number" ? value["pages"] : null,
    })),
  ].map((one) => ({ ...one, records: spokenOf(one.path) }));
}

/** The record a proposal may be written to: the only one its name speaks of, if that names no original. */
function ownerOf({ records }: OriginalProposal): Spoken | undefined {
  const [only, ...more] = records;
  return only !== undefined && more.length === 0 && !only.taken ? only : undefined;
}

/** Makes each original that is recorded the source of the one record its name speaks of. Two for one record are left alone. */
export async function linkSources(
  dir: string,
  { records, kinds }: ReadBook,
  proposals: readonly OriginalProposal[],
  added: readonly string[],
): Promise<readonly OriginalProposal[]> {
  const there = new Set([...records.filter(({ kind }) => kind === "original").map(({ id }) => id), ...added]);
  const sure = proposals.filter((one) => ownerOf(one) !== undefined && there.has(one.original));
  const claims = (one: OriginalProposal) => {
    const owner = ownerOf(one);
    return owner === undefined ? undefined : addressOf(owner);
  };
  const alone = sure.filter((one) => sure.filter((other) => claims(other) === claims(one)).length === 1);
  const changes = alone.flatMap((one): (Rewritten & { readonly file: string })[] => {
    const owner = ownerOf(one);
    const before = records.find(({ kind, id }) => kind === owner?.kind && id === owner.id);
    const kind = before === undefined ? undefined : kinds.get(before.kind);
    if (before === undefined || kind === undefined) return [];
    const source = { original: one.original, ...(one.pages === 1 && { page: 1 }) };
    return [{ kind, id: before.id, before, value: { ...before.value, source }, file: before.file }];
  });
  const texts = new Map<string, string | undefined>();
  for (const { file } of changes) texts.set(file, await textAt(join(dir, file)));
  const files = [...changedFiles(changes, "", (path) => texts.get(path))].map(([path, after]) => ({
    path,
    before: texts.get(path),
    after,
  }));
  await putFiles(dir, files).catch((error: unknown) => {
    throw error instanceof NotWritten ? new UsageError(error.message) : error;
  });
  return alone;
}

/** What is proposed, and what was written of it; `command` is what was typed, without its options, `recorded` the originals with a record. */
export function proposalText(
  proposals: readonly OriginalProposal[],
  linked: readonly OriginalProposal[],
  kinds: ReadonlyMap<string, Kind>,
  links: boolean,
  command: string,
  recorded: ReadonlySet<string>,
): string {
  const lines = proposals.flatMap((one) => {
    const names = one.records.map((record) => `${recordWords(kinds, record)} (by ${plain(record.by)})`);
    const what = `${plain(one.original)}, ${plain(one.path)}`;
    const page = one.pages === 1 ? "page 1" : "its page is for you to state";
    if (linked.includes(one)) return [`linked       ${what}: source of ${names.join("")}, ${page}`];
    const [only] = one.records;
    if (only === undefined) return [];
    if (one.records.length > 1)
      return [
        `unclear      ${what}: its name speaks of ${names.join(" and ")}; name it as the source of the one that is meant`,
      ];
    if (only.taken)
      return [
        `proposed     ${what}: speaks of ${names.join("")}, which names an original already or stands on a shelf`,
      ];
    return [`proposed     ${what}: source of ${names.join("")}${links ? "; another file claims it too" : ""}`];
  });
  const open = proposals.filter((one) => ownerOf(one) !== undefined && !linked.includes(one));
  // Files that are recorded need no --add any more.
  const adds = open.some((one) => !recorded.has(one.original));
  return [
    ...lines,
    ...(open.length > 0 && !links
      ? [`to make them the sources of these records: ${command}${adds ? " --add" : ""} --link`]
      : []),
  ]
    .map((line) => `${line}\n`)
    .join("");
}
