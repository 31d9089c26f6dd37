import { createHash } from "node:crypto";
import { PDFDocument } from "pdf-lib";
import type { Original } from "../../src/generated/records.ts";
import { upTo } from "./edition.ts";
import { recordFiles, type Edition, type RecordFile } from "./records.ts";
import { originalSheets } from "./sheets/index.ts";
import { bytesOf, type OriginalSheet } from "./sheets/original.ts";

/** The final book, and the same book in mid-manufacture. */
export const finalEdition: Edition = { revision: "0", cutOff: "2026-07-17" };
export const interimEdition: Edition = { revision: "P3", cutOff: "2026-06-05" };

interface Evidence {
  readonly original: string;
  readonly page: number;
  /** Day the two were compared; null while the paper shows only what is planned. */
  readonly compared: string | null;
}

/** Fields that name an original themselves. */
const named: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "nameplate:NP-01": { photograph: "ORG-NP-01" },
};

function evidenceOf(sheets: readonly OriginalSheet[]): ReadonlyMap<string, Evidence> {
  const found = new Map<string, Evidence>();
  for (const { id, shows, foresees = [], compared } of sheets) {
    for (const [kind, record, page = 1] of foresees)
      found.set(`${kind}:${record}`, { original: id, page, compared: null });
    for (const [kind, record, page = 1] of shows) found.set(`${kind}:${record}`, { original: id, page, compared });
  }
  return found;
}

async function originalOf(sheet: OriginalSheet, bytes: Uint8Array): Promise<Original> {
  return {
    id: sheet.id,
    path: `files/${sheet.path}`,
    sha256: createHash("sha256").update(bytes).digest("hex"),
    title: sheet.title,
    mediaType: "application/pdf",
    pages: (await PDFDocument.load(bytes, { updateMetadata: false })).getPageCount(),
    language: "en",
    signed: false,
  };
}

const transcribed = (date: string) => ({ enteredBy: "B4", comparedBy: "B5", date });

/** A record with the paper it was read from, and who compared the two. */
function withEvidence(kind: string, record: object, evidence: ReadonlyMap<string, Evidence>, cutOff: string): object {
  const address = "id" in record ? `${kind}:${String(record.id)}` : kind;
  const found = evidence.get(address);
  return {
    ...record,
    ...named[address],
    ...(kind === "person" && found !== undefined && { specimen: found.original }),
    ...(found !== undefined && kind !== "person" && { source: { original: found.original, page: found.page } }),
    ...(kind !== "person" &&
      found?.compared != null &&
      found.compared <= cutOff && { transcription: transcribed(found.compared) }),
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
export async function bookFiles(edition: Edition): Promise<ReadonlyMap<string, string | Uint8Array>> {
  const { cutOff } = edition;
  const files = new Map<string, string | Uint8Array>();
  const sheets = originalSheets.filter(({ day }) => day <= cutOff);
  const originals: Original[] = [];
  for (const sheet of sheets) {
    const bytes = await bytesOf(sheet);
    files.set(`files/${sheet.path}`, bytes);
    originals.push(await originalOf(sheet, bytes));
  }
  const evidence = evidenceOf(sheets);
  const records = upTo(edition, recordFiles(edition), edition.revision === finalEdition.revision);
  for (const file of records) files.set(file.path, fileText(file, evidence, cutOff));
  files.set(
    "originals.json",
    fileText({ path: "originals.json", kind: "original", records: originals }, new Map(), cutOff),
  );
  return files;
}
