import { printStep, printSteps, wordsOfSteps, type Step } from "../model/path.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import type { Absence } from "./world.ts";

/** A link names a record that is not in the book. */
export function absentTarget(from: BookRecord, pointer: string, target: string): Absence {
  const kind = target.slice(0, target.indexOf(":"));
  return { key: target, name: "", owner: { record: from, pointer }, step: target, filters: "", kind, target };
}

/** A field of a record or row is not filled in, or holds nothing that passes the filters. */
export function missingField(
  record: BookRecord,
  pointer: string,
  name: string,
  filters: readonly Step[] = [],
): Absence {
  const text = printSteps(filters);
  return {
    key: `${addressOf(record, pointer)}|${name}${text}`,
    name: wordsOfSteps([{ type: "field", name }, ...filters]),
    owner: { record, pointer },
    step: name,
    filters: text,
    kind: null,
    target: null,
  };
}

/** No record of a kind leads back here. */
export function noneBack(
  record: BookRecord,
  pointer: string,
  back: Extract<Step, { type: "back" }>,
  filters: readonly Step[],
): Absence {
  const step = printStep(back);
  const text = printSteps(filters);
  return {
    key: `${addressOf(record, pointer)}|${step}${text}`,
    name: wordsOfSteps([back, ...filters]),
    owner: { record, pointer },
    step,
    filters: text,
    kind: back.kind,
    target: null,
  };
}

/** The book holds no such record. */
export function noneInBook(kind: string, filters: readonly Step[]): Absence {
  const step = `book.${kind}`;
  const text = printSteps(filters);
  const name = wordsOfSteps([{ type: "all", kind }, ...filters]);
  return { key: `book|${step}${text}`, name, owner: null, step, filters: text, kind, target: null };
}
