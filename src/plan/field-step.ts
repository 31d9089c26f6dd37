import type { Definitions } from "../model/definitions.ts";
import type { Field } from "../model/kind.ts";
import type { Step } from "../model/path.ts";
import type { Draft, Problem, ReadField, Schemas } from "./path-facts.ts";
import { isCovered } from "./coverage.ts";
import { filtersOf, ofTarget, outside, standAt, stepOn, type Standing } from "./standing.ts";
import { unowed } from "./unowed.ts";
import { kindText, rowsOfKind } from "../model/kind-text.ts";

/** What is read where a path has ended at a value. */
export const valueAt = ({ field, anchors }: Standing): readonly ReadField[] =>
  field === null ? [] : [{ field, anchors, value: true }];

/** One step on to a field of a record, a row or a result; a required one must be owed by somebody. */
export function takeField(
  schemas: Schemas,
  draft: Draft,
  from: Standing,
  name: string,
  rest: readonly Step[],
  problem: Problem,
): Standing | null {
  const at = through(schemas.definitions, draft, from, problem);
  if (at.free !== null) {
    const free = at.free.names?.get(name);
    if (free === undefined) problem(`${at.free.of} has no "${name}"`, { name, known: at.free.names?.keys() ?? [] });
    return free === undefined ? null : outside(free);
  }
  const field: Field | undefined = at.fields?.get(name);
  if (field === undefined) {
    problem(`${at.kind ?? "it"}${at.list === "" ? "" : `#${at.list}`} has no field "${name}"`, {
      name,
      known: pathsIn(at.fields ?? new Map<string, Field>(), name),
    });
    return null;
  }
  draft.reads.push({ field, anchors: at.anchors, value: false });
  const { required, coverage } = schemas;
  const anchors = stepOn(at, name);
  const owed =
    field.required ||
    isThere(at, name) ||
    (field.due !== undefined && (field.unless === undefined || isWithout(at, field.unless))) ||
    isCovered(coverage, anchors) ||
    isCovered(coverage, stepOn(at, name + filtersOf(rest)));
  if (required && !owed) problem(unowed(`"${name}"`, coverage, anchors));
  return {
    ...at,
    field,
    fields: field.fields ?? null,
    list: field.type === "list" && at.list === "" ? name : at.list,
    anchors,
  };
}

/** Names that may stand there; of one that stands deeper, its path. */
function pathsIn(fields: ReadonlyMap<string, Field>, wanted: string): readonly string[] {
  const deeper = [...fields.values()].flatMap(({ name, fields: inner }) =>
    inner?.has(wanted) === true ? [`${name}.${wanted}`] : [],
  );
  return deeper.length > 0 ? deeper : [...fields.keys()];
}

/** Whether it is known of where the field stands that another one does not stand beside it. */
const isWithout = ({ anchors }: Standing, name: string): boolean =>
  anchors.at(-1)?.text === "" &&
  (anchors.at(-1)?.conditions ?? []).some(({ path, exists }) => path === name && exists === false);

/** Whether a condition asks for the field itself: where it applies, it is there. */
const isThere = ({ anchors }: Standing, name: string): boolean =>
  anchors.at(-1)?.text === "" &&
  (anchors.at(-1)?.conditions ?? []).some(({ path, exists }) => path === name && exists === true);

/** Behind a link, at what it names; anywhere else where it is. */
export function through(
  definitions: Definitions,
  draft: Pick<Draft, "crosses" | "reads">,
  at: Standing,
  problem: Problem,
): Standing {
  if (at.field?.type !== "link") return at;
  draft.crosses = true;
  draft.reads.push(...valueAt(at));
  const targets = at.field.targets ?? [];
  const { kind, list } = kindText(targets[0] ?? "");
  const next = targets.length === 1 ? standAt(definitions, rowsOfKind(kind, list), ofTarget(at), at.anchors) : null;
  if (next !== null) return next;
  problem(
    `"${at.field.name}" names ${targets.length === 1 ? `"${targets[0] ?? ""}", which is no kind` : "several kinds; a path cannot go on behind it"}`,
  );
  return outside({ of: at.field.name, names: null });
}
