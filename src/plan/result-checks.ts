import { ownChoice } from "../model/basis.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Field, Kind } from "../model/kind.ts";
import type { Owner } from "../model/vocabulary.ts";
import { rowsOfKind } from "../model/kind-text.ts";

/** A field whose value may be *rejected*, as a check of its own: derived from the schemas, nobody lists it. */
export interface ResultCheck extends BuiltIn {
  readonly owner: Owner;
  /** Kind, or `kind#list`: each subject has one outcome. */
  readonly kind: string;
  /** From the subject to the value. */
  readonly path: string;
  /** A subject without the value owes it. */
  readonly owed: boolean;
  /** Ids of what may close it, in the order they are asked. */
  readonly closedBy: readonly string[];
}

/** What a field says that rejects: one word among its values, or that something was not accepted. */
export const refusals: ReadonlySet<string> = new Set(["rejected", "false"]);

/** Names of fields that say nothing more than that there is a result: left out where the result is named. */
export const unspoken: ReadonlySet<string> = new Set(["result", "verdict", "accepted"]);

const basis = ownChoice("what was rejected is not evidence of conformity until it is put right on record");
const known = new WeakMap<Kind, readonly ResultCheck[]>();

/** The result checks of all kinds. */
export function resultChecks(kinds: ReadonlyMap<string, Kind>): readonly ResultCheck[] {
  return [...kinds.values()].flatMap((kind) => {
    if (kind.derived) return [];
    let own = known.get(kind);
    if (own === undefined) known.set(kind, (own = checksIn(kind, kind.fields, { list: "", steps: [], owed: true })));
    return own;
  });
}

interface At {
  readonly list: string;
  readonly steps: readonly Field[];
  readonly owed: boolean;
}

function checksIn(kind: Kind, fields: ReadonlyMap<string, Field>, at: At): ResultCheck[] {
  return [...fields.values()].flatMap((field): ResultCheck[] => {
    // What another field frees from being owed the schema asks for where it is due.
    const owed = at.owed && (field.required || (field.due !== undefined && field.unless === undefined));
    if (field.closedBy !== undefined) return [checkOf(kind, field, { ...at, owed })];
    if (field.type === "object" && field.fields !== undefined)
      return checksIn(kind, field.fields, { ...at, steps: [...at.steps, field], owed });
    const row = field.item?.fields;
    if (field.type !== "list" || row === undefined) return [];
    // Rows of the record itself are subjects of their own; a list deeper down is read from its row.
    return at.list === "" && at.steps.length === 0
      ? checksIn(kind, row, { list: field.name, steps: [], owed: true })
      : checksIn(kind, row, { ...at, steps: [...at.steps, field], owed: false });
  });
}

function checkOf(kind: Kind, field: Field, { list, steps, owed }: At): ResultCheck {
  const usual = unspoken.has(field.name);
  const names = [list, ...steps.map(({ name }) => name), ...(usual ? [] : [field.name])].filter((name) => name !== "");
  const said = names.map((name) => inWords(name));
  return {
    id: [kind.name, ...said.map((words) => words.replaceAll(" ", "-")), "accepted"].join("-"),
    title: `${[kind.title, ...said].join(", ")}: accepted, or put right after a rejection`,
    severity: "nonconformity",
    basis,
    owner: "quality",
    kind: rowsOfKind(kind.name, list),
    path: [...steps.map(({ name, type }) => (type === "list" ? `${name}[]` : name)), field.name].join("."),
    owed,
    closedBy: field.closedBy ?? [],
  };
}

const inWords = (name: string) => name.replaceAll(/([a-z])([A-Z])/g, "$1 $2").toLowerCase();
