import { published, type Basis } from "../model/basis.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { BookFile } from "../model/record.ts";
import { addressOf } from "../model/record.ts";
import { digestOf } from "../model/stable.ts";
import { keyOf, locate, type Court } from "./court.ts";
import { addFinding } from "./entries.ts";

const basis: Basis = published("FIPS 180-4", "2015", "SHA-256");

export const originalRules: readonly BuiltIn[] = [
  { id: "original-present", title: "The file of an original is in the book", severity: "nonconformity", basis },
  {
    id: "original-unchanged",
    title: "The file of an original has the hash that was recorded",
    severity: "nonconformity",
    basis,
  },
  { id: "original-recorded", title: "Every file in files/ has a record", severity: "note", basis },
];

/** Compares every `original` record with the file it names. Files that no record names are noted. */
export function originalsSound(court: Court, files: readonly BookFile[]): void {
  const { world } = court;
  const present = new Map(files.filter(({ role }) => role === "original").map((file) => [file.path, file]));
  const named = new Set<string>();
  for (const record of world.graph.byKind.get("original")?.values() ?? []) {
    const path = record.value["path"];
    const recorded = record.value["sha256"];
    if (typeof path !== "string") continue;
    named.add(path);
    const file = present.get(path);
    const say = (rule: string, pointer: string, message: string, why: string, hint: string) => {
      if (world.ledger.doubts(addressOf(record, pointer)).length > 0) return;
      const { subject, place, name } = locate(world, record, pointer);
      addFinding(court, {
        key: keyOf(rule, record, name),
        rule,
        severity: "nonconformity",
        verdict: "failed",
        subject,
        place,
        message,
        why,
        hint,
        basis,
        owner: "document control",
        due: null,
        digest: digestOf(`${path}${file?.sha256 ?? ""}`),
        related: [],
        waiting: [],
        exception: null,
        accuses: [addressOf(record, pointer)],
      });
    };
    if (file === undefined)
      say(
        "original-present",
        "/path",
        `${path} is not in the book`,
        `original ${record.id} names it`,
        "put the file there, byte for byte as received",
      );
    else if (typeof recorded === "string" && recorded !== file.sha256)
      say(
        "original-unchanged",
        "/sha256",
        `${path} is not the file that was recorded`,
        `recorded SHA-256 ${recorded.slice(0, 16)} …, found ${file.sha256.slice(0, 16)} …`,
        "put the original back; if it was replaced on purpose, record the new file under a new id and say why",
      );
  }
  for (const path of present.keys()) {
    if (named.has(path)) continue;
    addFinding(court, {
      key: `original-recorded|${path}`,
      rule: "original-recorded",
      severity: "note",
      verdict: "failed",
      subject: null,
      place: { file: path, pointer: "" },
      message: `${path} has no original record`,
      why: "no record names this file, so no page shows it",
      hint: "run originals --add, then link it from the record it proves; or move it out of files/",
      basis,
      owner: "document control",
      due: null,
      digest: digestOf(path),
      related: [],
      waiting: [],
      exception: null,
      accuses: [],
    });
  }
}
