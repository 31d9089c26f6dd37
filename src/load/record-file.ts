import type { Finding } from "../model/finding.ts";
import { atPointer, isList, isObject, stepsOf, type Json, type JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { addressOf, type BookRecord, type Address } from "../model/record.ts";
import { duplicateFindings } from "./duplicates.ts";
import { mostSaid, openEnvelope } from "./envelope.ts";
import type { RecordFault } from "./explain.ts";
import { findingOf } from "./file-rules.ts";
import { lostNumbers } from "./lost-numbers.ts";
import { parseJson } from "./parse-json.ts";
import { linesOf, placesOf, type Places } from "./places.ts";
import { quoted } from "./portable.ts";
import { scanJson } from "./scan.ts";
import { syntaxFault } from "./syntax.ts";
import { validate } from "./validate.ts";

/** What one record file holds. */
export interface RecordFile {
  readonly records: readonly BookRecord[];
  readonly findings: readonly Finding[];
  /** It is JSON, so that places in it can be given by pointer. */
  readonly sound: boolean;
  /** Every record that stands in it is in `records`. */
  readonly whole: boolean;
}

const idForm = /^[A-Z0-9][A-Z0-9.-]{0,39}$/;

/** Reads the records of a text; whatever is wrong with it is a finding, and what can be read is read. */
export function readRecords(file: string, text: string, kinds: ReadonlyMap<string, Kind>): RecordFile {
  const scan = scanJson(text, mostSaid);
  const root = scan.tooDeep === undefined ? parseJson(text) : undefined;
  if (root === undefined) return { records: [], findings: [syntaxFinding(file, text)], sound: false, whole: false };

  const { kind, shape, candidates, findings: opened, lost } = openEnvelope(file, root, kinds);
  const findings: Finding[] = [...opened];
  let places: Places | undefined;
  const placesHere = () => (places ??= placesOf(text));
  const doubled = duplicateFindings({ file, text, places: placesHere, duplicates: scan.duplicates, root, kind });
  const unkept = lostNumbers({ file, text, places: placesHere, numbers: scan.numbers, root, kind });
  findings.push(...doubled.findings, ...unkept.findings);
  if (kind === undefined) return { records: [], findings, sound: true, whole: false };

  const records: BookRecord[] = [];
  let whole = !lost && !doubled.hides;
  let left = mostSaid;
  let unsaid = 0;
  const accused: Address[] = [];
  for (const { pointer, value } of candidates) {
    const written = (inner: string) => {
      const { start, end } = placesHere().value(pointer + inner);
      return text.slice(start, end);
    };
    const checked = validate(kind, shape, value, written, left);
    const said = checked.said.filter((fault) => !unkept.at(pointer + fault.pointer));
    const count = checked.count - (checked.said.length - said.length);
    const id = Object.hasOwn(value, "id") ? value["id"] : undefined;
    const usable = typeof id === "string" && idForm.test(id);
    const record = usable
      ? {
          kind: kind.name,
          id,
          file,
          pointer,
          value: checked.tooLong.reduce(emptied, value),
          faulty: count > 0 || doubled.inside(pointer) || unkept.inside(pointer),
        }
      : undefined;
    if (record === undefined) whole = false;
    else records.push(record);
    findings.push(...said.map((fault) => faultFinding(file, pointer, value, record, fault)));
    left -= said.length;
    if (count > said.length && left <= 0) {
      unsaid += count - said.length;
      if (record !== undefined) accused.push(addressOf(record));
    }
  }
  if (unsaid > 0)
    findings.push(
      findingOf({
        rule: "record-schema",
        place: { file, pointer: "" },
        name: "more",
        message: `the file has ${unsaid} more faults against the schema of ${kind.name}`,
        why: `the first ${mostSaid} are listed one by one`,
        hint: "mend those first; most others are likely to be of the same sort",
        accuses: accused,
      }),
    );
  return { records, findings, sound: true, whole };
}

/**
 * The value without the entries of a list that holds more than it may: such a list is refused whole. What grows with the
 * square of its entries would take hours, and its page could not be read.
 */
function emptied(value: JsonObject, pointer: string): JsonObject {
  const within = (inner: Json | undefined, steps: readonly string[]): Json => {
    const [step, ...rest] = steps;
    if (step === undefined || inner === undefined) return [];
    if (isList(inner)) return inner.map((one, at) => (at === Number(step) ? within(one, rest) : one));
    return isObject(inner) ? { ...inner, [step]: within(inner[step], rest) } : inner;
  };
  const whole = within(value, stepsOf(pointer));
  return isObject(whole) ? whole : value;
}

function syntaxFinding(file: string, text: string): Finding {
  const fault = syntaxFault(text) ?? {
    offset: 0,
    length: 0,
    message: "the file is not JSON",
    hint: "write it anew with an editor that checks JSON",
  };
  const { offset, length, message, hint } = fault;
  const lines = linesOf(text);
  const position = lines.position({ start: offset, end: offset + length });
  return findingOf({
    rule: "file-syntax",
    place: { file, pointer: "", position },
    message,
    why: `the file is no JSON from line ${position.line}, column ${position.column} on; none of it was read`,
    hint,
    about: lines.line(position.line)?.slice(0, 400) ?? message,
  });
}

function faultFinding(
  file: string,
  at: string,
  value: BookRecord["value"],
  record: BookRecord | undefined,
  fault: RecordFault,
): Finding {
  const { pointer, name, message, why, hint, accuses } = fault;
  const offending = atPointer(value, pointer);
  const place = { file, pointer: at + pointer };
  const about = `${name}: ${offending === undefined ? "absent" : JSON.stringify(offending)}`;
  if (record === undefined)
    return pointer === "/id"
      ? findingOf({
          rule: "file-record",
          place: { file, pointer: at },
          name: "id",
          message: withId(value, message),
          why: "without a sound id nothing can link to the record, and it has no page",
          hint,
          about,
        })
      : findingOf({ rule: "record-schema", place, message, why, hint, about });
  return findingOf({
    rule: "record-schema",
    place,
    record,
    name,
    message,
    why,
    hint,
    about,
    accuses: accuses.map((inner) => addressOf(record, inner)),
  });
}

/** Names a record that has no id by the first text in it. */
function withId(value: JsonObject, message: string): string {
  for (const [name, one] of Object.entries(value))
    if (typeof one === "string" && !["$schema", "kind", "id"].includes(name))
      return `${message} (the record whose ${quoted(name).slice(1, -1)} is ${quoted(one, 40)})`;
  return message;
}
