import { ownChoice, published, type Basis } from "../model/basis.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Finding } from "../model/finding.ts";
import { byCodePoint } from "../model/order.ts";
import type { OriginalFault, OriginalNature } from "../model/original.ts";
import { addressOf, type BookFile, type BookRecord } from "../model/record.ts";
import { pathNamedBy } from "../model/shelf.ts";
import { locate, type Court } from "../court/court.ts";
import { addFinding } from "../court/entries.ts";
import { lostFolders, type LostFolder } from "./lost-folders.ts";
import { keyOf, findingKey, type FindingKey } from "../model/finding-key.ts";
import { finderOf, newFinding } from "../model/new-finding.ts";

const basis: Basis = published("FIPS 180-4", "2015", "SHA-256");

const formBasis = ownChoice(
  "a book is opened for decades and by strangers: it holds nothing that runs or that few can open",
);
const shownBasis = ownChoice("an original is evidence as far as a reader can see it");

export const originalRules: readonly BuiltIn[] = [
  { id: "original-present", title: "The file of an original is in the book", severity: "nonconformity", basis },
  {
    id: "original-unchanged",
    title: "The file of an original has the hash that was recorded",
    severity: "nonconformity",
    basis,
    reads: [{ kinds: ["original"], paths: ["path", "sha256"] }],
  },
  { id: "original-recorded", title: "Every file in files/ has a record", severity: "note", basis },
  {
    id: "original-form",
    title: "An original has a form that is published",
    severity: "nonconformity",
    basis: formBasis,
  },
  { id: "original-sound", title: "An original opens whole", severity: "nonconformity", basis: shownBasis },
  {
    id: "original-described",
    title: "An original is recorded as what its file is",
    severity: "nonconformity",
    basis: ownChoice("whoever opens the file goes by what the record says of it"),
    reads: [{ kinds: ["original"], paths: ["mediaType", "pages", "signed"] }],
  },
  { id: "original-shown", title: "The pages of an original can be shown", severity: "query", basis: shownBasis },
];

/** Compares every `original` record with the file it names. Files that no record names are noted. */
export function originalsSound(court: Court, files: readonly BookFile[]): void {
  const present = presentIn(files);
  const named = new Set<string>();
  const paths = [...originalsOf(court)].flatMap((record) => fileOf(record) ?? []);
  const lost = lostFolders([...new Set(paths)], (path) => present.has(path));
  for (const record of originalsOf(court)) {
    const path = fileOf(record);
    const recorded = record.value["sha256"];
    if (path === undefined) continue;
    named.add(path);
    const file = present.get(path);
    const fault = file?.nature?.fault;
    const folder = lost.get(path);
    if (folder !== undefined) sayLost(court, record, folder);
    else if (file === undefined)
      say(court, record, "original-present", "/path", path, {
        message: `${path} is not in the book`,
        why: `original ${record.id} names it`,
        hint: "put the file there, byte for byte as received",
      });
    else if (typeof recorded === "string" && recorded !== file.sha256)
      say(court, record, "original-unchanged", "/sha256", `${path}${file.sha256}`, {
        message: `${path} is not the file that was recorded`,
        why: `recorded SHA-256 ${recorded.slice(0, 16)} …, found ${file.sha256.slice(0, 16)} …`,
        hint: "put the original back; if it was replaced on purpose, record the new file under a new id and say why",
      });
    else if (fault?.sort === "form")
      say(court, record, "original-form", "/path", `${path}${file.sha256}`, ofForm(path, fault));
    else if (fault?.sort === "damaged" || fault?.sort === "empty")
      say(court, record, "original-sound", "/path", `${path}${file.sha256}`, {
        message: `${path} cannot be shown: ${fault.found}`,
        why: `original ${record.id} names it; expected ${fault.accepted}`,
        hint: fault.hint,
      });
    else if (file.nature !== undefined && fault == null) describedAs(court, record, file.nature);
  }
  const unnamed: string[] = [];
  for (const [path, { nature, sha256 }] of present) {
    if (named.has(path)) continue;
    if (nature?.fault?.sort !== "form") unnamed.push(path);
    else sayFile(court, "original-form", path, ofForm(path, nature.fault), `${path}${sha256}`);
  }
  sayUnnamed(court, unnamed.sort(byCodePoint));
}

/** Form, number of pages and signature as recorded against those of the file. */
function describedAs(court: Court, record: BookRecord, { mediaType, pages, signed }: OriginalNature): void {
  const { mediaType: type, pages: count, signed: said } = record.value;
  const path = fileOf(record) ?? "";
  if (typeof type === "string" && type !== mediaType && type !== unknownForm)
    say(court, record, "original-described", "/mediaType", `${type} ${mediaType}`, {
      message: `original ${record.id} is recorded as ${type}, and its file is ${mediaType}`,
      why: `the file ${path} begins and ends as one of that form does`,
      hint: "correct the kind of file; if another file was meant, correct the path and the hash",
    });
  // Sheets and texts have no pages of their own: what is counted there is somebody's print.
  if (paged.has(mediaType) && pages !== null && typeof count === "number" && count !== pages)
    say(court, record, "original-described", "/pages", `${count} ${pages}`, {
      message: `original ${record.id} is recorded with ${count} pages, and its file has ${pages}`,
      why: `pages of ${path} were counted`,
      hint: "correct the number; if pages are missing, scan them and record the new file",
    });
  // Another form may bear a signature beside it, which nobody sees here.
  if (typeof said === "boolean" && signed !== null && said !== signed)
    say(court, record, "original-described", "/signed", `${String(said)} ${String(signed)}`, {
      message: `original ${record.id} is recorded as ${said ? "signed" : "not signed"}, and its file bears ${signed ? "a" : "no"} digital signature`,
      why: `the fields of ${path} were looked through`,
      hint: signed
        ? "record that it is signed"
        : "record that it is not; if it was signed when it came, put the file there as received",
    });
}

const unknownForm = "application/octet-stream";
const paged: ReadonlySet<string> = new Set(["application/pdf", "image/png", "image/jpeg", "image/tiff"]);

/** One finding for all files of a folder that is gone, which each of their originals is a subject of. */
function sayLost(court: Court, record: BookRecord, { folder, files }: LostFolder): void {
  const words = {
    message: `none of the ${files} files that originals name in ${folder} is in the book`,
    why: "nothing that was typed from them can be compared with its original",
    hint: "put them back, each byte for byte as received",
  };
  say(court, record, "original-present", "/path", folder, words, findingKey("original-present", folder));
}

const shown = 12;

/** Files no record names: papers come by the folder, so one note lists them. */
function sayUnnamed(court: Court, paths: readonly string[]): void {
  const [first] = paths;
  if (first === undefined) return;
  const more = paths.length > shown ? ` and ${paths.length - shown} more` : "";
  sayFile(
    court,
    "original-recorded",
    first,
    {
      message:
        paths.length === 1
          ? `${first} has no original record`
          : `${paths.length} files have no original record: ${paths.slice(0, shown).join(", ")}${more}`,
      why:
        paths.length === 1
          ? "no record names this file, so no page shows it"
          : "no record names them, so no page shows them",
      hint: "run originals --add, then link it from the record it proves; or move it out of files/",
    },
    paths.join("\n"),
  );
}

function sayFile(
  court: Court,
  rule: string,
  path: string,
  words: Pick<Finding, "message" | "why" | "hint">,
  about: string,
): void {
  const spot = { subject: null, place: { file: path, pointer: "" } };
  addFinding(court, newFinding(finderOf(originalRules, rule), spot, { key: findingKey(rule, path), ...words, about }));
}

/** Asks about originals that are whole but cannot be shown: a person may decide that the file beside the book is enough. */
export function originalsShown(court: Court, files: readonly BookFile[]): void {
  const present = presentIn(files);
  for (const record of originalsOf(court)) {
    const path = fileOf(record);
    const file = path === undefined ? undefined : present.get(path);
    const fault = file?.nature?.fault;
    if (file === undefined || (fault?.sort !== "protected" && fault?.sort !== "bound")) continue;
    say(court, record, "original-shown", "/path", `${file.path}${file.sha256}`, {
      message: `${file.path} cannot be shown in the book: ${fault.found}`,
      why: `original ${record.id} names it; expected ${fault.accepted}`,
      hint: fault.hint,
    });
  }
}

const presentIn = (files: readonly BookFile[]) =>
  new Map(files.filter(({ role }) => role === "original").map((file) => [file.path, file]));

/** Path in the book of the file an original's record names. */
function fileOf(record: BookRecord): string | undefined {
  const { path } = record.value;
  return typeof path === "string" ? pathNamedBy(record, path) : undefined;
}

const originalsOf = ({ world }: Court) => world.graph.byKind.get("original")?.values() ?? [];

const ofForm = (path: string, { found, accepted, hint }: OriginalFault) => ({
  message: `${path} is not published: ${found}`,
  why: `forms that are: ${accepted}`,
  hint,
});

function say(
  court: Court,
  record: BookRecord,
  rule: string,
  pointer: string,
  about: string,
  words: Pick<Finding, "message" | "why" | "hint">,
  shared?: FindingKey,
): void {
  const { world } = court;
  if (world.ledger.doubts(addressOf(record, pointer)).length > 0) return;
  const at = locate(world, record, pointer);
  const check = finderOf(originalRules, rule);
  const finding = newFinding(check, at, {
    key: shared ?? keyOf(rule, record, at.name),
    ...words,
    about,
    accuses: check.severity === "query" ? [] : [addressOf(record, pointer)],
  });
  addFinding(court, finding);
}
