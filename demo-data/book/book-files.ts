import { createHash } from "node:crypto";
import { join } from "node:path";
import type { Original } from "../generated/records.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import { parseJson } from "../../src/load/parse-json.ts";
import { linesByOriginal } from "../../src/model/comparison.ts";
import { isObject } from "../../src/model/json.ts";
import { originalsAmong } from "../../src/model/read-from.ts";
import { addressOf, type BookRecord } from "../../src/model/record.ts";
import { packageRoot } from "../../src/root.ts";
import { drawn, type Drawn, type OriginalSheet } from "../sheets/original.ts";
import type { Facts } from "./facts.ts";
import type { RecordFile } from "./records.ts";

/** A book to be written: its records, and the papers they were read from. */
export interface BookSource {
  readonly facts: Facts;
  /** Every record file but that of the `original` records, without sources. */
  readonly files: readonly RecordFile[];
  readonly originals: readonly OriginalSheet[];
  /** Last day whose evidence is in the book. */
  readonly cutOff: string;
}

interface Evidence {
  readonly original: string;
  readonly page: number;
  /** Last page, where the record runs on. */
  readonly to: number;
  /** The paper shows only what is planned: nothing was compared with it. */
  readonly foreseen: boolean;
}

type Papers = readonly { readonly sheet: OriginalSheet; readonly paper: Drawn }[];

function evidenceOf(papers: Papers): ReadonlyMap<string, Evidence> {
  const found = new Map<string, Evidence>();
  for (const { sheet, paper } of papers) {
    const put = (shown: OriginalSheet["shows"], foreseen: boolean) => {
      for (const [kind, record] of shown) {
        const address = `${kind}:${record}`;
        const page = paper.found.get(address) ?? 1;
        found.set(address, { original: sheet.id, page, to: lastPage(paper, address, page), foreseen });
      }
    };
    put(sheet.foresees ?? [], true);
    put(sheet.shows, false);
  }
  return found;
}

/**
 * The page on which a record ends: as noted; else, where its paper holds others too, the page before the next begins, or its
 * own where several stand on one.
 */
function lastPage({ found, ends, pages }: Drawn, address: string, page: number): number {
  const noted = ends.get(address);
  if (noted !== undefined) return noted;
  if (!found.has(address)) return pages;
  const begins = [...found.values()];
  if (begins.filter((one) => one === page).length > 1) return page;
  return Math.min(pages, ...begins.filter((one) => one > page).map((one) => one - 1));
}

const originalOf = ({ id, path, title }: OriginalSheet, { bytes, pages }: Drawn): Original => ({
  id,
  path: `files/${path}`,
  sha256: createHash("sha256").update(bytes).digest("hex"),
  title,
  mediaType: "application/pdf",
  pages,
  language: "en",
  signed: false,
});

/** A record with the paper it was read from. */
function withEvidence(kind: string, record: object, evidence: ReadonlyMap<string, Evidence>): object {
  const found = evidence.get("id" in record ? `${kind}:${String(record.id)}` : kind);
  if (found === undefined) return record;
  const { original, page, to } = found;
  if (kind === "person") return { ...record, specimen: original };
  return {
    ...record,
    ...(kind === "nameplate" && { photograph: original }),
    source: { original, page, ...(to > page && { to }) },
  };
}

/** Who typed what was read from an original, and who compared the two; nothing where nothing was read from it. */
const comparison = ({ compared }: OriginalSheet, sha256: string, records: readonly string[] | undefined) =>
  records !== undefined && {
    transcription: { enteredBy: ["B4"], comparedBy: "B5", date: compared, sha256, records },
  };

/** The records that were compared with each original, as its record lists them. */
function linesOf(
  files: readonly RecordFile[],
  originals: readonly Original[],
  evidence: ReadonlyMap<string, Evidence>,
): ReadonlyMap<string, readonly string[]> {
  const records = [{ kind: "original", records: originals }, ...files].flatMap(({ kind, records: list }) =>
    list.map((value) => asRecord(kind, value)),
  );
  const compared = records.filter((record) => evidence.get(addressOf(record))?.foreseen === false);
  return linesByOriginal(compared, kinds, originalsAmong(records));
}

const kinds = loadKinds([join(packageRoot, "schemas")]);

/** A record as a book reads it. */
function asRecord(kind: string, value: object): BookRecord {
  const json = parseJson(JSON.stringify(value));
  if (!isObject(json)) throw new Error(`a record of kind ${kind} is no object`);
  return {
    kind,
    id: typeof json["id"] === "string" ? json["id"] : "",
    file: "",
    pointer: "",
    value: json,
    faulty: false,
  };
}

const text = (value: object) => `${JSON.stringify(value, null, 2)}\n`;

/** Editors find the schema of a file from where it lies. */
function schemaFrom(path: string, kind: string): string {
  return `${"../".repeat(path.split("/").length - 1)}../../../schemas/editor/${kind}.json`;
}

function fileText({ path, kind, records }: RecordFile): string {
  const [only] = records;
  const $schema = schemaFrom(path, kind);
  return kind === "book" || kind === "issue" ? text({ $schema, kind, ...only }) : text({ $schema, kind, records });
}

/** Every file of a book folder by its path: records as JSON, originals as PDF. */
export async function filesOf(source: BookSource): Promise<ReadonlyMap<string, string | Uint8Array>> {
  const { cutOff } = source;
  const files = new Map<string, string | Uint8Array>();
  const papers: { sheet: OriginalSheet; paper: Drawn }[] = [];
  for (const sheet of source.originals.filter(({ day }) => day <= cutOff)) {
    const paper = await drawn(sheet, source.facts);
    files.set(`files/${sheet.path}`, paper.bytes);
    papers.push({ sheet, paper });
  }
  const evidence = evidenceOf(papers);
  const typed = source.files.map((one) => ({
    ...one,
    records: one.records.map((record) => withEvidence(one.kind, record, evidence)),
  }));
  for (const one of typed) files.set(one.path, fileText(one));
  const bare = papers.map(({ sheet, paper }) => originalOf(sheet, paper));
  const lines = linesOf(typed, bare, evidence);
  const originals = papers.map(({ sheet }, index) => ({
    ...bare[index],
    ...(sheet.compared <= cutOff && comparison(sheet, bare[index]?.sha256 ?? "", lines.get(sheet.id))),
  }));
  files.set("originals.json", fileText({ path: "originals.json", kind: "original", records: originals }));
  return files;
}
