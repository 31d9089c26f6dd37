import { createHash } from "node:crypto";
import type { Original } from "../../src/generated/records.ts";
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
  /** Day the two were compared; null while the paper shows only what is planned. */
  readonly compared: string | null;
}

type Papers = readonly { readonly sheet: OriginalSheet; readonly paper: Drawn }[];

function evidenceOf(papers: Papers): ReadonlyMap<string, Evidence> {
  const found = new Map<string, Evidence>();
  for (const { sheet, paper } of papers) {
    const put = (shown: OriginalSheet["shows"], compared: string | null) => {
      for (const [kind, record] of shown) {
        const address = `${kind}:${record}`;
        const page = paper.found.get(address) ?? 1;
        found.set(address, { original: sheet.id, page, to: lastPage(paper, address, page), compared });
      }
    };
    put(sheet.foresees ?? [], null);
    put(sheet.shows, sheet.compared);
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

const transcribed = (date: string) => ({ enteredBy: "B4", comparedBy: "B5", date });

/** A record with the paper it was read from, and who compared the two. */
function withEvidence(kind: string, record: object, evidence: ReadonlyMap<string, Evidence>, cutOff: string): object {
  const found = evidence.get("id" in record ? `${kind}:${String(record.id)}` : kind);
  if (found === undefined) return record;
  const { original, page, to, compared } = found;
  if (kind === "person") return { ...record, specimen: original };
  return {
    ...record,
    ...(kind === "nameplate" && { photograph: original }),
    source: { original, page, ...(to > page && { to }) },
    ...(compared !== null && compared <= cutOff && { transcription: transcribed(compared) }),
  };
}

const text = (value: object) => `${JSON.stringify(value, null, 2)}\n`;

/** Editors find the schema of a file from where it lies. */
function schemaFrom(path: string, kind: string): string {
  return `${"../".repeat(path.split("/").length - 1)}../../../schemas/editor/${kind}.json`;
}

function fileText(
  { path, kind, records }: RecordFile,
  evidence: ReadonlyMap<string, Evidence>,
  cutOff: string,
): string {
  const full = records.map((record) => withEvidence(kind, record, evidence, cutOff));
  const [only] = full;
  const $schema = schemaFrom(path, kind);
  return kind === "book" || kind === "issue"
    ? text({ $schema, kind, ...only })
    : text({ $schema, kind, records: full });
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
  for (const one of source.files) files.set(one.path, fileText(one, evidence, cutOff));
  const originals = papers.map(({ sheet, paper }) => originalOf(sheet, paper));
  files.set(
    "originals.json",
    fileText({ path: "originals.json", kind: "original", records: originals }, new Map(), cutOff),
  );
  return files;
}
