import { sheetWords } from "../../model/imported.ts";
import { isList, isObject } from "../../model/json.ts";
import { addressOf, type BookRecord } from "../../model/record.ts";
import { issuePath } from "../publication.ts";
import type { Block, Note } from "../blocks.ts";
import { comparedWords, comparisonNotes } from "./comparison-words.ts";
import { linkTo, nameOf, plain, type Context } from "./context.ts";
import { listed } from "./listed.ts";
import { fileOf, originalState } from "./original-file.ts";
import { shelfNotes } from "./shelf-words.ts";
import { counted } from "./titles.ts";

/** Where the record stands, which original it was taken from, and who compared the two. */
export function sourceNotes(context: Context, record: BookRecord): Note[] {
  const notes: Note[] = [{ lead: "Source", text: [{ type: "code", text: context.source(record) }] }];
  const sheet = sheetWords(record.value["imported"]);
  if (sheet !== undefined) notes.push({ lead: "Sheet", text: [sheet] });
  const source = linkOf(context, record, "/source/original");
  const page = isObject(record.value["source"]) ? record.value["source"]["page"] : undefined;
  const comparisons = comparisonsIn(context, record);
  const readBack = readBackWords(context, record);
  for (const comparison of comparisons) {
    const { original } = comparison;
    notes.push({
      lead: "Original",
      text: [
        linkTo(context, original),
        ...(page === undefined || original !== source ? [] : [`, page ${plain(page)}${lastPage(record)}`]),
        comparedWords(context, comparison),
        ...(comparisons.length === 1 && readBack !== undefined ? [`. ${readBack}`] : []),
      ],
    });
  }
  // Of a record taken from several papers it is said of all together: each value was looked for on its own.
  if (comparisons.length > 1 && readBack !== undefined) notes.push({ lead: "All originals", text: [readBack] });
  return [...notes, ...comparisonNotes(context, record), ...shelfNotes(context, record)];
}

const lastPage = ({ value: { source } }: BookRecord) =>
  isObject(source) && typeof source["to"] === "number" ? ` to ${source["to"]}` : "";

/** Which values of a record no program looks for; the page of what was not checked says why. */
const notLookedFor = "choices, sentences and what no paper shows are not looked for";

/** What was read back from the text of the original: never more than the file says of itself. */
function readBackWords({ judged }: Context, record: BookRecord): string | undefined {
  const read = judged.readBack.get(addressOf(record));
  if (read === undefined) return undefined;
  const { state, values, absent } = read;
  const counts =
    `${values - absent} of the ${counted(values, "value")} looked for ${values - absent === 1 ? "stands" : "stand"} there; ` +
    notLookedFor;
  switch (state) {
    case "read":
      return `Read back from the file's own text: ${counts}`;
    case "recognised":
      return `Read back from text that a machine recognised: ${counts}`;
    case "no text":
      return "Not read back: the page has no text";
    case "unread":
      return `Not read back: ${read.why ?? "its text was not read"}`;
  }
}

const comparisonsIn = ({ judged }: Context, record: BookRecord) => judged.comparisons.get(addressOf(record)) ?? [];

function comparedWith(context: Context, record: BookRecord, original: BookRecord): string {
  const comparison = comparisonsIn(context, record).find((one) => one.original === original);
  return comparison === undefined ? "" : comparedWords(context, comparison).replace(/^[,.] /, "");
}

export function linkOf(context: Context, record: BookRecord, pointer: string): BookRecord | undefined {
  return context.judged.graph.out.get(record)?.get(pointer)?.to;
}

/** Originals the record was taken from or that are attached to it; an original shows its own file. */
export function scanBlocks(context: Context, record: BookRecord): Block[] {
  if (record.kind === "original") return [scanOf(context, record, undefined, "")];
  const links = [...(context.judged.graph.out.get(record)?.values() ?? [])].filter(
    (link) => link.to?.kind === "original",
  );
  const originals = [...new Set(links.flatMap((link) => link.to ?? []))];
  if (originals.length === 0) return [];
  return [
    { type: "heading", level: 2, text: originals.length === 1 ? "Original" : "Originals" },
    ...originals.map((original): Block => {
      const page = isObject(record.value["source"]) ? record.value["source"]["page"] : undefined;
      const isSource = linkOf(context, record, "/source/original") === original;
      return scanOf(
        context,
        original,
        typeof page === "number" && isSource ? page : undefined,
        comparedWith(context, record, original),
      );
    }),
  ];
}

function scanOf(
  context: Context,
  original: BookRecord,
  page: number | undefined,
  comparedBy: string,
): Extract<Block, { type: "scan" }> {
  const { withheld, notShown, remarks } = originalState(context, original);
  const { title, path, sha256, pages } = original.value;
  const file = fileOf(context, original);
  const other = file !== undefined && typeof sha256 === "string" && file.sha256 !== sha256;
  const said = [
    ...(other && withheld === undefined
      ? [`The file that lies here is not the one recorded: its SHA-256 is ${file.sha256}.`]
      : []),
    ...remarks,
  ];
  return {
    type: "scan",
    title: plain(title) === "" ? original.id : `${original.id}, ${plain(title)}`,
    path: file === undefined ? plain(path) : issuePath(file),
    ...(withheld !== undefined && { absent: withheld }),
    ...(said.length > 0 && { remark: said.join(" ") }),
    ...(notShown !== undefined && { hidden: true }),
    sha256: plain(sha256),
    pages: typeof pages === "number" ? pages : 0,
    compared: comparedBy,
    ...(page !== undefined && { page }),
  };
}

export function signatureBlock(context: Context, record: BookRecord): Block[] {
  const listed = record.value["signatures"];
  if (!isList(listed) || listed.length === 0) return [];
  return [
    {
      type: "signatures",
      rows: listed.flatMap((one, index) => {
        if (!isObject(one)) return [];
        const person = linkOf(context, record, `/signatures/${index}/person`);
        const name =
          person === undefined ? plain(one["person"]) : `${plain(person.value["name"]) || person.id} (${person.id})`;
        const that =
          typeof record.value["adopts"] === "string" ? "signed for the figures adopted" : "signed the original";
        return [{ for: plain(one["role"]), that, date: plain(one["date"]), by: name }];
      }),
    },
  ];
}

const shownNames = 60;

/** Who names this record: links back, by kind. */
export function namedBy(context: Context, record: BookRecord): Block[] {
  const links = context.judged.graph.back.get(addressOf(record)) ?? [];
  const from = [...new Set(links.map((link) => link.from))].filter((one) => one !== record);
  if (from.length === 0) return [];
  return [
    { type: "heading", level: 2, text: "Named by" },
    {
      type: "paragraph",
      text: [
        ...listed(
          from.map((one) => [nameOf(context, one)]),
          shownNames,
        ),
        ".",
      ],
    },
  ];
}
