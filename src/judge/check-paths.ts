import type { Definitions } from "../model/definitions.ts";
import type { Condition } from "../model/input.ts";
import type { Field } from "../model/kind.ts";
import { printStep, printSteps, type Path, type Step } from "../model/path.ts";
import {
  filterOn,
  filtersOf,
  freeOfCalculation,
  freeOfTable,
  inItem,
  isCovered,
  ofRecord,
  outside,
  standAround,
  standAt,
  stepOn,
  type Coverage,
  type Standing,
} from "./standing.ts";

export { coverageOf, type Coverage } from "./standing.ts";

/** What is known of a path before any book is read. */
export interface PathFacts {
  /** Leads through a link, back along one, or over the whole book. */
  readonly crosses: boolean;
  /** Starts at the book. */
  readonly whole: boolean;
  /** Calculations it reads. */
  readonly calculations: readonly string[];
  /** Why it cannot be followed, or (for a required path) which step nobody owes. */
  readonly problems: readonly string[];
}

/** As `PathFacts`, with where the path ends: null when it cannot be followed. */
export interface WalkedPath extends PathFacts {
  readonly end: Standing | null;
}

interface Draft {
  crosses: boolean;
  whole: boolean;
  readonly calculations: string[];
  readonly problems: string[];
}

/** What paths are checked against, and whether every step must be owed. */
export interface Schemas {
  readonly definitions: Definitions;
  readonly coverage: Coverage;
  readonly required: boolean;
}

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
  if (start === null) return unknownKind(kind);
  return walkPath({ definitions, coverage, required }, start, path);
}

export const unknownKind = (kind: string): WalkedPath => ({
  crosses: false,
  whole: false,
  calculations: [],
  problems: [`there is no kind "${kind}"`],
  end: null,
});

/** Walks a path from where another one ended. */
export function walkPath(schemas: Schemas, start: Standing, path: Path): WalkedPath {
  const draft: Draft = { crosses: false, whole: false, calculations: [], problems: [] };
  const from = `${start.kind ?? start.free?.of ?? ""}${start.list === "" ? "" : `#${start.list}`}`;
  const problem = (text: string) => draft.problems.push(`path "${path.text}" of ${from}: ${text}`);
  let at = start;
  for (const [index, step] of path.steps.entries()) {
    const next = take(schemas, draft, at, step, path.steps.slice(index + 1), start, problem);
    if (next === null) return { ...draft, end: null };
    at = next;
  }
  return { ...draft, end: at };
}

type Problem = (text: string) => void;

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
      if (next === null) problem(`there is no kind "${step.kind}"`);
      else if (required && !single) {
        const text = printStep(step) + filtersOf(rest);
        if (!isCovered(coverage, [{ kind: "book", text, conditions: [] }]))
          problem(`${text} is read as required, but no row of the register owes one`);
      }
      return next;
    }
    case "profile": {
      const values = definitions.profiles.flatMap(({ parameters }) =>
        Object.hasOwn(parameters, step.name) ? [parameters[step.name]?.value ?? ""] : [],
      );
      if (values.length < definitions.profiles.length) problem(`a profile lacks the parameter "${step.name}"`);
      return outside({ of: `profile.${step.name}`, names: null, values });
    }
    case "table": {
      const table = definitions.tables.find(({ id }) => id === step.name);
      if (table === undefined) problem(`there is no table "${step.name}"`);
      else if (table.keys.length !== step.keys.length)
        problem(`table ${step.name} has the keys ${table.keys.map(({ name }) => name).join(", ")}`);
      for (const key of step.keys) {
        const inner = walkPath(schemas, start, key);
        draft.crosses ||= inner.crosses;
        draft.whole ||= inner.whole;
        draft.calculations.push(...inner.calculations);
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
      checkFilter(schemas, item, step, problem);
      const condition = { path: printSteps(step.path), equals: step.equals };
      return { ...item, anchors: filterOn(item, printStep(step), condition) };
    }
    case "record": {
      const here = through(definitions, draft, at, problem);
      return here.kind === null ? here : standAt(definitions, here.kind, ofRecord(here), stepOn(here, "^"));
    }
    case "back": {
      const here = through(definitions, draft, at, problem);
      draft.crosses = true;
      const text = printStep(step);
      const all = text + filtersOf(rest);
      const owed =
        here.free !== null || isCovered(coverage, stepOn(here, text)) || isCovered(coverage, stepOn(here, all));
      if (required && !owed)
        problem(`${all} is read as required, but no unconditional row of the register owes it to ${here.kind ?? ""}`);
      const next = standAround(definitions, step.kind, step.field, stepOn(here, text));
      if (next === null) problem(`${text}: ${step.kind} has no link "${step.field}"`);
      return next;
    }
    case "calculation": {
      const here = through(definitions, draft, at, problem);
      draft.calculations.push(step.id);
      const found = definitions.calculations.find(({ id }) => id === step.id);
      if (found === undefined) problem(`there is no calculation "${step.id}"`);
      const kind = `${here.kind ?? ""}${here.list === "" ? "" : `#${here.list}`}`;
      if (found !== undefined && here.free === null && found.appliesTo.kind !== kind)
        problem(`calculation ${step.id} applies to ${found.appliesTo.kind}, not to ${kind}`);
      return outside(freeOfCalculation(step.id, found));
    }
  }
}

function takeField(
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
    if (free === undefined) problem(`${at.free.of} has no "${name}"`);
    return free === undefined ? null : outside(free);
  }
  const field: Field | undefined = at.fields?.get(name);
  if (field === undefined) {
    problem(`${at.kind ?? "it"}${at.list === "" ? "" : `#${at.list}`} has no field "${name}"`);
    return null;
  }
  const { required, coverage } = schemas;
  const anchors = stepOn(at, name);
  const owed =
    field.required ||
    field.due !== undefined ||
    isCovered(coverage, anchors) ||
    isCovered(coverage, stepOn(at, name + filtersOf(rest)));
  if (required && !owed)
    problem(`"${name}" is read as required, but neither the schema nor an unconditional row of the register owes it`);
  return {
    ...at,
    field,
    fields: field.fields ?? null,
    list: field.type === "list" && at.list === "" ? name : at.list,
    anchors,
  };
}

/** Behind a link, at what it names; anywhere else where it is. */
export function through(
  definitions: Definitions,
  draft: Pick<Draft, "crosses">,
  at: Standing,
  problem: Problem,
): Standing {
  if (at.field?.type !== "link") return at;
  draft.crosses = true;
  const targets = at.field.targets ?? [];
  const [kind = "", list = ""] = (targets[0] ?? "").split(/[#@]/);
  const next =
    targets.length === 1 ? standAt(definitions, list === "" ? kind : `${kind}#${list}`, [], at.anchors) : null;
  if (next !== null) return next;
  problem(
    `"${at.field.name}" names ${targets.length === 1 ? `"${targets[0] ?? ""}", which is no kind` : "several kinds; a path cannot go on behind it"}`,
  );
  return outside({ of: at.field.name, names: null });
}

/** A filter compares a field that is owed, and that has its values from a list. */
function checkFilter(schemas: Schemas, at: Standing, step: Extract<Step, { type: "filter" }>, problem: Problem): void {
  const inner = walkPath({ ...schemas, required: true }, at, { text: printStep(step), steps: step.path });
  for (const text of inner.problems) problem(text);
  const field = inner.end?.field ?? null;
  if (inner.end === null || field === null) return;
  if (field.options !== undefined) {
    if (!field.options.includes(step.equals))
      problem(`the filter ${printStep(step)} asks for a value the field never has`);
    return;
  }
  // The name of a calculation is an enumerated value too: the list of definitions enumerates it.
  const named = schemas.definitions.calculations.some(({ id }) => id === step.equals);
  if (field.type !== "boolean" && !field.required && !named)
    problem(`the filter ${printStep(step)} compares a field with free text`);
}
