import type { Definitions } from "../model/definitions.ts";
import type { Condition } from "../model/input.ts";
import { fieldsOn, type Field } from "../model/kind.ts";
import { nearestOrAll } from "../model/nearest.ts";
import { printStep, printSteps, type Path, type Step } from "../model/path.ts";
import { takeField, through, valueAt } from "./field-step.ts";
import { unknownKind, type Draft, type Problem, type Schemas, type WalkedPath } from "./path-facts.ts";
import { isCovered, type Coverage } from "./coverage.ts";
import {
  filterOn,
  filtersOf,
  freeOfCalculation,
  freeOfTable,
  inItem,
  ofRecord,
  ofSource,
  outside,
  standAround,
  standAt,
  stepOn,
  type Standing,
} from "./standing.ts";
import { unowed } from "./unowed.ts";

/** Walks a path over the schemas. `conditions` are those under which it is read. */
export function checkPath(
  definitions: Definitions,
  coverage: Coverage,
  kind: string,
  path: Path,
  required: boolean,
  conditions: readonly Condition[] = [],
): WalkedPath {
  const start = standAt(definitions, kind, conditions);
  if (start === null) return unknownKind(definitions, kind);
  return walkPath({ definitions, coverage, required }, start, path);
}

/** Walks a path from where another one ended. */
export function walkPath(schemas: Schemas, start: Standing, path: Path): WalkedPath {
  const draft: Draft = { crosses: false, whole: false, calculations: [], reads: [], problems: [] };
  const from = `${start.kind ?? start.free?.of ?? ""}${start.list === "" ? "" : `#${start.list}`}`;
  const problem: Problem = (text, unknown) => {
    const near =
      unknown === undefined
        ? ""
        : nearestOrAll(unknown.name, unknown.known, (name) => withName(path.text, unknown.name, name));
    draft.problems.push(`path "${path.text}" of ${from}: ${text}${near}`);
  };
  let at = start;
  for (const [index, step] of path.steps.entries()) {
    const next = take(schemas, draft, at, step, path.steps.slice(index + 1), start, problem);
    if (next === null) return { ...draft, end: null };
    at = next;
  }
  return { ...draft, end: at };
}

/** The path with another name in place of one. */
const withName = (path: string, name: string, other: string): string =>
  path
    .split(/([\p{L}\p{N}_-]+)/u)
    .map((part) => (part === name ? other : part))
    .join("");

function take(
  schemas: Schemas,
  draft: Draft,
  at: Standing,
  step: Step,
  rest: readonly Step[],
  start: Standing,
  problem: Problem,
): Standing | null {
  const { definitions, coverage, required } = schemas;
  switch (step.type) {
    case "all": {
      const single = ["book", "issue"].includes(step.kind);
      // What the book says of itself is known to every record, as the profile is: reading it compares no records.
      if (!single) draft.whole = draft.crosses = true;
      const next = standAt(definitions, step.kind);
      if (next === null)
        problem(`there is no kind "${step.kind}"`, { name: step.kind, known: definitions.kinds.keys() });
      else if (required && !single) {
        const text = printStep(step) + filtersOf(rest);
        const anchors = [{ kind: "book", text, conditions: [] }];
        if (!isCovered(coverage, anchors)) problem(unowed(text, coverage, anchors));
      }
      return next;
    }
    case "profile": {
      const values = definitions.profiles.flatMap(({ parameters }) =>
        Object.hasOwn(parameters, step.name) ? [parameters[step.name]?.value ?? ""] : [],
      );
      // One that only some profiles lack is said once, of those profiles.
      if (values.length === 0)
        problem(`there is no parameter "${step.name}"; no profile defines it`, {
          name: step.name,
          known: new Set(definitions.profiles.flatMap(({ parameters }) => Object.keys(parameters))),
        });
      return outside({ of: `profile.${step.name}`, names: null, values });
    }
    case "table": {
      const table = definitions.tables.find(({ id }) => id === step.name);
      if (table === undefined)
        problem(`there is no table "${step.name}"`, { name: step.name, known: definitions.tables.map(({ id }) => id) });
      else if (table.keys.length !== step.keys.length)
        problem(`table ${step.name} has the keys ${table.keys.map(({ name }) => name).join(", ")}`);
      for (const key of step.keys) {
        const inner = walkPath(schemas, start, key);
        draft.crosses ||= inner.crosses;
        draft.whole ||= inner.whole;
        draft.calculations.push(...inner.calculations);
        draft.reads.push(...inner.reads, ...(inner.end === null ? [] : valueAt(inner.end)));
        draft.problems.push(...inner.problems);
      }
      return outside(freeOfTable(step.name, table));
    }
    case "field":
      return takeField(schemas, draft, at, step.name, rest, problem);
    case "items": {
      if (at.free !== null) return at;
      if (at.field?.type !== "list") problem('"[]" follows something that is no list');
      return inItem(definitions, at, "[]");
    }
    case "filter": {
      if (at.free !== null) return at;
      const item = at.field?.type === "list" ? inItem(definitions, at, "") : at;
      checkFilter(schemas, draft, item, step, problem);
      const condition = { path: printSteps(step.path), equals: step.equals };
      return { ...item, anchors: filterOn(item, printStep(step), condition) };
    }
    case "record": {
      const here = through(definitions, draft, at, problem);
      return here.kind === null ? here : standAt(definitions, here.kind, ofRecord(here), stepOn(here, "record"));
    }
    case "back": {
      const here = through(definitions, draft, at, problem);
      draft.crosses = true;
      const text = printStep(step);
      const all = text + filtersOf(rest);
      const owed =
        here.free !== null || isCovered(coverage, stepOn(here, text)) || isCovered(coverage, stepOn(here, all));
      if (required && !owed) problem(unowed(all, coverage, stepOn(here, all)));
      const next = standAround(definitions, step.kind, step.field, stepOn(here, text), ofSource(here, step.field));
      for (const field of fieldsOn(definitions.kinds.get(step.kind), step.field))
        draft.reads.push({ field, anchors: here.anchors, value: field.type === "link" || field.item?.type === "link" });
      const kind = definitions.kinds.get(step.kind);
      if (kind === undefined)
        problem(`${text}: there is no kind "${step.kind}"`, { name: step.kind, known: definitions.kinds.keys() });
      else if (next === null)
        problem(`${text}: ${step.kind} has no link "${step.field}"`, { name: step.field, known: linksIn(kind.fields) });
      return next;
    }
    case "calculation": {
      const here = through(definitions, draft, at, problem);
      draft.calculations.push(step.id);
      const found = definitions.calculations.find(({ id }) => id === step.id);
      if (found === undefined)
        problem(`there is no calculation "${step.id}"`, {
          name: step.id,
          known: definitions.calculations.map(({ id }) => id),
        });
      const kind = `${here.kind ?? ""}${here.list === "" ? "" : `#${here.list}`}`;
      if (found !== undefined && here.free === null && found.appliesTo.kind !== kind)
        problem(`calculation ${step.id} applies to ${found.appliesTo.kind}, not to ${kind}`);
      return outside(freeOfCalculation(step.id, found));
    }
  }
}

/** Paths of the links of a record, as steps back name them. */
function linksIn(fields: ReadonlyMap<string, Field>, before = ""): readonly string[] {
  return [...fields.values()].flatMap(({ name, type, item, fields: inner }): readonly string[] => {
    const path = `${before}${name}`;
    if (type === "link") return [path];
    if (item?.type === "link") return [`${path}[]`];
    return linksIn(inner ?? item?.fields ?? new Map<string, Field>(), item === undefined ? `${path}.` : `${path}[].`);
  });
}

/** A filter compares a field that is owed, and that has its values from a list. */
function checkFilter(
  schemas: Schemas,
  draft: Draft,
  at: Standing,
  step: Extract<Step, { type: "filter" }>,
  problem: Problem,
): void {
  const inner = walkPath({ ...schemas, required: true }, at, { text: printStep(step), steps: step.path });
  draft.reads.push(...inner.reads, ...(inner.end === null ? [] : valueAt(inner.end)));
  for (const text of inner.problems) problem(text);
  const field = inner.end?.field ?? null;
  if (inner.end === null || field === null) return;
  if (field.options !== undefined) {
    if (!field.options.includes(step.equals))
      problem(`the filter ${printStep(step)} asks for a value the field never has`, {
        name: step.equals,
        known: field.options,
      });
    return;
  }
  // The name of a calculation is an enumerated value too: the list of definitions enumerates it.
  const named = schemas.definitions.calculations.some(({ id }) => id === step.equals);
  if (field.type !== "boolean" && !field.required && !named)
    problem(`the filter ${printStep(step)} compares a field with free text`);
}
