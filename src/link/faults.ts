import { atPointer } from "../model/json.ts";
import { ownChoice } from "../model/basis.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Finding, Related } from "../model/finding.ts";
import type { Kind } from "../model/kind.ts";
import { type Address, type BookRecord } from "../model/record.ts";
import { stableName } from "../model/stable.ts";
import { findingKey, keyOf } from "../model/finding-key.ts";
import { finderOf, newFinding, spotIn } from "../model/new-finding.ts";

const identity = ownChoice("one id names one record; a link names an id exactly as the record bears it");

export const linkRules = [
  { id: "id-unique", title: "An id is borne by one record of its kind", severity: "nonconformity", basis: identity },
  {
    id: "id-distinct",
    title: "Two ids differ by more than look-alike signs",
    severity: "query",
    basis: identity,
    reads: [{ kinds: ["material-certificate"], paths: ["rows[].heat"] }],
  },
  { id: "link-form", title: "A link is well formed", severity: "nonconformity", basis: identity },
  { id: "link-exact", title: "A link names an existing id exactly", severity: "nonconformity", basis: identity },
  {
    id: "link-row",
    title: "A row or revision that a link names is in the record",
    severity: "nonconformity",
    basis: identity,
  },
  { id: "row-unique", title: "A row name is borne by one row of its list", severity: "nonconformity", basis: identity },
] as const satisfies readonly BuiltIn[];

export interface Fault {
  readonly rule: (typeof linkRules)[number]["id"];
  readonly message: string;
  readonly why: string;
  readonly hint: string;
  readonly accuses: readonly Address[];
  /** What the fault is about, when several links show the same one: it is then one finding. Default: the place. */
  readonly about?: string;
  readonly related?: readonly Related[];
}

/** A fault of an id or a link as a finding about a place in a record. */
export function faultAt(record: BookRecord, kind: Kind | undefined, pointer: string, fault: Fault): Finding {
  const { rule, about, ...words } = fault;
  const where = kind === undefined ? pointer.slice(1) : stableName(kind, record.value, pointer);
  return newFinding(finderOf(linkRules, rule), spotIn(record, pointer), {
    key: about === undefined ? keyOf(rule, record, where) : findingKey(rule, about),
    ...words,
    about: JSON.stringify(atPointer(record.value, pointer) ?? null),
  });
}

export const placeOfId = (record: BookRecord, message: string): Related => ({
  subject: { kind: record.kind, id: record.id },
  place: { file: record.file, pointer: `${record.pointer}/id` },
  message,
});
