import { printStep, type Step } from "../model/path.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import type { Absence } from "./world.ts";

/** A link names a record that is not in the book. */
export function absentTarget(from: BookRecord, pointer: string, target: string): Absence {
  const kind = target.slice(0, target.indexOf(":"));
  return { key: target, owner: { record: from, pointer }, step: target, filters: "", kind, target };
}

/** A field of a record or row is not filled in. */
export function missingField(record: BookRecord, pointer: string, name: string, filters = ""): Absence {
  const key = `${addressOf(record, pointer)}|${name}${filters}`;
  return { key, owner: { record, pointer }, step: name, filters, kind: null, target: null };
}

/** No record of a kind leads back here. */
export function noneBack(
  record: BookRecord,
  pointer: string,
  step: Extract<Step, { type: "back" }>,
  filters: string,
): Absence {
  const text = printStep(step);
  const key = `${addressOf(record, pointer)}|${text}${filters}`;
  return { key, owner: { record, pointer }, step: text, filters, kind: step.kind, target: null };
}

/** The book holds no such record. */
export function noneInBook(kind: string, filters: string): Absence {
  const step = `book.${kind}`;
  return { key: `book|${step}${filters}`, owner: null, step, filters, kind, target: null };
}
