import type { Finding } from "../model/finding.ts";
import { atPointer, isObject, type Json } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { addressOf } from "../model/record.ts";
import { stableName } from "../model/stable.ts";
import { findingOf } from "./file-rules.ts";
import { linesOf, type Places } from "./places.ts";
import { quoted } from "./portable.ts";
import type { Duplicate } from "./scan.ts";

interface Doubled {
  readonly findings: readonly Finding[];
  /** Which records there are, or what one is called, is in doubt: not only a value of a record. */
  readonly hides: boolean;
  /** Whether a name stands twice in the record at this pointer. */
  inside(record: string): boolean;
}

interface Given {
  readonly file: string;
  readonly text: string;
  readonly places: () => Places;
  readonly duplicates: readonly Duplicate[];
  readonly root: Json;
  readonly kind: Kind | undefined;
}

const identity: ReadonlySet<string> = new Set(["/kind", "/records", "/id"]);

/** Names that stand twice in an object, as findings: one for each name, which shows where it stood first. */
export function duplicateFindings({ file, text, places, duplicates, root, kind }: Given): Doubled {
  if (duplicates.length === 0) return { findings: [], hides: false, inside: () => false };
  const lines = linesOf(text);
  const spans = (offset: number, name: string) =>
    lines.position({ start: offset, end: offset + JSON.stringify(name).length });
  const seen = new Set<string>();
  const inRecords: string[] = [];
  let hides = false;
  const findings = duplicates.flatMap(({ name, first, again }) => {
    const pointer = places().pointerAt(again);
    const rows = isObject(root) && Object.hasOwn(root, "records") && /^\/records\/\d+/.exec(pointer)?.[0];
    const at = typeof rows === "string" ? rows : "";
    const inner = pointer.slice(at.length);
    hides ||= identity.has(inner);
    if (seen.has(pointer)) return [];
    seen.add(pointer);
    inRecords.push(at);
    const value = atPointer(root, at);
    const id = isObject(value) && Object.hasOwn(value, "id") ? value["id"] : undefined;
    const record = kind !== undefined && typeof id === "string" && !hides ? { kind: kind.name, id } : undefined;
    const where = kind !== undefined && isObject(value) ? stableName(kind, value, inner) : pointer;
    return [
      findingOf({
        rule: "file-duplicate-key",
        place: { file, pointer, position: spans(again, name) },
        message: `${quoted(name)} stands twice in one object`,
        why: "readers of JSON keep one of the two values and drop the other without a word",
        hint: "compare with the evidence; keep the right one and remove the other",
        about: `${where}: ${JSON.stringify(atPointer(root, pointer) ?? null)}`,
        ...(record !== undefined && { record, name: where, accuses: [addressOf(record, inner)] }),
        related: [
          {
            subject: record ?? null,
            place: { file, pointer, position: spans(first, name) },
            message: "first written here",
          },
        ],
      }),
    ];
  });
  return { findings, hides, inside: (record) => inRecords.includes(record) };
}
