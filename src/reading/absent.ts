import { printStep, printSteps, wordsOfSteps, type Step } from "../model/path.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import type { Absence } from "./world.ts";
import type { LinkTarget } from "../model/graph.ts";
import { aboutRecord } from "../model/finding-key.ts";

/** Where something is missing, and what: whoever wants the same there wants one thing. */
export const absenceKey = (owner: Absence["owner"], what: string): string =>
  `${owner === null ? aboutRecord(null) : addressOf(owner.record, owner.pointer)}|${what}`;

/** Of what is asked for as a whole at several milestones: the key of one of them. */
export const absenceOfDue = (key: string, due: string): string => `${key}|${due}`;

/** Whether a key says that no record of a kind leads back, whoever from. */
export const isNoneBack = (key: string, kind: string): boolean => key.includes(`|<${kind}:`);

/** Whether a key says of the same thing as another that it is missing, under a filter. */
export const isFiltered = (key: string, other: string): boolean => key.startsWith(`${other}[`);

/** A link names a record that is not in the book. */
export function absentTarget(from: BookRecord, pointer: string, of: LinkTarget): Absence {
  const { kind } = of;
  const target = addressOf(of);
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
    key: absenceKey({ record, pointer }, `${name}${text}`),
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
    key: absenceKey({ record, pointer }, `${step}${text}`),
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
  return { key: absenceKey(null, `${step}${text}`), name, owner: null, step, filters: text, kind, target: null };
}
