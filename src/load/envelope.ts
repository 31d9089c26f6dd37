import { isList, isObject, pointerStep, type Json, type JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import type { Finding } from "../model/finding.ts";
import { findingOf } from "./file-rules.ts";
import { nearestName } from "../model/nearest.ts";
import { quoted } from "./portable.ts";
import type { Shape } from "./schema-errors.ts";

/** What a file says it holds: records of one kind, not yet checked. */
export interface Envelope {
  readonly kind: Kind | undefined;
  readonly shape: Shape;
  readonly candidates: readonly { readonly pointer: string; readonly value: JsonObject }[];
  readonly findings: readonly Finding[];
  /** Something in the file is no record anyone could find. */
  readonly lost: boolean;
}

const forms = '{"kind": …, "records": [ … ]}, or one record with its "kind"';

/** Opens a file: one record, or `{"kind", "records"}`. */
export function openEnvelope(file: string, root: Json, kinds: ReadonlyMap<string, Kind>): Envelope {
  const lost = (pointer: string, message: string, hint: string, name?: string): Finding =>
    findingOf({
      rule: "file-record",
      place: { file, pointer },
      message,
      why: "nothing can be found or linked without kind and id",
      hint,
      ...(name !== undefined && { name }),
    });
  const nothing = (finding: Finding): Envelope => ({
    kind: undefined,
    shape: "single",
    candidates: [],
    findings: [finding],
    lost: true,
  });

  if (!isObject(root))
    return nothing(
      lost("", `the file holds ${isList(root) ? "a list" : "a single value"}; expected an object`, `write ${forms}`),
    );
  const name = own(root, "kind");
  if (name === undefined) return nothing(lost("", 'the file states no "kind"', `write ${forms}`));
  if (typeof name !== "string")
    return nothing(lost("/kind", "kind is not text", 'write the name of a kind, such as "joint"'));
  const kind = kinds.get(name);
  if (kind === undefined) {
    const near = nearestName(
      name,
      [...kinds.values()].filter(({ derived }) => !derived).map((one) => one.name),
    );
    return nothing(
      lost(
        "/kind",
        `kind is ${quoted(name)}; there is no kind of that name`,
        near === undefined ? 'compare with the list that "explain" prints' : `write "${near}"`,
      ),
    );
  }
  if (kind.derived)
    return nothing(
      lost(
        "/kind",
        `records of kind "${name}" are not written`,
        "remove the file: they are derived from other records",
      ),
    );

  const records = own(root, "records");
  // A kind may have a field "records" itself; such a record bears its id beside it.
  if (records === undefined || (own(root, "id") !== undefined && kind.fields.has("records")))
    return { kind, shape: "single", candidates: [{ pointer: "", value: root }], findings: [], lost: false };

  const surplus = Object.keys(root).filter((key) => !["$schema", "kind", "records"].includes(key));
  const findings: Finding[] = surplus.map((key) =>
    findingOf({
      rule: "record-schema",
      place: { file, pointer: pointerStep(key) },
      message: `${quoted(key)} stands beside "records"`,
      why: 'a list of records has "kind" and "records", and nothing that would hold for all of them',
      hint: "write it in each record, or remove it",
    }),
  );
  if (!isList(records))
    return { ...nothing(lost("/records", "records is not a list", 'write "records": [ … ]')), kind };
  const candidates: { pointer: string; value: JsonObject }[] = [];
  let others = 0;
  for (const [index, value] of records.entries()) {
    if (isObject(value)) candidates.push({ pointer: `/records/${index}`, value });
    else if (++others <= mostSaid)
      findings.push(
        lost(`/records/${index}`, `entry ${index + 1} of records is no object`, "write a record, or remove the entry"),
      );
  }
  if (others > mostSaid)
    findings.push(
      lost(
        "/records",
        `${others - mostSaid} more entries of records are no objects`,
        "write records, or remove the entries",
        "more",
      ),
    );
  return { kind, shape: "row", candidates, findings, lost: others > 0 };
}

/** Faults said of one file, at most. */
export const mostSaid = 50;

const own = (object: JsonObject, name: string) => (Object.hasOwn(object, name) ? object[name] : undefined);
